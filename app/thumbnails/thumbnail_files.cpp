// SPDX-License-Identifier: MIT
#include "app/thumbnails/thumbnail_files.h"

#include <QDateTime>
#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>
#include <QTemporaryFile>
#include <algorithm>
#include <cstdio>
#include <utility>
#include <vector>

namespace matwright::app {
namespace {

using Format = ThumbnailFiles::Format;

// Of PNG 0 is small and slow, 100 large and quick; of JPEG 100 is best.
int qualityOf(Format format) {
    return format == Format::Png ? 80 : 88;
}
const char* nameOf(Format format) {
    return format == Format::Png ? "png" : "jpg";
}

struct KeptPicture {
    QDateTime written;
    qint64 bytes;
    QString path;
};

std::vector<KeptPicture> picturesIn(const QString& folder) {
    std::vector<KeptPicture> pictures;
    QDirIterator files(folder, QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        const QFileInfo info = files.nextFileInfo();
        pictures.push_back({info.lastModified(), info.size(), info.filePath()});
    }
    return pictures;
}

}  // namespace

ThumbnailFiles::ThumbnailFiles(QString folder, qint64 mostBytes, Style style)
    : m_folder(std::move(folder)),
      m_mostBytes(mostBytes),
      m_style(style),
      // The first picture of a session has the folder looked at.
      m_writtenSinceLook(mostBytes) {}

QString ThumbnailFiles::pathOf(const ContentKey& content, int side) const {
    const QString key = QString::fromStdString(content.text());
    return QStringLiteral("%1/%2/%3-%4-%5.%6")
        .arg(m_folder, key.first(2), key.sliced(2))
        .arg(side)
        .arg(m_style.look)
        .arg(QLatin1StringView(nameOf(m_style.format)));
}

std::optional<QImage> ThumbnailFiles::find(const ContentKey& content, int side) const {
    const QString path = pathOf(content, side);
    if (!QFile::exists(path)) {
        return std::nullopt;
    }
    QImage image;
    QImageReader reader(path, nameOf(m_style.format));
    if (!reader.read(&image) || image.width() > side || image.height() > side) {
        return std::nullopt;
    }
    return image.convertToFormat(QImage::Format_RGB32);
}

void ThumbnailFiles::keep(const ContentKey& content, int side, const QImage& image) {
    const QString path = pathOf(content, side);
    QDir().mkpath(QFileInfo(path).path());
    QTemporaryFile file(path + QStringLiteral(".XXXXXX"));
    if (!file.open() || !image.save(&file, nameOf(m_style.format), qualityOf(m_style.format))) {
        return;
    }
    const qint64 bytes = file.size();
    const QString written = file.fileName();
    file.close();
    if (std::rename(QFile::encodeName(written), QFile::encodeName(path)) != 0) {
        return;
    }
    file.setAutoRemove(false);
    if (m_writtenSinceLook.fetch_add(bytes) + bytes > m_mostBytes / 8) {
        m_writtenSinceLook = 0;
        prune();
    }
}

void ThumbnailFiles::prune() {
    std::vector<KeptPicture> pictures = picturesIn(m_folder);
    qint64 total = 0;
    for (const KeptPicture& picture : pictures) {
        total += picture.bytes;
    }
    if (total <= m_mostBytes) {
        return;
    }
    std::ranges::sort(pictures, {}, &KeptPicture::written);
    for (const KeptPicture& picture : pictures) {
        QFile::remove(picture.path);
        total -= picture.bytes;
        if (total <= m_mostBytes * 3 / 4) {
            return;
        }
    }
}

}  // namespace matwright::app
