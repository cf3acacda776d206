// SPDX-License-Identifier: MIT
#include "app/photos/photo_mime.h"

#include <QCoreApplication>
#include <QMimeData>
#include <QUrl>

namespace matwright::app {

namespace {

QByteArray ownMark() {
    return QByteArray::number(QCoreApplication::applicationPid());
}

}  // namespace

QMimeData* toMime(const PhotoWork& work, const std::vector<PhotoId>& photos) {
    auto* mime = new QMimeData;
    QByteArray ids = ownMark();
    QList<QUrl> files;
    for (const PhotoId id : photos) {
        if (const Photo* photo = find(work, id)) {
            ids += ' ' + QByteArray::number(id.value);
            files << QUrl::fromLocalFile(QString::fromStdString(photo->path));
        }
    }
    if (!files.isEmpty()) {
        mime->setData(QLatin1StringView(photosMimeType), ids);
        mime->setUrls(files);
    }
    return mime;
}

std::vector<PhotoId> photosFromMime(const QMimeData* mime) {
    if (!mime) {
        return {};
    }
    const QList<QByteArray> words = mime->data(QLatin1StringView(photosMimeType)).split(' ');
    std::vector<PhotoId> photos;
    if (words.value(0) != ownMark()) {
        return photos;
    }
    for (const QByteArray& word : words.mid(1)) {
        if (const auto value = word.toUInt(); value > 0) {
            photos.push_back(PhotoId{value});
        }
    }
    return photos;
}

QStringList filesFromMime(const QMimeData* mime) {
    QStringList files;
    if (mime && mime->hasUrls()) {
        for (const QUrl& url : mime->urls()) {
            if (url.isLocalFile()) {
                files << url.toLocalFile();
            }
        }
    }
    return files;
}

}  // namespace matwright::app
