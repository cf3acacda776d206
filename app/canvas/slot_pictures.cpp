// SPDX-License-Identifier: MIT
#include "app/canvas/slot_pictures.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QFutureWatcher>
#include <QImageReader>
#include <QPainter>
#include <QtConcurrent/QtConcurrentRun>
#include <algorithm>
#include <cmath>

#include "app/editing/session.h"
#include "app/photos/cropped_picture.h"
#include "app/photos/photo_access.h"
#include "app/photos/rasters.h"
#include "app/rendering/paper_picture.h"

namespace matwright::app {

namespace {

constexpr int longestPicture = 3'000;  // pixels of a slot's picture on its longer side
constexpr int longestPaper = 1'600;    // of a paper's
constexpr int mostPaperMegabytes = maxPaperPicturePixels * 4 >> 20;

QSize pixelsOf(Size window, double pixelsPerTick) {
    const auto wide = static_cast<double>(window.width.ticks());
    const auto tall = static_cast<double>(window.height.ticks());
    const double scale = std::min(pixelsPerTick, longestPicture / std::max(wide, tall));
    return {std::max(1, static_cast<int>(std::lround(wide * scale))),
            std::max(1, static_cast<int>(std::lround(tall * scale)))};
}

// In the picture's lower left corner; readable on any photo.
void writeThatItComes(QImage& picture) {
    const QString words = QCoreApplication::translate("Photos", "Reading the photo…");
    QPainter painter(&picture);
    QFont font = painter.font();
    font.setPixelSize(std::clamp(picture.height() / 16, 11, 28));
    painter.setFont(font);
    const int room = font.pixelSize() / 2;
    const QRect place =
        painter.fontMetrics().boundingRect(words).adjusted(-room, -room / 2, room, room / 2);
    const QRect box(QPoint(room, picture.height() - room - place.height()), place.size());
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(0, 0, 0, 170));
    painter.setRenderHint(QPainter::Antialiasing);
    painter.drawRoundedRect(box, room / 2.0, room / 2.0);
    painter.setPen(Qt::white);
    painter.drawText(box, Qt::AlignCenter, words);
}

}  // namespace

SlotPictures::SlotPictures(Session& session, QObject* parent)
    : QObject(parent), m_session(session) {
    // Of the whole program: scans of large papers are beyond Qt's own limit.
    QImageReader::setAllocationLimit(mostPaperMegabytes);
    connect(&session, &Session::changed, this, [this](const Change& change) {
        if (change.kinds == Change::Everything) {
            clear();
            m_papers.clear();
        }
    });
}

void SlotPictures::useService(PhotoService* service) {
    m_service = service;
    clear();
    if (service) {
        connect(service, &PhotoService::workingCopyReady, this, &SlotPictures::photosChanged);
        connect(service, &PhotoService::thumbnailReady, this, &SlotPictures::photosChanged);
        connect(service, &PhotoService::toneSampleReady, this, &SlotPictures::photosChanged);
        connect(service, &PhotoService::stateChanged, this, &SlotPictures::photosChanged);
    }
}

void SlotPictures::clear() {
    m_pictures.clear();
    m_tileCopy.reset();
}

void SlotPictures::photosChanged(const ContentKey& content) {
    std::vector<PieceId> ids;
    for (const auto& [slot, placement] : m_session.work().placements) {
        const Photo* photo = matwright::find(m_session.work(), placement.photo);
        if (photo && photo->content == content) {
            std::erase_if(m_pictures,
                          [slot](const auto& entry) { return entry.first.first == slot; });
            ids.push_back(slot);
        }
    }
    if (!ids.empty()) {
        m_tileCopy.reset();
        emit slotsReady(ids);
    }
}

void SlotPictures::startMoving(PieceId slot) {
    m_moving = slot;
    m_tileCopy.reset();
}

void SlotPictures::stopMoving() {
    m_moving = {};
    m_tile.setCopy({}, {});
    m_tileCopy.reset();
}

std::optional<ToneMap> SlotPictures::toneOf(const Photo& photo) const {
    if (photo.tone == Tone{} || !m_service) {
        return std::nullopt;
    }
    const auto sample = m_service->toneSample(wanted(photo));
    return sample ? std::optional(toneMapOf(photo.tone, *sample)) : std::nullopt;
}

