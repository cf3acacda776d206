// SPDX-License-Identifier: MIT
#include "app/photos/photo_tile.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/photos/rasters.h"

namespace matwright::app {

namespace {

constexpr double fading = 0.72;  // how much of the surroundings lies over what is left out
constexpr double margin = 0.5;   // of the view, on every side: room to drag without drawing anew

bool isClose(double a, double b) {
    return std::abs(a - b) <= 1e-9 * std::max(std::abs(a), std::abs(b)) + 1e-12;
}

QTransform quarterTurned(int quarterTurns, QSizeF upright) {
    switch (quarterTurns) {
        case 1:
            return {0, 1, -1, 0, upright.height(), 0};
        case 2:
            return {-1, 0, 0, -1, upright.width(), upright.height()};
        case 3:
            return {0, -1, 1, 0, 0, upright.width()};
        default:
            return {};
    }
}

QPointF onDevicePixel(QPointF at, double ratio) {
    return {std::round(at.x() * ratio) / ratio, std::round(at.y() * ratio) / ratio};
}

}  // namespace

bool PhotoTile::Made::isTurnedAlike(const Made& o) const {
    return quarterTurns == o.quarterTurns && view == o.view && ratio == o.ratio &&
           isClose(photoToView.m11(), o.photoToView.m11()) &&
           isClose(photoToView.m12(), o.photoToView.m12());
}

void PhotoTile::setCopy(const QImage& copy, PixelSize upright) {
    m_sizes.clear();
    if (!copy.isNull()) {
        m_sizes.push_back(copy.convertToFormat(QImage::Format_RGB32));
    }
    m_upright = upright;
    m_isValid = false;
}

bool PhotoTile::setTone(const std::optional<ToneMap>& map) {
    if (map == m_tone) {
        return false;
    }
    m_isValid = false;
    m_tone = map;
    return true;
}

void PhotoTile::setAround(const QColor& colour) {
    m_isValid = m_isValid && colour == m_around;
    m_around = colour;
}

void PhotoTile::prepare(const QTransform& photoToView, int quarterTurns, QSize view,
                        double devicePixelRatio) {
    if (!hasCopy()) {
        return;
    }
    const Made wanted{photoToView, quarterTurns, view, devicePixelRatio};
    if (m_isValid && wanted.isTurnedAlike(m_made)) {
        const QPointF by(photoToView.dx() - m_made.photoToView.dx(),
                         photoToView.dy() - m_made.photoToView.dy());
        m_shift = onDevicePixel(by, devicePixelRatio);
        const PixelSize turned = quarterTurns % 2 == 0 ? m_upright : m_upright.turned();
        const QRectF photo = photoToView.mapRect(QRectF(0, 0, turned.width, turned.height));
        const QRectF needed = photo & QRectF({}, view);
        if (m_covered.translated(m_shift).adjusted(-1, -1, 1, 1).contains(needed)) {
            return;
        }
    }
    m_made = wanted;
    render();
}

// Painters pick single pixels where they shrink by more than two, so halves are made first.
const QImage& PhotoTile::sourceFor(double shrink) {
    std::size_t level = 0;
    for (; shrink >= 2 && std::min(m_sizes[level].width(), m_sizes[level].height()) > 8;
         shrink /= 2) {
        ++level;
        if (level == m_sizes.size()) {
            const QImage& last = m_sizes.back();
            m_sizes.push_back(last.scaled((last.width() + 1) / 2, (last.height() + 1) / 2,
                                          Qt::IgnoreAspectRatio, Qt::SmoothTransformation));
        }
    }
    return m_sizes[level];
}

void PhotoTile::render() {
    ++m_renders;
    m_isValid = true;
    m_shift = {};
    const QTransform& toView = m_made.photoToView;
    const QSizeF upright(m_upright.width, m_upright.height);
    const QTransform whole = quarterTurned(m_made.quarterTurns, upright) * toView;
    const QSizeF room(m_made.view.width() * margin, m_made.view.height() * margin);
    const QRectF photo = whole.mapRect(QRectF({}, upright));
    const QRectF wide = QRectF({}, m_made.view)
                            .adjusted(-room.width(), -room.height(), room.width(), room.height());
    m_covered = QRectF((photo & wide).toAlignedRect());
    const double ratio = m_made.ratio;
    const QSize device = (m_covered.size() * ratio).toSize().expandedTo({1, 1});
    QImage tile(device, QImage::Format_RGB32);
    tile.fill(m_around);
    const double scale = std::hypot(whole.m11(), whole.m12()) * ratio;
    const QImage& source = sourceFor(m_sizes.front().width() / (upright.width() * scale));
    QPainter painter(&tile);
    painter.setRenderHints(QPainter::SmoothPixmapTransform | QPainter::Antialiasing);
    painter.scale(ratio, ratio);
    painter.translate(-m_covered.topLeft());
    painter.setTransform(whole, true);
    painter.drawImage(QRectF({}, upright), source);
    painter.end();
    if (m_tone && !m_tone->isIdentity()) {
        Raster raster = rasterOf(tile);
        apply(*m_tone, raster);
        tile = imageOf(raster).convertToFormat(QImage::Format_RGB32);
    }
    tile.setDevicePixelRatio(ratio);
    fillAround(tile, whole.map(QPolygonF(QRectF({}, upright))));
    m_plain = QPixmap::fromImage(tile);
    QColor veil = m_around;
    veil.setAlphaF(static_cast<float>(fading));
    QPainter(&tile).fillRect(QRectF({}, m_covered.size()), veil);
    m_faded = QPixmap::fromImage(tile);
}

// The tone was for the photo alone.
void PhotoTile::fillAround(QImage& tile, const QPolygonF& photo) const {
    QPainterPath outside;
    outside.addRect(m_covered);
    outside.addPolygon(photo);
    QPainter painter(&tile);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(-m_covered.topLeft());
    painter.fillPath(outside, m_around);
}

void PhotoTile::draw(QPainter& painter, const QPixmap& picture, const QRect& area) const {
    const QRectF there = m_covered.translated(m_shift);
    const QRectF shown = there & QRectF(area);
    const double ratio = m_made.ratio;
    if (shown != QRectF(area)) {
        painter.fillRect(area, m_around);
    }
    if (!shown.isEmpty()) {
        const QPointF from = (shown.topLeft() - there.topLeft()) * ratio;
        painter.drawPixmap(shown, picture, QRectF(from, shown.size() * ratio));
    }
}

void PhotoTile::paint(QPainter& painter, const QRect& area) const {
    draw(painter, m_plain, area);
}

void PhotoTile::paintFaded(QPainter& painter, const QRegion& area) const {
    for (const QRect& rect : area) {
        draw(painter, m_faded, rect);
    }
}

}  // namespace matwright::app
