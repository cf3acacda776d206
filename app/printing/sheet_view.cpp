// SPDX-License-Identifier: MIT
#include "app/printing/sheet_view.h"

#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>

#include "app/rendering/paint.h"

namespace matwright::app {

namespace {

// Free desk around and between the sheets, in inches.
constexpr double rim = 0.35;
constexpr double gap = 0.35;
// More of it between the sheets of two pages.
constexpr double fold = 1;
// On the screen, in pixels; finer lines would fade away when whole sheets are looked at.
constexpr double leastLine = 1;

QSizeF inches(Size size) {
    return {size.width.toInches(), size.height.toInches()};
}

}  // namespace

SheetView::SheetView(QWidget* parent) : QWidget(parent) {
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Mid);
}

void SheetView::setSheets(std::optional<TemplateSheets> sheets) {
    m_sheets = std::move(sheets);
    if (m_shown && *m_shown >= sheetCount()) {
        m_shown = std::nullopt;
    }
    update();
}

int SheetView::sheetCount() const {
    return m_sheets ? static_cast<int>(m_sheets->pages.size()) : 0;
}

void SheetView::show(std::optional<int> sheet) {
    m_shown = sheet;
    update();
}

const TilePlan* SheetView::spreadOut() const {
    return !m_shown && m_sheets && m_sheets->tilePlan ? &*m_sheets->tilePlan : nullptr;
}

QSizeF SheetView::contentInches() const {
    if (!m_sheets) {
        return {1, 1};
    }
    const QSizeF sheet = inches(m_sheets->pages.front().media);
    const TilePlan* plan = spreadOut();
    const int pages = plan != nullptr && plan->isPageByPage() ? 2 : 1;
    const int columns = plan != nullptr ? pages * plan->columns : 1;
    const int rows = plan != nullptr ? plan->rows : 1;
    return {columns * (sheet.width() + gap) - gap + (pages - 1) * fold + 2 * rim,
            rows * (sheet.height() + gap) - gap + 2 * rim};
}

QPointF SheetView::cornerInches(int index) const {
    const TilePlan* plan = spreadOut();
    if (plan == nullptr) {
        return {rim, rim};
    }
    const QSizeF sheet = inches(m_sheets->pages.front().media);
    const Tile& tile = plan->tiles[static_cast<std::size_t>(index)];
    const bool onRight = tile.page == TiledPage::Right;
    const int column = tile.column + (onRight ? plan->columns : 0);
    return {rim + column * (sheet.width() + gap) + (onRight ? fold : 0),
            rim + tile.row * (sheet.height() + gap)};
}

QRectF SheetView::sheetRect(int index) const {
    if (!m_sheets || (m_shown && *m_shown != index)) {
        return {};
    }
    const QSizeF content = contentInches();
    const double scale = std::min(width() / content.width(), height() / content.height());
    const QSizeF sheet = inches(m_sheets->pages.front().media);
    const QPointF free((width() - content.width() * scale) / 2,
                       (height() - content.height() * scale) / 2);
    return {free + cornerInches(index) * scale, sheet * scale};
}

std::optional<int> SheetView::sheetAt(QPointF position) const {
    for (int i = 0; i < sheetCount(); ++i) {
        if (sheetRect(i).contains(position)) {
            return i;
        }
    }
    return std::nullopt;
}

void SheetView::paintSheet(QPainter& painter, int index) const {
    const PdfPage& page = m_sheets->pages[static_cast<std::size_t>(index)];
    const QRectF paper = sheetRect(index);
    painter.fillRect(paper, Qt::white);
    painter.save();
    painter.setClipRect(paper);
    painter.translate(paper.topLeft());
    const double scale = paper.width() / static_cast<double>(page.media.width.ticks());
    painter.scale(scale, scale);
    painter.translate(static_cast<double>(page.offset.x.ticks()),
                      static_cast<double>(page.offset.y.ticks()));
    paintPreview(painter, page.drawing, leastLine);
    painter.restore();
    painter.setPen(QPen(palette().color(QPalette::Shadow), 0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(paper);
}

void SheetView::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    for (int i = 0; i < sheetCount(); ++i) {
        if (sheetRect(i).intersects(event->rect())) {
            paintSheet(painter, i);
        }
    }
}

void SheetView::mouseReleaseEvent(QMouseEvent* event) {
    const std::optional<int> sheet = sheetAt(event->position());
    if (event->button() == Qt::LeftButton && sheet && !m_shown && sheetCount() > 1) {
        emit sheetChosen(*sheet);
    }
}

bool SheetView::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip || m_shown || sheetCount() < 2) {
        return QWidget::event(event);
    }
    auto* help = static_cast<QHelpEvent*>(event);
    if (const std::optional<int> sheet = sheetAt(help->pos())) {
        const auto& tile = m_sheets->tilePlan->tiles[static_cast<std::size_t>(*sheet)];
        QToolTip::showText(
            help->globalPos(),
            tr("Sheet %1: click to see it alone").arg(QString::fromStdString(tile.name())), this,
            sheetRect(*sheet).toRect());
    } else {
        QToolTip::hideText();
    }
    return true;
}

}  // namespace matwright::app
