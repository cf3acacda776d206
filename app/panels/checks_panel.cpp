// SPDX-License-Identifier: MIT
#include "app/panels/checks_panel.h"

#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QPainter>
#include <QStackedLayout>
#include <QStyle>
#include <QtConcurrent>

#include "app/panels/section.h"
#include "app/panels/tint.h"
#include "core/checks/photo_checks.h"

namespace matwright::app {

namespace {

// Makes a finding of one line tall enough to hit.
constexpr int iconSide = 24;

// A triangle with a bar and a dot, readable in both themes.
QIcon findingIcon(const QPalette& palette) {
    QPixmap picture(iconSide * 2, iconSide * 2);
    picture.setDevicePixelRatio(2);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(2, 2);
    const bool light = palette.color(QPalette::Base).lightness() > 127;
    const QColor colour = light ? QColor(0x8A, 0x5A, 0x00) : QColor(0xF2, 0xC1, 0x5B);
    painter.setPen(QPen(colour, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolygon(QPolygonF{{10, 3}, {17.5, 16.5}, {2.5, 16.5}});
    painter.drawLine(QPointF(10, 8), QPointF(10, 11.5));
    painter.drawPoint(QPointF(10, 14));
    return QIcon(picture);
}

}  // namespace

ChecksPanel::ChecksPanel(Session& session, SettingsStore& settings, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_settings(settings),
      m_layers(new QStackedLayout(this)),
      m_nothing(new TintedLabel(Tint::Quiet, tr("Nothing to mend."), this)),
      m_list(new QListWidget(this)) {
    setAccessibleName(tr("Checks"));
    m_nothing->setContentsMargins(10, 8, 10, 8);  // a stacked layout has no margins
    m_layers->addWidget(m_nothing);
    m_layers->addWidget(m_list);
    m_nothing->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_list->setAccessibleName(tr("Findings"));
    m_list->setWordWrap(true);
    m_list->setIconSize({iconSide, iconSide});
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setResizeMode(QListView::Adjust);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setSpacing(2);
    m_rest.setSingleShot(true);
    m_rest.setInterval(restMs);
    connect(&m_rest, &QTimer::timeout, this, &ChecksPanel::start);
    connect(&m_run, &QFutureWatcherBase::finished, this, &ChecksPanel::finished);
    connect(&settings, &SettingsStore::changed, this, &ChecksPanel::ask);
    connect(&session, &Session::changed, this, [this](const Change& change) {
        if (change.kinds & (Change::Pieces | Change::Page | Change::Photos | Change::Placements)) {
            ask();
        }
    });
    connect(m_list, &QListWidget::itemClicked, this, &ChecksPanel::choose);
    connect(m_list, &QListWidget::itemActivated, this, &ChecksPanel::choose);
    ask();
}

ChecksPanel::~ChecksPanel() {
    m_stop.request_stop();
}

CheckSettings ChecksPanel::checkSettings() const {
    return {m_settings.value().trimmerStep, m_settings.value().scale};
}

void ChecksPanel::ask() {
    m_outdated = m_run.isRunning();
    m_stop.request_stop();
    m_rest.start();
}

void ChecksPanel::start() {
    if (m_run.isRunning()) {
        m_outdated = true;
        return;
    }
    m_outdated = false;
    m_stop = std::stop_source();
    m_run.setFuture(QtConcurrent::run(
        [making = m_session.making(), settings = checkSettings(), stop = m_stop.get_token()] {
            return checkMaking(making, settings, stop);
        }));
}

void ChecksPanel::finished() {
    if (m_outdated) {
        if (!m_rest.isActive()) {
            start();
        }
        return;
    }
    m_findings = m_run.result();
    showFindings();
    emit countChanged(static_cast<int>(m_findings.size()));
}

void ChecksPanel::showFindings() {
    const int row = m_list->currentRow();
    const QIcon icon = findingIcon(palette());
    m_list->clear();
    for (const CheckFinding& finding : m_findings) {
        auto* item = new QListWidgetItem(icon, QString::fromStdString(finding.sentence), m_list);
        item->setToolTip(tr("Click to select the piece."));
    }
    fitRows();
    m_list->setCurrentRow(qMin(row, m_list->count() - 1));
    m_layers->setCurrentIndex(m_findings.empty() ? 0 : 1);
}

// As tall as their wrapped sentences: a list by itself cuts them off.
void ChecksPanel::fitRows() {
    constexpr int besideText = iconSide + 24;  // icon, gaps and spacing
    // By the panel's own width: the list's is an old one until it is shown.
    const int bar = style()->pixelMetric(QStyle::PM_ScrollBarExtent, nullptr, m_list);
    const int width = qMax(80, this->width() - bar - besideText);
    const QFontMetrics metrics = m_list->fontMetrics();
    for (int row = 0; row < m_list->count(); ++row) {
        QListWidgetItem* item = m_list->item(row);
        const QRect text =
            metrics.boundingRect({0, 0, width, 10000}, Qt::TextWordWrap, item->text());
        item->setSizeHint({width, qMax(iconSide, text.height() + 6)});
    }
}

void ChecksPanel::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitRows();
}

// The icons are painted in a colour of the theme.
void ChecksPanel::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) {
        showFindings();
    }
}

void ChecksPanel::choose(const QListWidgetItem* item) {
    const auto row = static_cast<std::size_t>(m_list->row(item));
    if (row >= m_findings.size()) {
        return;
    }
    const std::vector<PieceId> pieces = m_findings[row].pieces;
    m_session.select({pieces.begin(), pieces.end()});
    if (!pieces.empty() && matwright::find(m_session.sketch(), pieces.front())) {
        emit revealRequested(pieces.front());
    }
}

}  // namespace matwright::app