QImage SlotPictures::windowPicture(PieceId slot, const PhotoFill& fill, double pixelsPerTick) {
    const Photo* photo = matwright::find(m_session.work(), fill.photo);
    if (!photo) {
        return {};
    }
    QImage copy = m_service ? m_service->workingCopy(photo->content) : QImage();
    if (copy.isNull() && m_service) {
        copy = m_service->thumbnail(wanted(*photo));
    }
    if (copy.isNull()) {
        return m_standIn ? shareOf(m_standIn(slot), fill.from, fill.to) : QImage();
    }
    const QSize pixels = pixelsOf(fill.whole, pixelsPerTick);
    const Key key{photo->content, copy.cacheKey(), fill.crop,
                  fill.whole,     fill.from,       fill.to,
                  photo->tone,    pixels,          isBlurForNow(*photo, copy, pixels)};
    if (slot == m_moving) {
        return shareOf(moved(*photo, copy, key), key.from, key.to);
    }
    Made& made = m_pictures[{slot, fill.from}];
    if (made.picture.isNull() || made.key != key) {
        made = {key, shareOf(make(*photo, copy, key), key.from, key.to)};
        if (key.isComing) {
            writeThatItComes(made.picture);
        }
    }
    return made.picture;
}

// Only a thumbnail is there, it shows, and better is on its way.
bool SlotPictures::isBlurForNow(const Photo& photo, const QImage& copy, QSize pixels) const {
    return std::max(copy.width(), copy.height()) <= PhotoService::thumbnailSide &&
           std::max(pixels.width(), pixels.height()) > PhotoService::thumbnailSide && m_service &&
           m_service->isCopyComing(photo.content);
}

QImage SlotPictures::make(const Photo& photo, const QImage& copy, const Key& key) {
    ++m_made;
    const int longSide = std::max(key.pixels.width(), key.pixels.height());
    QImage picture = croppedPicture(copy, key.crop, photo.upright, key.window, longSide);
    if (const auto map = toneOf(photo); map && !map->isIdentity()) {
        Raster raster = rasterOf(picture);
        apply(*map, raster);
        picture = imageOf(raster);
    }
    return picture.convertToFormat(QImage::Format_RGB32);
}

QImage SlotPictures::moved(const Photo& photo, const QImage& copy, const Key& key) {
    if (m_tileCopy != key.copy) {
        m_tileCopy = key.copy;
        m_tile.setCopy(copy, photo.upright);
    }
    m_tile.setTone(toneOf(photo));
    const CropWindow shown = windowIn(key.crop, photo.upright, key.window);
    QTransform way;
    way.translate(key.pixels.width() / 2.0, key.pixels.height() / 2.0);
    way.scale(key.pixels.width() / shown.width, key.pixels.width() / shown.width);
    way.rotateRadians(shown.radians);
    way.translate(-shown.centreX, -shown.centreY);
    m_tile.prepare(way, key.crop.quarterTurns, key.pixels, 1);
    QImage picture(key.pixels, QImage::Format_RGB32);
    QPainter painter(&picture);
    m_tile.paint(painter, QRect({}, key.pixels));
    return picture;
}

QImage SlotPictures::paperPicture(const PaperLook& look) {
    const auto known = m_papers.find({look.picture, look.content});
    if (known != m_papers.end()) {
        return known->second;
    }
    readPaper(look);
    return {};
}

// In the background: a scan of a sheet of paper is as large as a photo.
void SlotPictures::readPaper(const PaperLook& look) {
    const std::pair key(look.picture, look.content);
    m_papers.emplace(key, QImage());
    auto* watcher = new QFutureWatcher<QImage>(this);
    connect(watcher, &QFutureWatcherBase::finished, this, [this, watcher, key] {
        m_papers[key] = watcher->result();
        watcher->deleteLater();
        emit papersReady();
    });
    watcher->setFuture(
        QtConcurrent::run(readPaperPicture, QString::fromStdString(look.picture), longestPaper));
}

}  // namespace matwright::app
