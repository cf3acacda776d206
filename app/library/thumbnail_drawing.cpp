// SPDX-License-Identifier: MIT
#include "app/library/thumbnail_drawing.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/rendering/paint.h"
#include "core/picture/picture.h"

namespace matwright::app {
namespace {

constexpr double leastTextPixels = 7;
constexpr double leastLinePixels = 0.75;

void dropSmallTexts(Drawing& drawing, double pixelsPerTick) {
    for (Layer& layer : drawing.layers) {
        std::erase_if(layer.items, [&](const DrawingItem& item) {
            const auto* text = std::get_if<TextItem>(&item);
            return text &&
                   static_cast<double>(text->height.ticks()) * pixelsPerTick < leastTextPixels;
        });
    }
}

}  // namespace

QSize pictureSize(const PageSetup& page, int side) {
    const Size size = surface(page).size();
    const auto width = static_cast<double>(size.width.ticks());
    const auto height = static_cast<double>(size.height.ticks());
    const double scale = side / std::max({width, height, 1.0});
    const auto pixels = [&](double length) {
        return std::clamp(static_cast<int>(std::lround(length * scale)), 1, side);
    };
    return {pixels(width), pixels(height)};
}

QImage thumbnailOf(const Sketch& sketch, int side) {
    QImage image(pictureSize(sketch.page, side), QImage::Format_RGB32);
    image.fill(Qt::white);
    Drawing drawing = sketchPicture(sketch);
    const double scale = image.width() / static_cast<double>(drawing.size.width.ticks());
    dropSmallTexts(drawing, scale);
    QPainter painter(&image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.scale(scale, image.height() / static_cast<double>(drawing.size.height.ticks()));
    paintPreview(painter, drawing, leastLinePixels);
    return image;
}

}  // namespace matwright::app
