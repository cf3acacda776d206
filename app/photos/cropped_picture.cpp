// SPDX-License-Identifier: MIT
#include "app/photos/cropped_picture.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace matwright::app {

namespace {

// From the upright photo to how it lies after its quarter turns, both in pixels.
QTransform quarterTurned(int turns, PixelSize upright) {
    QTransform turned;
    switch (turns) {
        case 1:
            turned.translate(upright.height, 0);
            break;
        case 2:
            turned.translate(upright.width, upright.height);
            break;
        case 3:
            turned.translate(0, upright.width);
            break;
        default:
            break;
    }
    return turned.rotate(90.0 * turns);
}

}  // namespace

QTransform cropTransform(const Crop& crop, PixelSize upright, Size window, QSize picture,
                         QSizeF target) {
    const CropWindow shown = windowIn(crop, upright, window);
    QTransform way;
    way.translate(target.width() / 2, target.height() / 2);
    way.scale(target.width() / shown.width, target.height() / shown.height);
    way.rotateRadians(shown.radians);
    way.translate(-shown.centreX, -shown.centreY);
    way = quarterTurned(crop.quarterTurns, upright) * way;
    return QTransform::fromScale(upright.width / static_cast<double>(picture.width()),
                                 upright.height / static_cast<double>(picture.height())) *
           way;
}

QImage shareOf(const QImage& window, double from, double to) {
    if (from <= 0 && to >= 1) {
        return window;
    }
    const int left = static_cast<int>(std::lround(from * window.width()));
    const int right = static_cast<int>(std::lround(to * window.width()));
    return window.copy(left, 0, std::max(1, right - left), window.height());
}

QImage croppedPicture(const QImage& picture, const Crop& crop, PixelSize upright, Size window,
                      int longSide) {
    const double wide = window.width.toInches();
    const double tall = window.height.toInches();
    const double scale = longSide / std::max(wide, tall);
    const QSize size(std::max(1, static_cast<int>(std::lround(wide * scale))),
                     std::max(1, static_cast<int>(std::lround(tall * scale))));
    QImage cropped(size, QImage::Format_RGB32);
    cropped.fill(Qt::white);
    // Qt's smooth painting takes four neighbours only, so a picture much too large is made smaller
    // first.
    const CropWindow shown = windowIn(crop, upright, window);
    const double shrink = size.width() / shown.width * upright.width / picture.width();
    const QImage near =
        shrink < 0.5 ? picture.scaled((QSizeF(picture.size()) * shrink).toSize().expandedTo({1, 1}),
                                      Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
                     : picture;
    QPainter painter(&cropped);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.setTransform(cropTransform(crop, upright, window, near.size(), size));
    painter.drawImage(0, 0, near);
    return cropped;
}

}  // namespace matwright::app
