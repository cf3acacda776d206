// SPDX-License-Identifier: MIT
#include "app/cutting/paper_words.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QImageReader>
#include <QPainter>

namespace matwright::app {

namespace {

constexpr QSize keptSide(160, 160);
constexpr qint64 mostPictureBytes = 200LL << 20;

QString paperWord(const char* text) {
    return QCoreApplication::translate("matwright::app::PaperWords", text);
}

QImage readSmall(const QString& path) {
    if (QFileInfo(path).size() > mostPictureBytes) {
        return {};
    }
    QImageReader reader(path);
    reader.setAutoTransform(true);
    if (reader.supportsOption(QImageIOHandler::ScaledSize) && reader.size().isValid()) {
        reader.setScaledSize(reader.size().scaled(keptSide, Qt::KeepAspectRatioByExpanding));
    }
    const QImage picture = reader.read();
    return picture.isNull()
               ? picture
               : picture.scaled(keptSide, Qt::KeepAspectRatioByExpanding, Qt::SmoothTransformation);
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

QColor toColor(Colour colour) {
    return {colour.red, colour.green, colour.blue};
}

Colour toColour(const QColor& colour) {
    return {static_cast<std::uint8_t>(colour.red()), static_cast<std::uint8_t>(colour.green()),
            static_cast<std::uint8_t>(colour.blue())};
}

QPixmap Swatches::swatch(const PaperOnHand& paper, QSize side, double pixelRatio) {
    QPixmap pixmap(side * pixelRatio);
    pixmap.setDevicePixelRatio(pixelRatio);
    pixmap.fill(toColor(paper.colour));
    QPainter painter(&pixmap);
    if (!paper.picture.empty()) {
        const QString path = QString::fromStdString(paper.picture);
        if (!m_pictures.contains(path)) {
            m_pictures.insert(path, readSmall(path));
        }
        const QImage& picture = m_pictures[path];
        if (!picture.isNull()) {
            const QSize shown = side.scaled(picture.size(), Qt::KeepAspectRatio);
            painter.setRenderHint(QPainter::SmoothPixmapTransform);
            painter.drawImage(QRect({}, side), picture, QRect({}, shown));
        }
    }
    painter.setPen(QColor(0, 0, 0, 110));
    painter.drawRect(QRectF(0.5, 0.5, side.width() - 1, side.height() - 1));
    return pixmap;
}

}  // namespace matwright::app
