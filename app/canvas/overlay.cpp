// SPDX-License-Identifier: MIT
#include "app/canvas/overlay.h"

#include <QPainter>
#include <QStringList>
#include <algorithm>
#include <cmath>

#include "app/canvas/padlock.h"

namespace matwright::app {

namespace {

// Marks lie on white paper or on the surroundings of either theme, so each line has a pale halo
// under a deep colour (at least 4.5:1 on white).
constexpr QColor selectionColour(20, 104, 128);
constexpr QColor haloColour(255, 255, 255, 190);
constexpr double crossStroke = 4;

QPen penOf(Overlay::Ink ink) {
    switch (ink) {
        case Overlay::Ink::Selection:
            return QPen(selectionColour, 1.5);
        case Overlay::Ink::Hover:
            return QPen(QColor(20, 104, 128, 130), 1);
        case Overlay::Ink::Band:
            return QPen(selectionColour, 1, Qt::DashLine);
        case Overlay::Ink::Target:
            return QPen(selectionColour, 4);
        case Overlay::Ink::Guide:
        case Overlay::Ink::Gap:
            break;
    }
    return QPen(guideColour, 1);
}

bool wantsHalo(Overlay::Ink ink) {
    return ink == Overlay::Ink::Selection || ink == Overlay::Ink::Guide ||
           ink == Overlay::Ink::Target;
}

bool isUprightOrLevel(const QLineF& line) {
    return line.x1() == line.x2() || line.y1() == line.y2();
}

// Upright and level lines stand on pixel centres, so that they are one pixel wide and sharp.
QLineF sharp(const QLineF& line) {
    const auto centre = [](double v) { return std::floor(v) + 0.5; };
    if (line.x1() == line.x2()) {
        return {centre(line.x1()), line.y1(), centre(line.x1()), line.y2()};
    }
    if (line.y1() == line.y2()) {
        return {line.x1(), centre(line.y1()), line.x2(), centre(line.y1())};
    }
    return line;
}

QRectF aroundPoint(QPointF at, double reach) {
    return {at.x() - reach, at.y() - reach, 2 * reach, 2 * reach};
}

}  // namespace

QFont smallFont(QFont base) {
    if (base.pixelSize() > 0) {
        base.setPixelSize(std::max(11, base.pixelSize() - 1));
    } else {
        base.setPointSizeF(std::max(8.0, base.pointSizeF() - 1));
    }
    return base;
}

Overlay::Overlay(const QRectF& bounds, const QFont& font)
    : m_bounds(bounds), m_font(smallFont(font)) {}

void Overlay::cover(const QRectF& rect) {
    const QRectF seen = m_bounds.isEmpty() ? rect : rect & m_bounds.adjusted(-8, -8, 8, 8);
    if (!seen.isEmpty()) {
        m_region += seen.toAlignedRect();
    }
}

void Overlay::coverOutline(const QPolygonF& corners) {
    for (qsizetype i = 0; i < corners.size(); ++i) {
        const QPointF a = corners[i];
        const QPointF b = corners[(i + 1) % corners.size()];
        // A slanting side is covered in short stretches: its bounding box may be the whole view.
        const bool upright = std::abs(a.x() - b.x()) < 1 || std::abs(a.y() - b.y()) < 1;
        const int parts = upright ? 1 : 16;
        for (int part = 0; part < parts; ++part) {
            const QPointF from = a + (b - a) * (double(part) / parts);
            const QPointF to = a + (b - a) * (double(part + 1) / parts);
            cover(QRectF(from, to).normalized().adjusted(-3, -3, 3, 3));
        }
    }
}

void Overlay::addFrame(const QPolygonF& corners, Ink ink) {
    m_frames.push_back({corners, ink});
    coverOutline(corners);
}

void Overlay::addBand(const QRectF& rect) {
    m_bands.push_back(rect);
    cover(rect.adjusted(-2, -2, 2, 2));
}

void Overlay::addLine(const QLineF& line, Ink ink) {
    m_lines.push_back({sharp(line), ink});
    cover(QRectF(line.p1(), line.p2()).normalized().adjusted(-3, -3, 3, 3));
}

void Overlay::addMeasure(const QLineF& line) {
    if (line.length() < 1) {
        return;
    }
    const QLineF unit = line.unitVector();
    const QPointF across = QPointF(-unit.dy(), unit.dx()) * crossStroke;
    m_lines.push_back({sharp(line), Ink::Gap});
    m_lines.push_back({sharp({line.p1() - across, line.p1() + across}), Ink::Gap});
    m_lines.push_back({sharp({line.p2() - across, line.p2() + across}), Ink::Gap});
    // One strip for the three of them: every rectangle of the region costs something.
    const double reach = crossStroke + 2;
    cover(QRectF(line.p1(), line.p2()).normalized().adjusted(-reach, -reach, reach, reach));
}

void Overlay::addSquareHandle(QPointF at, double degrees) {
    m_handles.push_back({at, degrees, false});
    cover(aroundPoint(at, handleSize));
}

void Overlay::addRoundHandle(QPointF at) {
    m_handles.push_back({at, 0, true});
    cover(aroundPoint(at, handleSize));
}

void Overlay::addPadlock(QPointF at) {
    m_padlocks.push_back(at);
    cover(aroundPoint(at, 12));
}

void Overlay::addChip(const QString& text, QPointF at, Chip kind) {
    const QSizeF size = chipSize(text, kind, m_font);
    const QRectF rect =
        roomFor({std::round(at.x() - size.width() / 2), std::round(at.y() - size.height() / 2),
                 size.width(), size.height()});
    m_chips.push_back({text, rect, kind});
    cover(rect.adjusted(-2, -2, 2, 2));
}

QRectF Overlay::roomFor(QRectF wanted) const {
    const auto inside = [this](QRectF rect) {
        const QRectF room = m_bounds.adjusted(3, 3, -3, -3);
        rect.moveLeft(std::clamp(rect.left(), room.left(),
                                 std::max(room.left(), room.right() - rect.width())));
        rect.moveTop(std::clamp(rect.top(), room.top(),
                                std::max(room.top(), room.bottom() - rect.height())));
        return rect;
    };
    const auto isFree = [this](const QRectF& rect) {
        return std::ranges::none_of(m_chips, [&rect](const ChipMark& chip) {
            return chip.rect.adjusted(-2, -2, 2, 2).intersects(rect);
        });
    };
    const double step = wanted.height() + 3;
    for (const double by : {0.0, 1.0, -1.0, 2.0, -2.0, 3.0, -3.0}) {
        const QRectF rect = inside(wanted.translated(0, by * step));
        if (isFree(rect)) {
            return rect;
        }
    }
    return inside(wanted);
}

std::vector<QRectF> Overlay::chipRects() const {
    std::vector<QRectF> rects;
    rects.reserve(m_chips.size());
    for (const ChipMark& chip : m_chips) {
        rects.push_back(chip.rect);
    }
    return rects;
}

QStringList Overlay::chipTexts() const {
    QStringList texts;
    for (const ChipMark& chip : m_chips) {
        texts.append(chip.text);
    }
    return texts;
}

void Overlay::paint(QPainter& painter) const {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (const QRectF& band : m_bands) {
        painter.setPen(penOf(Ink::Band));
        painter.setBrush(QColor(20, 104, 128, 28));
        painter.drawRect(band);
    }
    paintLines(painter);
    paintHandles(painter);
    for (const QPointF& at : m_padlocks) {
        paintPadlock(painter, at, selectionColour);
    }
    paintChips(painter);
    painter.restore();
}

void Overlay::paintLines(QPainter& painter) const {
    painter.setBrush(Qt::NoBrush);
    for (const bool halo : {true, false}) {
        const auto pen = [halo](Ink ink) {
            return halo ? QPen(haloColour, penOf(ink).widthF() + 2) : penOf(ink);
        };
        for (const Frame& frame : m_frames) {
            if (!halo || wantsHalo(frame.ink)) {
                painter.setPen(pen(frame.ink));
                painter.drawPolygon(frame.corners);
            }
        }
        for (const Line& line : m_lines) {
            if (!halo || wantsHalo(line.ink)) {
                // Upright and level lines fill whole pixels; without smoothing that costs little.
                painter.setRenderHint(QPainter::Antialiasing, !isUprightOrLevel(line.line));
                painter.setPen(pen(line.ink));
                painter.drawLine(line.line);
            }
        }
        painter.setRenderHint(QPainter::Antialiasing);
    }
}

void Overlay::paintHandles(QPainter& painter) const {
    painter.setPen(QPen(selectionColour, 1.5));
    painter.setBrush(Qt::white);
    for (const HandleMark& handle : m_handles) {
        painter.save();
        painter.translate(handle.at);
        painter.rotate(handle.degrees);
        const QRectF mark = aroundPoint({0, 0}, handleSize / 2);
        if (handle.isRound) {
            painter.drawEllipse(mark);
        } else {
            painter.drawRoundedRect(mark, 2, 2);
        }
        painter.restore();
    }
}

void Overlay::paintChips(QPainter& painter) const {
    for (const ChipMark& chip : m_chips) {
        paintChip(painter, chip.rect, chip.text, chip.kind, m_font);
    }
}

}  // namespace matwright::app
