// SPDX-License-Identifier: MIT
#include "app/photos/reading/photo_reader.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <utility>

#include "app/photos/cropped_picture.h"
#include "core/photo/photo_source.h"

namespace matwright::app {

namespace {

constexpr int threads = 2;
constexpr qint64 thumbnailBytesOnDisk = 256LL << 20;
constexpr int smallPictureSide = 400;
constexpr int smallPictureQuality = 82;
// Answers come in handfuls, so that the tray is not sorted anew for each of two hundred photos.
constexpr std::chrono::milliseconds tellEvery{120};

Decoded thumbnailOf(const WantedPhoto& photo, ThumbnailFiles& files, const std::stop_token& stop) {
    const bool isPlaceKnown = !photo.path.empty();
    if (auto kept = files.find(photo.content, PhotoService::thumbnailSide)) {
        Decoded made;
        made.picture = std::move(*kept);
        made.state = isPlaceKnown ? stateOnDisk(photo.path) : PhotoState::Unknown;
        made.isRemembered = true;
        return made;
    }
    if (!isPlaceKnown) {
        Decoded none;
        none.state = PhotoState::Unknown;
        return none;
    }
    Decoded made = decoded(photo, toneSampleSide, stop);
    if (!made.picture.isNull()) {
        made.picture = made.picture.scaled(PhotoService::thumbnailSide, PhotoService::thumbnailSide,
                                           Qt::KeepAspectRatio, Qt::SmoothTransformation);
        files.keep(photo.content, PhotoService::thumbnailSide, made.picture);
    }
    return made;
}

}  // namespace

PhotoReader::PhotoReader(const QString& cacheFolder, PhotoMemory memory)
    : m_files(cacheFolder + QStringLiteral("/photo-thumbnails"), thumbnailBytesOnDisk,
              {ThumbnailFiles::Format::Jpeg, 1}),
      m_pageBytes(memory.page),
      m_thumbnails(memory.thumbnails),
      m_copies(memory.page),
      m_jobs(threads) {
    m_tell.setSingleShot(true);
    m_tell.setInterval(tellEvery);
    connect(&m_tell, &QTimer::timeout, this, &PhotoReader::tellLookedAt);
}

PhotoReader::~PhotoReader() = default;

// ---- pictures

QImage PhotoReader::thumbnail(const WantedPhoto& photo) {
    QImage picture = m_thumbnails.find(photo.content);
    if (picture.isNull() && stateOf(photo.content) != PhotoState::Broken) {
        fetchThumbnail(photo, Urgency::Visible);
    }
    return picture;
}

void PhotoReader::makeThumbnails(std::vector<WantedPhoto> photos) {
    for (const WantedPhoto& photo : photos) {
        if (m_thumbnails.look(photo.content).isNull()) {
            m_total += fetchThumbnail(photo, Urgency::Background) ? 1 : 0;
        }
    }
    advance(0);
}

// One that waits in the background is asked for a second time when it comes into sight; the second
// then finds it on the disk.
bool PhotoReader::fetchThumbnail(const WantedPhoto& photo, Urgency urgency) {
    const bool isSeen = urgency == Urgency::Visible;
    if (isSeen && !m_asked.insert(photo.content).second) {
        return false;
    }
    const auto round = isSeen ? std::nullopt : std::optional(m_round);
    return m_jobs.add(
        urgency, photo.content.text(),
        [this, photo, round](const std::stop_token& stop) {
            later([this, content = photo.content, made = thumbnailOf(photo, m_files, stop), round] {
                takeThumbnail(content, made, round);
            });
        },
        isSeen);
}

void PhotoReader::takeThumbnail(const ContentKey& content, const Decoded& made,
                                std::optional<int> round) {
    if (!round) {
        m_asked.erase(content);
    } else if (*round == m_round) {
        advance(1);
    }
    if (made.stopped) {
        return;
    }
    noteState(content, made);
    if (made.sample) {
        m_samples.emplace(content, *made.sample);
    }
    if (!made.picture.isNull()) {
        m_thumbnails.put(content, made.picture);
        emit thumbnailReady(content);
        if (made.sample) {
            emit toneSampleReady(content);
        }
    }
}

int PhotoReader::sideFor(std::size_t photos, qint64 bytes) {
    // Of a square photo at four bytes a pixel: no other of this side takes more.
    for (const int side : {workingSide, 1'800, 1'300, 900, 640}) {
        if (qint64{4} * side * side * static_cast<qint64>(photos) <= bytes) {
            return side;
        }
    }
    return 450;
}

void PhotoReader::showOnPage(std::vector<WantedPhoto> photos) {
    if (photos == m_onPage) {
        return;
    }
    const int side = sideFor(photos.size(), m_pageBytes);
    m_onPage = std::move(photos);
    for (const std::string& key : m_jobs.dropWaiting(Urgency::Page)) {
        m_coming.erase(key);
    }
    std::erase_if(m_copySides, [&](const auto& copy) {
        const bool isShown =
            std::ranges::find(m_onPage, copy.first, &WantedPhoto::content) != m_onPage.end();
        const bool isTooLarge = copy.second > side;
        if (!isShown || isTooLarge) {
            m_copies.remove(copy.first);
        }
        return !isShown || isTooLarge;
    });
    for (const WantedPhoto& photo : m_onPage) {
        const auto copy = m_copySides.find(photo.content);
        if (copy != m_copySides.end() && copy->second >= side) {
            continue;
        }
        if (int& coming = m_coming[photo.content.text()]; coming < side) {
            coming = side;
            fetchCopy(photo, side, Urgency::Page);
        }
    }
}

void PhotoReader::showLarge(std::optional<WantedPhoto> photo) {
    m_jobs.drop(Urgency::Large);
    if (!photo) {
        m_large.reset();
    } else if (!m_large || m_large->photo.content != photo->content) {
        m_large = Large{*photo, {}};
        fetchCopy(*photo, workingSide, Urgency::Large);
    }
}

void PhotoReader::fetchCopy(const WantedPhoto& photo, int side, Urgency urgency) {
    m_jobs.add(urgency, photo.content.text(),
               [this, photo, side, urgency](const std::stop_token& stop) {
                   later([this, content = photo.content, made = decoded(photo, side, stop), side,
                          urgency] { takeCopy(content, made, side, urgency); });
               });
}

void PhotoReader::takeCopy(const ContentKey& content, const Decoded& made, int side,
                           Urgency urgency) {
    if (urgency == Urgency::Page) {
        m_coming.erase(content.text());
    }
    if (made.stopped) {
        return;
    }
    noteState(content, made);
    if (made.picture.isNull()) {
        return;
    }
    if (urgency == Urgency::Large) {
        if (!m_large || m_large->photo.content != content) {
            return;
        }
        m_large->picture = made.picture;
    } else {
        if (std::ranges::find(m_onPage, content, &WantedPhoto::content) == m_onPage.end()) {
            return;
        }
        m_copies.put(content, made.picture);
        m_copySides[content] = side;
    }
    emit workingCopyReady(content);
}

QImage PhotoReader::workingCopy(const ContentKey& content) const {
    if (m_large && m_large->photo.content == content && !m_large->picture.isNull()) {
        return m_large->picture;
    }
    const QImage copy = m_copies.look(content);
    return copy.isNull() ? m_thumbnails.look(content) : copy;
}

bool PhotoReader::isCopyComing(const ContentKey& content) const {
    return m_coming.contains(content.text());
}

std::optional<Histogram> PhotoReader::toneSample(const WantedPhoto& photo) {
    if (const auto known = m_samples.find(photo.content); known != m_samples.end()) {
        return known->second;
    }
    if (stateOf(photo.content) != PhotoState::Broken) {
        m_jobs.add(Urgency::Tone, photo.content.text(), [this, photo](const std::stop_token& stop) {
            later([this, content = photo.content, made = decoded(photo, toneSampleSide, stop)] {
                noteState(content, made);
                if (made.sample && m_samples.emplace(content, *made.sample).second) {
                    emit toneSampleReady(content);
                }
            });
        });
    }
    return {};
}

std::string PhotoReader::smallPicture(const Photo& photo, const Placement& placement, Size window) {
    const QImage copy = workingCopy(photo.content);
    if (copy.isNull()) {
        return {};
    }
    Raster raster =
        toRaster(croppedPicture(copy, placement.crop, photo.upright, window, smallPictureSide));
    const auto sample = m_samples.find(photo.content);
    Tone tone = photo.tone;
    tone.evenOut = tone.evenOut && sample != m_samples.end();
    apply(toneMapOf(tone, sample == m_samples.end() ? Histogram() : sample->second), raster);
    return smallJpeg(raster, smallPictureQuality);
}

qint64 PhotoReader::memoryUsed() const {
    return m_thumbnails.bytes() + m_copies.bytes() + (m_large ? m_large->picture.sizeInBytes() : 0);
}

bool PhotoReader::isIdle() const {
    return m_jobs.isIdle() && m_looked.empty() && m_toLookAt == 0 && m_total == 0;
}

// ---- states

PhotoState PhotoReader::stateOf(const ContentKey& content) const {
    const auto known = m_conditions.find(content);
    return known == m_conditions.end() ? PhotoState::Unknown : known->second.state;
}

QString PhotoReader::faultOf(const ContentKey& content) const {
    const auto known = m_conditions.find(content);
    return known == m_conditions.end() ? QString() : known->second.fault;
}

// Of a photo whose place is not known nothing is noted: it may well be where others know it to be.
void PhotoReader::noteState(const ContentKey& content, const Decoded& made) {
    if (made.state == PhotoState::Unknown) {
        return;
    }
    Condition& known = m_conditions[content];
    const bool saysMore = known.state == PhotoState::Changed || known.state == PhotoState::Broken;
    if (made.isRemembered && saysMore && made.state == PhotoState::There) {
        return;
    }
    if (!made.isRemembered) {
        known.stamp = made.stamp;
    }
    setState(content, made.state, made.fault);
}

void PhotoReader::setState(const ContentKey& content, PhotoState state, const QString& fault) {
    Condition& known = m_conditions[content];
    if (known.state != state || known.fault != fault) {
        known.state = state;
        known.fault = fault;
        emit stateChanged(content);
    }
}

}  // namespace matwright::app
