// SPDX-License-Identifier: MIT
#include "app/rendering/paper_picture.h"

#include <QBuffer>
#include <QFileInfo>
#include <QImageReader>
#include <algorithm>

#include "app/rendering/colours.h"

namespace matwright::app {

namespace {

QImage readScaled(QImageReader& reader, int longSide) {
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (!size.isValid() || qint64(size.width()) * size.height() > maxPaperPicturePixels) {
        return {};
    }
    if (std::max(size.width(), size.height()) > longSide) {
        reader.setScaledSize(
            size.scaled(longSide, longSide, Qt::KeepAspectRatio).expandedTo({1, 1}));
    }
    return reader.read();
}

}  // namespace

QImage readPaperPicture(const QString& path, int longSide) {
    // A pipe or a device would make this wait.
    if (const QFileInfo file(path); !file.isFile() || file.size() > maxPaperPictureBytes) {
        return {};
    }
    QImageReader reader(path);
    return readScaled(reader, longSide);
}

QImage paperPictureIn(QByteArray bytes, int longSide) {
    if (bytes.size() > maxPaperPictureBytes) {
        return {};
    }
    QBuffer held(&bytes);
    QImageReader reader(&held);
    return readScaled(reader, longSide);
}

Colour meanColour(const QImage& picture) {
    return toColour(
        picture.scaled(1, 1, Qt::IgnoreAspectRatio, Qt::SmoothTransformation).pixelColor(0, 0));
}

}  // namespace matwright::app
