// SPDX-License-Identifier: MIT
#include "app/rendering/page_parts.h"

#include <QPainter>
#include <QPainterPath>
#include <cmath>

#include "app/rendering/colours.h"
#include "app/rendering/paint.h"

namespace matwright::app {

namespace {

constexpr QColor missingPhoto(206, 208, 211);

double ticks(Length length) {
    return static_cast<double>(length.ticks());
}

// From the unturned box's top left corner to the page.
QTransform laidDown(const LaidBox& at) {
    QTransform way;
    way.translate(at.centre.x, at.centre.y);
    way.rotate(at.rotation.toDegrees());
    way.translate(ticks(at.box.left()) - at.centre.x, ticks(at.box.top()) - at.centre.y);
    return way;
}

QPainterPath boxPath(const LaidBox& at) {
    QPainterPath path;
    path.addRect(0, 0, ticks(at.box.x.length()), ticks(at.box.y.length()));
    return laidDown(at).map(path);
}

// A textured fill, because its edges are smoothed and those of a clip are not.
void fillWith(QPainter& painter, const QPainterPath& path, QBrush picture,
              const QTransform& toPage) {
    picture.setTransform(toPage);
    painter.fillPath(path, picture);
}

void paintPaper(QPainter& painter, const QPainterPath& outline, const PaperFill& fill,
                PartPictures& pictures) {
    const QImage picture = pictures.paperPicture(fill.look);
    painter.fillPath(outline, toColor(fill.look.colour));
    if (!picture.isNull()) {
        const double scale = ticks(fill.look.pictureWidth) / picture.width();
        fillWith(painter, outline, QBrush(picture),
                 QTransform::fromScale(scale, scale) * laidDown(fill.at));
    }
}

bool isUprightBox(const QPainterPath& outline, const LaidBox& at) {
    if (!at.rotation.isZero() || outline.elementCount() > 5) {
        return false;
    }
    const QRectF box = boxPath(at).boundingRect();
    const auto isNear = [](double a, double b) { return std::abs(a - b) <= 1; };
    for (int i = 0; i < outline.elementCount(); ++i) {
        const QPointF corner = outline.elementAt(i);
        const bool onSide = isNear(corner.x(), box.left()) || isNear(corner.x(), box.right());
        const bool onEnd = isNear(corner.y(), box.top()) || isNear(corner.y(), box.bottom());
        if (!onSide || !onEnd) {
            return false;
        }
    }
    return outline.elementCount() >= 4;
}

// Most slots are upright boxes and their pictures were made for this very size: put down on whole
// pixels, at most half a pixel off, many times faster than a texture. False where that would not
// do.
bool putDown(QPainter& painter, const QPainterPath& outline, const PhotoFill& fill,
             QImage& picture) {
    const QTransform toDevice = painter.worldTransform();
    if (toDevice.type() > QTransform::TxScale || !isUprightBox(outline, fill.window)) {
        return false;
    }
    const double ratio = painter.device()->devicePixelRatioF();
    const QRectF target = toDevice.mapRect(outline.boundingRect());
    if (std::abs(target.width() * ratio - picture.width()) > 1 ||
        std::abs(target.height() * ratio - picture.height()) > 1) {
        return false;
    }
    picture.setDevicePixelRatio(ratio);
    painter.setWorldTransform({});
    painter.drawImage(QPointF(std::round(target.left() * ratio) / ratio,
                              std::round(target.top() * ratio) / ratio),
                      picture);
    painter.setWorldTransform(toDevice);
    return true;
}

void paintPhoto(QPainter& painter, const QPainterPath& outline, const PagePiece& part,
                const PhotoFill& fill, PartPictures& pictures, double pixelsPerTick) {
    QImage picture = pictures.windowPicture(part.piece, fill, pixelsPerTick);
    if (!picture.isNull() && putDown(painter, outline, fill, picture)) {
        return;
    }
    painter.fillPath(outline, Qt::white);
    const QPainterPath window = outline.intersected(boxPath(fill.window));
    if (picture.isNull()) {
        painter.fillPath(window, missingPhoto);
        return;
    }
    picture.setDevicePixelRatio(1);
    const QTransform scaled =
        QTransform::fromScale(ticks(fill.window.box.x.length()) / picture.width(),
                              ticks(fill.window.box.y.length()) / picture.height());
    fillWith(painter, window, QBrush(picture), scaled * laidDown(fill.window));
}

}  // namespace

void paintPart(QPainter& painter, const PagePiece& part, PartPictures& pictures,
               double pixelsPerTick) {
    const QPainterPath outline = toPainterPath(part.outline);
    painter.save();
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    if (const auto* colour = std::get_if<Colour>(&part.fill)) {
        painter.fillPath(outline, toColor(*colour));
    } else if (const auto* paper = std::get_if<PaperFill>(&part.fill)) {
        paintPaper(painter, outline, *paper, pictures);
    } else if (const auto* photo = std::get_if<PhotoFill>(&part.fill)) {
        paintPhoto(painter, outline, part, *photo, pictures, pixelsPerTick);
    } else {
        for (const DrawingItem& item : std::get<SketchFill>(part.fill).items) {
            paintItem(painter, item);
        }
    }
    if (part.edge) {
        QPen pen(toColor(part.edge->colour), ticks(part.edge->width));
        pen.setJoinStyle(Qt::MiterJoin);
        painter.strokePath(outline, pen);
    }
    painter.restore();
}

}  // namespace matwright::app
