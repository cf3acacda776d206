// SPDX-License-Identifier: MIT
#include "app/photos/photo_tray_delegate.h"

#include <QPainter>
#include <QPainterPath>
#include <array>
#include <cmath>
#include <numbers>

#include "app/photos/photo_tray_model.h"
#include "core/measure/length_text.h"
#include "core/photo/photo_words.h"

namespace matwright::app {

namespace {

constexpr int padding = 6;
constexpr QSize pictureRoom(112, 88);
constexpr qreal badgeSide = 20;
// White on these: at least 4.5:1.
constexpr QColor starGround(138, 90, 0);
constexpr QColor focalGround(160, 34, 84);
constexpr QColor usedGround(28, 110, 62);
constexpr QColor goneGround(150, 40, 32);

const PhotoTrayModel& modelOf(const QModelIndex& index) {
    return *static_cast<const PhotoTrayModel*>(index.model());
}

void paintCell(QPainter& painter, const QStyleOptionViewItem& option) {
    const bool isSelected = option.state & QStyle::State_Selected;
    const bool isFocused = option.state & QStyle::State_HasFocus;
    const bool isHovered = option.state & QStyle::State_MouseOver;
    if (!isSelected && !isFocused && !isHovered) {
        return;
    }
    QColor fill = option.palette.color(QPalette::Highlight);
    fill.setAlphaF(isSelected ? 0.28F : 0.12F);
    painter.setBrush(fill);
    painter.setPen(isFocused ? QPen(option.palette.color(QPalette::Highlight), 2) : Qt::NoPen);
    painter.drawRoundedRect(QRectF(option.rect).adjusted(2, 2, -2, -2), 4, 4);
}

QPainterPath star(QPointF centre, qreal radius) {
    QPolygonF points;
    for (int i = 0; i < 10; ++i) {
        const double turn = std::numbers::pi * (i / 5.0 - 0.5);
        const double reach = i % 2 == 0 ? radius : radius * 0.42;
        points << centre + QPointF(std::cos(turn), std::sin(turn)) * reach;
    }
    QPainterPath path;
    path.addPolygon(points);
    path.closeSubpath();
    return path;
}

// A round ground that a sign is drawn on in white.
QRectF badge(QPainter& painter, QPointF topLeft, QColor ground) {
    const QRectF room(topLeft, QSizeF(badgeSide, badgeSide));
    painter.setPen(QPen(Qt::white, 1.5));
    painter.setBrush(ground);
    painter.drawEllipse(room.adjusted(1, 1, -1, -1));
    painter.setBrush(Qt::white);
    return room;
}

void paintFavourite(QPainter& painter, QPointF at) {
    const QRectF room = badge(painter, at, starGround);
    painter.setPen(Qt::NoPen);
    painter.drawPath(star(room.center(), 6.2));
}

void paintFocal(QPainter& painter, QPointF at) {
    const QRectF room = badge(painter, at, focalGround);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(Qt::white, 1.6));
    painter.drawEllipse(room.center(), 5.2, 5.2);
    painter.setBrush(Qt::white);
    painter.setPen(Qt::NoPen);
    painter.drawEllipse(room.center(), 2.2, 2.2);
}

void paintUsed(QPainter& painter, QPointF at) {
    const QRectF room = badge(painter, at, usedGround);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(Qt::white, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const QPointF c = room.center();
    painter.drawPolyline(
        QPolygonF{c + QPointF(-4, 0.5), c + QPointF(-1.2, 3.4), c + QPointF(4.2, -3.2)});
}

void paintGone(QPainter& painter, const QRectF& picture, const QFont& font, const QString& words) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(goneGround);
    const QRectF band(picture.left(), picture.bottom() - 18, picture.width(), 18);
    painter.drawRect(band);
    painter.setPen(Qt::white);
    painter.setFont(font);
    painter.drawText(band, Qt::AlignCenter,
                     QFontMetricsF(font).elidedText(words, Qt::ElideRight, band.width() - 4));
}

QString stateWord(PhotoState state) {
    switch (state) {
        case PhotoState::Missing:
            return PhotoTrayDelegate::tr("not there");
        case PhotoState::Changed:
            return PhotoTrayDelegate::tr("changed");
        case PhotoState::Broken:
            return PhotoTrayDelegate::tr("cannot be read");
        case PhotoState::Unknown:
        case PhotoState::There:
            break;
    }
    return {};
}

// Where the picture lies in its room: it stands on the room's bottom.
QRectF pictureRect(const QImage& image, PixelSize upright, const QRect& room) {
    QSizeF size = image.isNull() ? QSizeF(upright.width, upright.height) : QSizeF(image.size());
    size.scale(room.size(), Qt::KeepAspectRatio);
    return {QPointF(room.center().x() + 0.5 - size.width() / 2, room.bottom() + 1 - size.height()),
            size};
}

void paintPicture(QPainter& painter, const QRectF& place, const QImage& image,
                  const QPalette& palette) {
    if (image.isNull()) {
        painter.setPen(QPen(palette.color(QPalette::Mid), 1, Qt::DashLine));
        painter.setBrush(palette.color(QPalette::Base));
        painter.drawRect(place.adjusted(0.5, 0.5, -0.5, -0.5));
    } else {
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.drawImage(place, image);
    }
}

void paintMarks(QPainter& painter, const QRectF& picture, const QModelIndex& index) {
    const PhotoTrayModel& model = modelOf(index);
    QPointF at = picture.topLeft() + QPointF(2, 2);
    if (model.photoAt(index)->favourite) {
        paintFavourite(painter, at);
        at.rx() += badgeSide + 2;
    }
    if (model.isFocalAt(index)) {
        paintFocal(painter, at);
    }
    if (model.isOnPageAt(index)) {
        paintUsed(painter, picture.topRight() + QPointF(-badgeSide - 2, 2));
    }
}

}  // namespace

