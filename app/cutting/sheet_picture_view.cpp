// SPDX-License-Identifier: MIT
#include "app/cutting/sheet_picture_view.h"

#include <QPainter>
#include <utility>

#include "app/rendering/paint.h"

namespace matwright::app {

namespace {

constexpr int rim = 10;
constexpr std::int64_t ticksPerPixel = Length::ticksPerInch / 96;

Length ofPixels(int pixels) {
    return Length::fromTicks(pixels * ticksPerPixel);
}

}  // namespace

SheetPictureView::SheetPictureView(Shows shows, QWidget* parent) : QWidget(parent), m_shows(shows) {
    setMinimumSize(120, 120);
}

void SheetPictureView::show(std::optional<PlannedSheet> sheet, std::optional<std::size_t> step) {
    m_sheet = std::move(sheet);
    m_step = m_sheet && step && *step < m_sheet->steps.steps.size() ? step : std::nullopt;
    draw();
}

void SheetPictureView::draw() {
    m_items.clear();
    const bool hasRoom = width() > 2 * rim && height() > 2 * rim;
    if (m_sheet && hasRoom && (m_shows == Shows::Sheet || m_step)) {
        const Rect room = Rect::at({ofPixels(rim), ofPixels(rim)},
                                   {ofPixels(width() - 2 * rim), ofPixels(height() - 2 * rim)});
        m_items =
            m_shows == Shows::Sheet
                ? sheetItems(*m_sheet, room, {.numbers = true, .words = true, .current = m_step})
                : stepItems(*m_sheet, *m_step, room);
    }
    update();
}

void SheetPictureView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    draw();
}

void SheetPictureView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_items.empty() ? palette().color(QPalette::Window) : QColor(Qt::white));
    painter.drawRoundedRect(rect(), 4, 4);
    painter.scale(1.0 / ticksPerPixel, 1.0 / ticksPerPixel);
    for (const DrawingItem& item : m_items) {
        paintItem(painter, item);
    }
}

}  // namespace matwright::app
