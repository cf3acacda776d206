// SPDX-License-Identifier: MIT
#include "app/canvas/lifted_pictures.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/canvas/page_painter.h"

namespace matwright::app {

namespace {

// Larger pieces cost as much to put down as to draw; and all pictures together stay small.
constexpr double mostPixels = 1'000'000;
constexpr double mostPixelsTogether = 12'000'000;

bool sameButForPlace(const Piece& a, Piece b) {
    b.place = a.place;
    return a == b;
}

}  // namespace

void LiftedPictures::clear() {
    m_entries.clear();
    m_pixels = 0;
}

std::size_t LiftedPictures::count() const {
    return static_cast<std::size_t>(std::ranges::count_if(
        m_entries, [](const auto& entry) { return !entry.second.picture.isNull(); }));
}

void LiftedPictures::paint(QPainter& painter, std::int64_t key, const Piece& piece,
                           std::size_t number, const Viewport& viewport, const LabelStyle& labels) {
    const double ratio = painter.device()->devicePixelRatioF();
    Entry& entry = m_entries[key];
    if (entry.pixelsPerTick != viewport.pixelsPerTick() || !sameButForPlace(entry.piece, piece)) {
        m_pixels -= double(entry.picture.width()) * entry.picture.height();
        entry = {piece, {}, {}, {}, viewport.pixelsPerTick()};
        paintNow(painter, key, piece, number, viewport, labels);
        return;
    }
    if (entry.picture.isNull() || entry.picture.devicePixelRatio() != ratio) {
        entry.piece.place = piece.place;
        draw(entry, key, number, viewport, labels, ratio);
    }
    if (entry.picture.isNull()) {
        paintNow(painter, key, piece, number, viewport, labels);
        return;
    }
    const QPointF by = (viewport.toView(piece.place) - entry.placeAt) * ratio;
    painter.drawPixmap(entry.pictureAt + QPointF(std::round(by.x()), std::round(by.y())) / ratio,
                       entry.picture);
}

void LiftedPictures::paintNow(QPainter& painter, std::int64_t key, const Piece& piece,
                              std::size_t number, const Viewport& viewport,
                              const LabelStyle& labels) const {
    const PieceId id{key > 0 ? static_cast<std::uint32_t>(key) : 0};
    if (m_dress.dresses(id, piece)) {
        paintDressed(painter, id, piece, m_dress.placementOf(id), viewport, m_dress);
    } else {
        paintPiece(painter, piece, number, viewport, labels);
    }
}

void LiftedPictures::draw(Entry& entry, std::int64_t key, std::size_t number,
                          const Viewport& viewport, const LabelStyle& labels,
                          double devicePixelRatio) {
    m_pixels -= double(entry.picture.width()) * entry.picture.height();
    entry.picture = {};
    const QRectF logical = paintedRect(entry.piece, viewport);
    const QRect device =
        QRectF(logical.topLeft() * devicePixelRatio, logical.size() * devicePixelRatio)
            .toAlignedRect();
    const double pixels = double(device.width()) * device.height();
    if (pixels > mostPixels || m_pixels + pixels > mostPixelsTogether) {
        return;
    }
    m_pixels += pixels;
    entry.pictureAt = QPointF(device.topLeft()) / devicePixelRatio;
    entry.placeAt = viewport.toView(entry.piece.place);
    entry.picture = QPixmap(device.size());
    entry.picture.setDevicePixelRatio(devicePixelRatio);
    entry.picture.fill(Qt::transparent);
    QPainter painter(&entry.picture);
    painter.translate(-entry.pictureAt);
    paintNow(painter, key, entry.piece, number, viewport, labels);
}

}  // namespace matwright::app