QString shortPrintText(int widthPixels, int heightPixels) {
    for (const int ppi : {wishedPpi, warnedPpi}) {
        if (const auto print = largestPrint({widthPixels, heightPixels}, ppi)) {
            // Upright, as prints are named everywhere.
            const QString size = QString::fromStdString(
                naturalSizeText(print->isUpright() ? *print : print->turned()));
            return ppi == wishedPpi ? PhotoTrayDelegate::tr("up to %1").arg(size)
                                    : PhotoTrayDelegate::tr("soft at %1").arg(size);
        }
    }
    return PhotoTrayDelegate::tr("too small to print");
}

void PhotoTrayDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const {
    const PhotoTrayModel& model = modelOf(index);
    const Photo* photo = model.photoAt(index);
    if (!photo) {
        return;
    }
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    paintCell(*painter, option);
    const QRect inner = option.rect.adjusted(padding, padding, -padding, -padding);
    const QRect room(inner.left() + (inner.width() - pictureRoom.width()) / 2, inner.top(),
                     pictureRoom.width(), pictureRoom.height());
    const QImage image = model.thumbnailAt(index);
    const QRectF place = pictureRect(image, photo->upright, room);
    paintPicture(*painter, place, image, option.palette);
    paintMarks(*painter, place, index);
    if (const QString word = stateWord(model.stateAt(index)); !word.isEmpty()) {
        paintGone(*painter, place, option.font, word);
    }
    painter->setFont(option.font);
    painter->setPen(option.palette.color(QPalette::WindowText));
    const int line = option.fontMetrics.height();
    const QRect first(inner.left(), room.bottom() + 4, inner.width(), line);
    painter->drawText(
        first, Qt::AlignCenter,
        option.fontMetrics.elidedText(index.data().toString(), Qt::ElideMiddle, inner.width()));
    painter->drawText(
        first.translated(0, line), Qt::AlignCenter,
        option.fontMetrics.elidedText(shortPrintText(photo->upright.width, photo->upright.height),
                                      Qt::ElideRight, inner.width()));
    painter->restore();
}

QSize PhotoTrayDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    return {pictureRoom.width() + 2 * padding,
            pictureRoom.height() + 4 + 2 * option.fontMetrics.height() + 2 * padding};
}

}  // namespace matwright::app
