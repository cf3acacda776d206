// SPDX-License-Identifier: MIT
#include "app/cutting/paper_words.h"

#include <QCoreApplication>
#include <QPainter>

#include "app/rendering/colours.h"

namespace matwright::app {

namespace {

QString paperWord(const char* text) {
    return QCoreApplication::translate("matwright::app::PaperWords", text);
}

}  // namespace

QString kindWord(PaperKind kind) {
    return kind == PaperKind::Scrap ? paperWord("scrap") : paperWord("whole sheet");
}

QString sidesWord(PaperSides sides) {
    return sides == PaperSides::Two ? paperWord("both sides") : paperWord("one side");
}

QString patternWord(PaperPattern pattern) {
    return pattern == PaperPattern::HasUp ? paperWord("has an up") : paperWord("any way up");
}

QPixmap paperSwatch(Colour colour, const QImage& picture, QSize side, double pixelRatio) {
    QPixmap pixmap(side * pixelRatio);
    pixmap.setDevicePixelRatio(pixelRatio);
    pixmap.fill(toColor(colour));
    QPainter painter(&pixmap);
    if (!picture.isNull()) {
        const QSize shown = side.scaled(picture.size(), Qt::KeepAspectRatio);
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.drawImage(QRect({}, side), picture, QRect({}, shown));
    }
    painter.setPen(QColor(0, 0, 0, 110));
    painter.drawRect(QRectF(0.5, 0.5, side.width() - 1, side.height() - 1));
    return pixmap;
}

}  // namespace matwright::app
