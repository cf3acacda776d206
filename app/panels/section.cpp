// SPDX-License-Identifier: MIT
#include "app/panels/section.h"

#include <QAccessible>
#include <QApplication>
#include <QEvent>
#include <QFormLayout>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyle>
#include <QVBoxLayout>

#include "app/panels/tint.h"

namespace matwright::app {

namespace {

class WheelGuard final : public QObject {
  public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override {
        const auto* widget = qobject_cast<QWidget*>(watched);
        if (event->type() == QEvent::Wheel && widget && !widget->hasFocus()) {
            event->ignore();
            return true;
        }
        return QObject::eventFilter(watched, event);
    }
};

QString plain(QString label) {
    return label.remove(QLatin1Char('&'));
}

}  // namespace

Section::Section(const QString& heading, QWidget* parent)
    : QWidget(parent), m_rows(new QFormLayout(this)) {
    m_rows->setContentsMargins(0, 0, 0, 0);
    m_rows->setHorizontalSpacing(8);
    m_rows->setVerticalSpacing(6);
    m_rows->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    m_rows->setRowWrapPolicy(QFormLayout::DontWrapRows);
    m_rows->setLabelAlignment(Qt::AlignLeft | Qt::AlignTop);
    if (!heading.isEmpty()) {
        auto* label = new QLabel(heading, this);
        QFont font = label->font();
        font.setBold(true);
        label->setFont(font);
        label->setContentsMargins(0, 8, 0, 0);
        m_rows->addRow(label);
    }
}

void Section::addRow(const QString& label, QWidget* field) {
    auto* text = new QLabel(label, this);
    text->setBuddy(field);
    text->setMinimumSize(fontMetrics().horizontalAdvance(tr("From left edge")) + 4, controlHeight);
    text->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    text->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    for (QWidget* named : {field, field->focusProxy()}) {
        if (named && named->accessibleName().isEmpty()) {
            named->setAccessibleName(plain(label));
        }
    }
    settle(field);
    m_rows->addRow(text, field);
}

void Section::addWide(QWidget* widget) {
    m_rows->addRow(widget);
}

void Section::addBelow(QWidget* widget) {
    m_rows->setWidget(m_rows->rowCount(), QFormLayout::FieldRole, widget);
}

void Section::setRowShown(QWidget* field, bool shown) {
    m_rows->setRowVisible(field, shown);
}

void Section::complain(const QString& sentence) {
    if (!m_complaint && sentence.isEmpty()) {
        return;
    }
    if (!m_complaint) {
        m_complaint = new TintedLabel(Tint::Wrong, {}, this);
        addWide(m_complaint);
    }
    m_complaint->setText(sentence);
    setRowShown(m_complaint, !sentence.isEmpty());
    if (!sentence.isEmpty()) {
        QAccessibleEvent alert(m_complaint, QAccessible::Alert);
        QAccessible::updateAccessibility(&alert);
    }
}

QScrollArea* addScrolled(QWidget* panel, QWidget* content) {
    auto* area = new QScrollArea(panel);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidget(content);
    auto* layout = new QVBoxLayout(panel);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(area);
    const int bar = area->style()->pixelMetric(QStyle::PM_ScrollBarExtent);
    // Qt scrolls along while Tab stays inside, but not when it comes in from elsewhere.
    QObject::connect(qApp, &QApplication::focusChanged, area, [area](QWidget*, QWidget* now) {
        const bool byKey = area->window()->testAttribute(Qt::WA_KeyboardFocusChange);
        if (now && byKey && area->widget()->isAncestorOf(now)) {
            area->ensureWidgetVisible(now);
        }
    });
    area->setMinimumWidth(content->minimumSizeHint().width() + bar);
    return area;
}

void settle(QWidget* control) {
    control->setMinimumHeight(qMax(control->minimumHeight(), controlHeight));
    if (control->focusPolicy() == Qt::WheelFocus) {
        control->setFocusPolicy(Qt::StrongFocus);
    }
    control->installEventFilter(new WheelGuard(control));
}

}  // namespace matwright::app
