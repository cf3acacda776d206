// SPDX-License-Identifier: MIT
#pragma once

#include <QPixmap>
#include <cstdint>
#include <map>

#include "app/canvas/page_dress.h"
#include "app/canvas/piece_label.h"
#include "app/canvas/viewport.h"

class QPainter;

namespace matwright::app {

// Pictures of the pieces in the hand. A piece that only changes its place from one step to the next
// is drawn once and then put down as a picture, on whole device pixels: at most half a pixel off
// until it is let go.
class LiftedPictures {
  public:
    void setDress(const PageDress& dress) { m_dress = dress; }
    // In view coordinates. `key` tells the pieces of one drag apart: the id of a piece that is on
    // the page, negative for a new one.
    void paint(QPainter& painter, std::int64_t key, const Piece& piece, std::size_t number,
               const Viewport& viewport, const LabelStyle& labels);
    // At the end of a drag, and when words or zoom change.
    void clear();

    // How many pictures there are, for tests.
    std::size_t count() const;

  private:
    struct Entry {
        Piece piece;        // as it was last drawn
        QPixmap picture;    // null until the piece comes back unchanged
        QPointF pictureAt;  // its top left corner in the view…
        QPointF placeAt;    // …when the piece's place was here
        double pixelsPerTick = 0;
    };
    void paintNow(QPainter& painter, std::int64_t key, const Piece& piece, std::size_t number,
                  const Viewport& viewport, const LabelStyle& labels) const;
    void draw(Entry& entry, std::int64_t key, std::size_t number, const Viewport& viewport,
              const LabelStyle& labels, double devicePixelRatio);

    PageDress m_dress;
    std::map<std::int64_t, Entry> m_entries;
    double m_pixels = 0;  // of all pictures
};

}  // namespace matwright::app
