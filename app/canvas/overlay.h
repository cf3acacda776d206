// SPDX-License-Identifier: MIT
#pragma once

#include <QColor>
#include <QFont>
#include <QLineF>
#include <QPolygonF>
#include <QRegion>
#include <QString>
#include <vector>

#include "app/canvas/chip.h"

class QPainter;

namespace matwright::app {

// What is drawn over the page for a moment: frames, handles, guide lines, measures. A list of
// marks in view coordinates that knows what it covers, so that only that is repainted.
class Overlay {
  public:
    enum class Ink { Selection, Hover, Guide, Gap, Band, Target };
    using Chip = ChipKind;

    // Chips are kept inside `bounds` and off each other where there is room.
    Overlay() = default;
    Overlay(const QRectF& bounds, const QFont& font);

    void addFrame(const QPolygonF& corners, Ink ink);
    void addBand(const QRectF& rect);
    void addLine(const QLineF& line, Ink ink);
    // A line with a short cross stroke at both ends.
    void addMeasure(const QLineF& line);
    void addSquareHandle(QPointF at, double degrees);
    void addRoundHandle(QPointF at);
    // Centred on `at` as nearly as the room allows.
    void addChip(const QString& text, QPointF at, Chip kind);
    // A small padlock at this corner.
    void addPadlock(QPointF at);

    QRegion region() const { return m_region; }
    void paint(QPainter& painter) const;
    // Where the chips ended up, in the order they were added.
    std::vector<QRectF> chipRects() const;
    QStringList chipTexts() const;

  private:
    struct Line {
        QLineF line;
        Ink ink;
    };
    struct Frame {
        QPolygonF corners;
        Ink ink;
    };
    struct HandleMark {
        QPointF at;
        double degrees;
        bool isRound;
    };
    struct ChipMark {
        QString text;
        QRectF rect;
        Chip kind;
    };
    void cover(const QRectF& rect);
    void coverOutline(const QPolygonF& corners);
    QRectF roomFor(QRectF wanted) const;
    void paintLines(QPainter& painter) const;
    void paintHandles(QPainter& painter) const;
    void paintChips(QPainter& painter) const;

    QRectF m_bounds;
    QFont m_font;
    std::vector<Line> m_lines;
    std::vector<Frame> m_frames;
    std::vector<QRectF> m_bands;
    std::vector<HandleMark> m_handles;
    std::vector<ChipMark> m_chips;
    std::vector<QPointF> m_padlocks;
    QRegion m_region;
};

// The font of chips and rulers, a little smaller than the widget's own.
QFont smallFont(QFont base);

inline constexpr double handleSize = 11;
// Guide lines and measures: at least 4.5:1 on white.
inline constexpr QColor guideColour(176, 38, 94);

}  // namespace matwright::app
