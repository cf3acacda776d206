// SPDX-License-Identifier: MIT
#include "app/printplan/print_picture.h"

#include <QPainter>
#include <QPixmap>
#include <algorithm>
#include <cmath>

#include "app/photos/cropped_picture.h"
#include "app/photos/photo_access.h"

namespace matwright::app {

namespace {

// What shows in the window, toned where the photo's copy is large enough for that. How large the
// photo is may not be known; its small copy has the same shape.
QImage windowPicture(PhotoService& service, Photo photo, const Print& print, int longSide) {
    const QImage thumbnail = service.thumbnail(wanted(photo));
    if (thumbnail.isNull()) {
        return {};
    }
    if (!photo.upright.isPositive()) {
        photo.upright = {thumbnail.width(), thumbnail.height()};
    }
    const std::string jpeg =
        service.smallPicture(photo, {print.photo, print.crop, print.border}, print.window);
    if (!jpeg.empty()) {
        return QImage::fromData(reinterpret_cast<const uchar*>(jpeg.data()),
                                static_cast<int>(jpeg.size()), "JPG");
    }
    return croppedPicture(thumbnail, print.crop, photo.upright, print.window, longSide);
}

int pixelsOf(Length length, double scale) {
    return std::max(1, static_cast<int>(std::lround(length.toInches() * scale)));
}

}  // namespace

QImage printPicture(PhotoService* service, const Photo& photo, const Print& print, int longSide) {
    const QImage window = service ? windowPicture(*service, photo, print, longSide) : QImage();
    if (window.isNull()) {
        return {};
    }
    const double scale =
        longSide / std::max(print.paper.width.toInches(), print.paper.height.toInches());
    QImage paper(pixelsOf(print.paper.width, scale), pixelsOf(print.paper.height, scale),
                 QImage::Format_RGB32);
    paper.fill(Qt::white);
    QPainter painter(&paper);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    const Length border = print.border;
    const QRectF place((print.trim.left() + border).toInches() * scale,
                       (print.trim.top() + border).toInches() * scale,
                       (print.trim.x.length() - border - border).toInches() * scale,
                       (print.trim.y.length() - border - border).toInches() * scale);
    painter.drawImage(place, shareOf(window, print.from, print.to));
    return paper;
}

QPixmap printIcon(PhotoService* service, const Photo& photo, const Print& print, int side) {
    const QImage picture = printPicture(service, photo, print, side);
    if (picture.isNull()) {
        return {};
    }
    QPixmap icon(side, side);
    icon.fill(Qt::transparent);
    QPainter painter(&icon);
    const QPoint corner((side - picture.width()) / 2, (side - picture.height()) / 2);
    painter.drawImage(corner, picture);
    painter.setPen(QColor(0x80, 0x80, 0x80));
    painter.drawRect(QRect(corner, picture.size()).adjusted(0, 0, -1, -1));
    return icon;
}

}  // namespace matwright::app
