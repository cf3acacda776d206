// SPDX-License-Identifier: MIT
#include "app/printplan/print_sheet_view.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <utility>

#include "core/printplan/drawn_sheet.h"

namespace matwright::app {

namespace {

constexpr int viewSide = 300;
constexpr double rim = 12;
constexpr double badgeSide = 19;
const QColor paperEdge(0x88, 0x88, 0x88);
const QColor freePaper(0xFB, 0xFA, 0xF7);
const QColor noPicture(0xDD, 0xE4, 0xEA);
const QColor bladeColour(0xB0, 0x1E, 0x4B);

void paintBadge(QPainter& painter, QPointF centre, const QString& text, const QColor& fill,
                bool round) {
    const QRectF place(centre.x() - badgeSide / 2, centre.y() - badgeSide / 2, badgeSide,
                       badgeSide);
    painter.setPen(QPen(Qt::white, 1.5));
    painter.setBrush(fill);
    painter.drawRoundedRect(place, round ? badgeSide / 2 : 4, round ? badgeSide / 2 : 4);
    painter.drawText(place, Qt::AlignCenter, text);
}

// Near the line's beginning, clear of the badges that are there as far as that can be.
QPointF freePlaceOn(const QLineF& line, const std::vector<QPointF>& badges) {
    const double length = std::max(1.0, line.length());
    const double first = std::min(badgeSide * 0.75, length / 2);
    const int places = static_cast<int>((length - first) / (badgeSide / 3)) + 1;
    for (int i = 0; i < places; ++i) {
        const QPointF place = line.pointAt((first + i * badgeSide / 3) / length);
        if (std::ranges::all_of(badges, [place](QPointF other) {
                return QLineF(place, other).length() >= badgeSide;
            })) {
            return place;
        }
    }
    return line.pointAt(first / length);
}

}  // namespace

PrintSheetView::PrintSheetView(PrintSheet sheet, SheetSteps steps, Picture picture, QWidget* parent)
    : QWidget(parent),
      m_sheet(std::move(sheet)),
      m_steps(std::move(steps)),
      m_picture(std::move(picture)),
      m_pictures(m_sheet.gang.places.size()) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setFixedSize(sizeHint());
}

QSize PrintSheetView::sizeHint() const {
    const double wide = m_sheet.size.width.toInches();
    const double tall = m_sheet.size.height.toInches();
    const double scale = (viewSide - 2 * rim) / std::max(wide, tall);
    return QSizeF(wide * scale + 2 * rim, tall * scale + 2 * rim).toSize();
}

QRectF PrintSheetView::sheetRect() const {
    return QRectF(rect()).adjusted(rim, rim, -rim, -rim);
}

QRectF PrintSheetView::onView(const Rect& area) const {
    const QRectF sheet = sheetRect();
    const double scale = sheet.width() / m_sheet.size.width.toInches();
    return {sheet.left() + area.left().toInches() * scale,
            sheet.top() + area.top().toInches() * scale, area.x.length().toInches() * scale,
            area.y.length().toInches() * scale};
}

void PrintSheetView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    QFont small = font();
    small.setPixelSize(11);
    small.setBold(true);
    painter.setFont(small);
    painter.fillRect(sheetRect(), freePaper);
    for (std::size_t i = 0; i < m_sheet.gang.places.size(); ++i) {
        paintPrint(painter, m_sheet.gang.places[i], i);
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(paperEdge, 1));
    painter.drawRect(sheetRect());
    paintCuts(painter);
}

void PrintSheetView::paintPrint(QPainter& painter, const Gang::Place& place, std::size_t index) {
    const auto piece = std::ranges::find_if(m_sheet.cuts.parts, [&](const CutPart& part) {
        return part.use == CutPart::Use::Piece && part.piece == static_cast<int>(place.print) &&
               part.area.topLeft() == place.at;
    });
    if (piece == m_sheet.cuts.parts.end()) {
        return;
    }
    const QRectF area = onView(piece->area);
    QImage& picture = m_pictures[index];
    if (picture.isNull()) {
        const double ratio = devicePixelRatioF();
        picture =
            m_picture(place.print, static_cast<int>(std::max(area.width(), area.height()) * ratio));
        if (place.turned && !picture.isNull()) {
            picture = picture.transformed(QTransform().rotate(90));
        }
    }
    if (picture.isNull()) {
        painter.fillRect(area, noPicture);
    } else {
        painter.drawImage(area, picture);
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(paperEdge, 0.6));
    painter.drawRect(area);
    paintBadge(painter, area.center(), QString::fromStdString(letterOn(m_sheet, place.print)),
               QColor(0x3A, 0x3F, 0x47), false);
}

// From edge to edge of the part in hand.
QLineF PrintSheetView::lineOf(const CutStep& step) const {
    const Rect& part = m_sheet.cuts.parts[static_cast<std::size_t>(step.part)].area;
    const bool upright = step.direction == CutDirection::Upright;
    const Length at = step.setting + (upright ? part.left() : part.top());
    const QRectF area = onView(part);
    const QRectF to = onView(
        {{part.left(), upright ? at : part.right()}, {part.top(), upright ? part.bottom() : at}});
    return upright ? QLineF(to.right(), area.top(), to.right(), area.bottom())
                   : QLineF(area.left(), to.bottom(), area.right(), to.bottom());
}

void PrintSheetView::paintCuts(QPainter& painter) const {
    std::vector<QPointF> badges;
    for (const CutStep& step : m_steps.steps) {
        const QLineF line = lineOf(step);
        painter.setPen(QPen(Qt::white, 3));
        painter.drawLine(line);
        painter.setPen(QPen(bladeColour, 1.6, Qt::DashLine));
        painter.drawLine(line);
        badges.push_back(freePlaceOn(line, badges));
    }
    int number = 0;
    for (const QPointF place : badges) {
        paintBadge(painter, place, QString::number(++number), bladeColour, true);
    }
}

}  // namespace matwright::app
