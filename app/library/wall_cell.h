// SPDX-License-Identifier: MIT
#pragma once

#include <QFont>
#include <QImage>
#include <QPainterPath>
#include <QPalette>
#include <QRect>

#include "core/library/holdings.h"

class QPainter;

namespace matwright::app {

// One sketch as the wall shows it at this moment.
struct CellState {
    LibraryEntry entry;
    int alike = 0;
    QImage picture;          // null: none yet
    bool hasFailed = false;  // there will be none
    bool isSelected = false;
    bool isCurrent = false;  // and the keyboard is here
    bool isHovered = false;
};

// How a cell of the wall is laid out and painted: the picture of the page on a quiet ground, and
// beneath it the name, page size and photos, prints. All cells are of one size.
class WallCell {
  public:
    WallCell(const QFont& font, int pictureSide);

    int pictureSide() const { return m_side; }
    QSize size() const { return m_size; }
    // Where "+2 alike" stands in a cell, so that it can be clicked; at least 24 px high.
    QRect alikeRect(const QRect& cell, int alike) const;
    void paint(QPainter& painter, const QRect& cell, const CellState& state,
               const QPalette& palette) const;

  private:
    QRect pictureBox(const QRect& cell) const;
    void paintGround(QPainter& painter, const QRect& cell, const CellState& state,
                     const QPalette& palette) const;
    void paintPicture(QPainter& painter, const QRect& cell, const CellState& state,
                      const QPalette& palette) const;
    void paintTexts(QPainter& painter, const QRect& cell, const CellState& state,
                    const QPalette& palette) const;
    void paintAlike(QPainter& painter, const QRect& cell, int alike, const QPalette& palette) const;

    QFont m_font;
    QFont m_nameFont;
    int m_side;
    int m_lineHeight;
    QSize m_size;
};

// A star that fills the box.
QPainterPath starIn(const QRectF& box);
// The page of a picture: its edge and a soft shadow, so that white paper shows on any ground.
void paintPageOn(QPainter& painter, const QRect& page, const QImage& picture,
                 const QPalette& palette);

}  // namespace matwright::app
