// SPDX-License-Identifier: MIT
#include "app/window/status_line.h"

#include <QAccessible>
#include <QFontMetrics>
#include <QLineEdit>
#include <cmath>

#include "app/window/icons.h"

namespace matwright::app {
namespace {

QString percent(double zoom) {
    return QStringLiteral("%1 %").arg(std::lround(zoom * 100));
}

}  // namespace

StatusLine::StatusLine(QStatusBar& bar)
    : QObject(&bar),
      m_warning(new QToolButton),
      m_hint(new QLabel),
      m_pointer(new QLabel),
      m_checks(new QToolButton),
      m_zoom(new QComboBox) {
    m_warning->setAutoRaise(true);
    m_warning->setFocusPolicy(Qt::TabFocus);
    m_warning->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    m_hint->setAccessibleName(tr("Hint"));
    m_hint->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    m_pointer->setMinimumWidth(
        m_pointer->fontMetrics().horizontalAdvance(QStringLiteral("≈ 00 00/00 in, ≈ 00 00/00 in")));
    m_pointer->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_checks->setAutoRaise(true);
    m_checks->setFocusPolicy(Qt::TabFocus);
    m_checks->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    m_zoom->setEditable(true);
    m_zoom->setInsertPolicy(QComboBox::NoInsert);
    m_zoom->setAccessibleName(tr("Zoom"));
    m_zoom->setToolTip(tr("Zoom; 100 % is true size"));
    for (const int step : {10, 25, 50, 75, 100, 150, 200, 400}) {
        m_zoom->addItem(percent(step / 100.0));
    }
    bar.setSizeGripEnabled(false);
    bar.addWidget(m_warning);
    m_warning->hide();
    bar.addWidget(m_hint, 1);
    for (QWidget* widget : {static_cast<QWidget*>(m_pointer), static_cast<QWidget*>(m_checks),
                            static_cast<QWidget*>(m_zoom)}) {
        bar.addPermanentWidget(widget);
    }
    connect(m_warning, &QToolButton::clicked, this, [this] { say(m_warning->toolTip()); });
    connect(m_checks, &QToolButton::clicked, this, &StatusLine::checksRequested);
    connect(m_zoom, &QComboBox::activated, this, &StatusLine::readZoom);
    connect(m_zoom->lineEdit(), &QLineEdit::editingFinished, this, &StatusLine::readZoom);
    showFindings(0);
    showZoom(1);
}

void StatusLine::say(const QString& sentence) {
    if (sentence == m_hint->text()) {
        return;
    }
    m_hint->setText(sentence);
    m_hint->setToolTip(sentence);
    QAccessibleEvent event(m_hint, QAccessible::NameChanged);
    QAccessible::updateAccessibility(&event);
}

void StatusLine::warn(const QString& words, const QString& sentence) {
    m_warning->setIcon(lineIcon(QStringLiteral("look")));
    m_warning->setText(words);
    m_warning->setToolTip(sentence);
    m_warning->setAccessibleDescription(sentence);
    m_warning->show();
    say(sentence);
}

void StatusLine::takeBackWarning() {
    m_warning->hide();
    if (sentence() == m_warning->toolTip()) {
        say({});
    }
}

QString StatusLine::warning() const {
    return m_warning->isHidden() ? QString() : m_warning->text();
}

void StatusLine::showPointer(std::optional<Point> at, const PageSetup& page, Scale scale) {
    if (!at) {
        m_pointer->clear();
        return;
    }
    const std::vector<Rect> all = pages(page);
    const std::size_t on = pageOf(all, at->x);
    const QString place = QStringLiteral("%1, %2").arg(
        QString::fromStdString(lengthText(at->x - all[on].left(), scale)),
        QString::fromStdString(lengthText(at->y, scale)));
    m_pointer->setText(all.size() == 1 ? place
                       : on > 0        ? tr("Right page: %1").arg(place)
                                       : tr("Left page: %1").arg(place));
}

void StatusLine::showZoom(double zoom) {
    m_shownZoom = zoom;
    m_zoom->setEditText(percent(zoom));
}

void StatusLine::showFindings(int count) {
    m_checks->setIcon(lineIcon(count == 0 ? QStringLiteral("checks") : QStringLiteral("look")));
    m_checks->setText(count == 0 ? tr("Checks: all well")
                                 : tr("Checks: %n to look at", nullptr, count));
    m_checks->setToolTip(tr("Show the list of checks"));
}

void StatusLine::readZoom() {
    QString text = m_zoom->currentText();
    text.remove(u'%');
    bool isNumber = false;
    const double zoom = text.trimmed().replace(u',', u'.').toDouble(&isNumber) / 100;
    if (text.trimmed() == percent(m_shownZoom).chopped(2)) {
        return;
    }
    showZoom(m_shownZoom);
    if (isNumber && std::isfinite(zoom) && zoom > 0) {
        emit zoomChosen(zoom);
    }
}

}  // namespace matwright::app
