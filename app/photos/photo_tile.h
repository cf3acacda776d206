// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>
#include <QPixmap>
#include <QPolygonF>
#include <QRegion>
#include <QTransform>
#include <optional>
#include <vector>

#include "core/raster/raster.h"
#include "core/tone/tone.h"

class QPainter;

namespace matwright::app {

// A photo as it stands in a view, ready to be moved about: turned, sized and toned once, and put
// down as a picture for as long as only its place changes. Works on a copy of screen size; knows
// no file.
class PhotoTile {
  public:
    // The photo turned upright; smaller than the photo's own `upright` pixels or as large.
    void setCopy(const QImage& copy, PixelSize upright);
    bool hasCopy() const { return !m_sizes.empty(); }
    // Nothing: the photo as it is. False where that is no change.
    bool setTone(const std::optional<ToneMap>& map);
    // The colour around the photo, and what the surroundings fade towards.
    void setAround(const QColor& colour);

    // Makes the pictures fit: `photoToView` maps the photo's pixels after `quarterTurns` to logical
    // pixels of a view of this size.
    void prepare(const QTransform& photoToView, int quarterTurns, QSize view,
                 double devicePixelRatio);
    // In view coordinates, as of the last prepare(): the photo, or the photo faded.
    void paint(QPainter& painter, const QRect& area) const;
    void paintFaded(QPainter& painter, const QRegion& area) const;

    // How often the pictures were made from the copy, for tests that a drag makes none.
    int renders() const { return m_renders; }

  private:
    struct Made {  // what the pictures were made for
        QTransform photoToView;
        int quarterTurns = 0;
        QSize view;
        double ratio = 1;
        bool isTurnedAlike(const Made& other) const;
    };
    void render();
    const QImage& sourceFor(double shrink);
    void fillAround(QImage& tile, const QPolygonF& photo) const;
    void draw(QPainter& painter, const QPixmap& picture, const QRect& area) const;

    std::vector<QImage> m_sizes;  // upright: the copy, half of it, a quarter, …
    PixelSize m_upright;
    std::optional<ToneMap> m_tone;
    QColor m_around = Qt::gray;
    Made m_made;
    bool m_isValid = false;
    QRectF m_covered;  // what the pictures show, in the view as it was when they were made
    QPointF m_shift;   // where they stand now
    QPixmap m_plain;
    QPixmap m_faded;
    int m_renders = 0;
};

}  // namespace matwright::app
