// SPDX-License-Identifier: MIT
#include "app/photos/rasters.h"

#include <QColorSpace>
#include <QPainter>
#include <algorithm>

namespace matwright::app {

QImage imageOf(const Raster& raster) {
    if (!raster.size.isPositive()) {
        return {};
    }
    QImage image(raster.size.width, raster.size.height, QImage::Format_RGB888);
    if (image.isNull()) {
        return {};
    }
    for (int y = 0; y < raster.size.height; ++y) {
        std::ranges::copy(raster.row(y), image.scanLine(y));
    }
    image.setColorSpace(QColorSpace::SRgb);
    return image;
}

Raster rasterOf(const QImage& image) {
    QImage opaque = image;
    if (image.hasAlphaChannel()) {
        opaque = QImage(image.size(), QImage::Format_RGB32);
        opaque.fill(Qt::white);
        QPainter(&opaque).drawImage(QRect({}, image.size()), image);
    }
    opaque.convertTo(QImage::Format_RGB888);
    Raster raster{{opaque.width(), opaque.height()}, {}};
    raster.pixels.reserve(std::size_t{3} * static_cast<std::size_t>(raster.size.count()));
    for (int y = 0; y < opaque.height(); ++y) {
        const uchar* row = opaque.constScanLine(y);
        raster.pixels.insert(raster.pixels.end(), row, row + std::ptrdiff_t{3} * opaque.width());
    }
    return raster;
}

}  // namespace matwright::app
