// SPDX-License-Identifier: MIT
#include "app/library/thumbnails.h"

#include <sys/resource.h>

#include <QMutex>
#include <algorithm>
#include <deque>
#include <utility>

#include "app/library/thumbnail_drawing.h"
#include "core/filestore/file_store.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {

struct Thumbnails::Made {
    ContentKey content;
    int side = 0;
    QImage image;  // null where there can be none
};

struct Thumbnails::Shelf {
    Shelf(const QString& folder, qint64 diskBytes)
        : files(folder, diskBytes, {ThumbnailFiles::Format::Png, thumbnailLook}) {}

    QMutex mutex;
    std::deque<WantedThumbnail> wanted;
    std::vector<WantedThumbnail> begun;
    std::vector<Made> made;
    int drawers = 0;
    bool announced = false;
    ThumbnailFiles files;
};

namespace {

// Gives the window's thread the right of way; on Linux this holds for the calling thread alone.
void stepBack() {
    setpriority(PRIO_PROCESS, 0, 10);
}

// Of the sketch in the file, provided that it still holds what it is said to: otherwise a wrong
// picture would be kept under this name for good.
QImage drawn(const WantedThumbnail& wanted) {
    DiskFileStore disk;
    const auto bytes = disk.read(wanted.path, maxSketchFileBytes);
    if (!bytes || contentKeyOf(*bytes) != wanted.content) {
        return {};
    }
    const auto loaded = readSketch(*bytes);
    return loaded ? thumbnailOf(loaded->sketch, wanted.side) : QImage();
}

QImage fetched(const WantedThumbnail& wanted, ThumbnailFiles& files) {
    if (auto image = files.find(wanted.content, wanted.side)) {
        return std::move(*image);
    }
    QImage image = drawn(wanted);
    if (!image.isNull()) {
        files.keep(wanted.content, wanted.side, image);
    }
    return image;
}

}  // namespace

Thumbnails::Thumbnails(const QString& cacheFolder, Limits limits, QObject* parent)
    : QObject(parent),
      m_limits(limits),
      m_memoryBytes(limits.memoryBytes),
      m_shelf(std::make_shared<Shelf>(cacheFolder, limits.diskBytes)) {
    m_pool.setMaxThreadCount(limits.threads);
}

Thumbnails::~Thumbnails() {
    want({});
    m_pool.waitForDone();
}

Thumbnails::KeptList::iterator Thumbnails::look(const ContentKey& content, int side) {
    const auto [from, to] = m_byContent.equal_range(content);
    for (auto it = from; it != to; ++it) {
        if (side == 0 || it->second->side == side) {
            return it->second;
        }
    }
    return m_kept.end();
}

QImage Thumbnails::find(const ContentKey& content, int side) {
    const auto kept = look(content, side);
    if (kept == m_kept.end()) {
        return {};
    }
    m_kept.splice(m_kept.begin(), m_kept, kept);
    return kept->image;
}

QImage Thumbnails::findAnySize(const ContentKey& content) {
    return find(content, 0);
}

bool Thumbnails::hasFailed(const ContentKey& content) const {
    return m_failed.contains(content);
}

bool Thumbnails::isKept(const ContentKey& content, int side) const {
    const auto [from, to] = m_byContent.equal_range(content);
    return std::any_of(from, to, [side](const auto& kept) { return kept.second->side == side; });
}

void Thumbnails::want(std::vector<WantedThumbnail> wanted) {
    m_wanted = std::move(wanted);
    pass();
}

void Thumbnails::wantFirst(std::optional<WantedThumbnail> wanted) {
    m_first = std::move(wanted);
    pass();
}

std::vector<WantedThumbnail> Thumbnails::missing() const {
    std::vector<WantedThumbnail> missing;
    const auto add = [&](const WantedThumbnail& one) {
        if (!isKept(one.content, one.side) && !hasFailed(one.content)) {
            missing.push_back(one);
        }
    };
    if (m_first) {
        add(*m_first);
    }
    std::ranges::for_each(m_wanted, add);
    return missing;
}

// Puts what is wanted and missing before the drawing threads, and starts those that are needed.
void Thumbnails::pass() {
    std::vector<WantedThumbnail> wanted = missing();
    int more = 0;
    {
        const QMutexLocker lock(&m_shelf->mutex);
        std::erase_if(wanted, [this](const WantedThumbnail& one) {
            return std::ranges::find(m_shelf->begun, one) != m_shelf->begun.end();
        });
        m_shelf->wanted.assign(std::make_move_iterator(wanted.begin()),
                               std::make_move_iterator(wanted.end()));
        const int useful = static_cast<int>(m_shelf->wanted.size());
        more = std::clamp(useful, 0, m_limits.threads - m_shelf->drawers);
        m_shelf->drawers += more;
        m_idle = m_shelf->wanted.empty() && m_shelf->begun.empty() && m_shelf->made.empty();
    }
    for (int i = 0; i < more; ++i) {
        m_pool.start([this] { draw(); });
    }
}

// On a drawing thread, until nothing is wanted.
void Thumbnails::draw() {
    stepBack();
    QMutexLocker lock(&m_shelf->mutex);
    while (!m_shelf->wanted.empty()) {
        const WantedThumbnail next = std::move(m_shelf->wanted.front());
        m_shelf->wanted.pop_front();
        m_shelf->begun.push_back(next);
        lock.unlock();
        QImage image = fetched(next, m_shelf->files);
        lock.relock();
        std::erase(m_shelf->begun, next);
        m_shelf->made.push_back({next.content, next.side, std::move(image)});
        if (!std::exchange(m_shelf->announced, true)) {
            QMetaObject::invokeMethod(this, &Thumbnails::takeMade, Qt::QueuedConnection);
        }
    }
    --m_shelf->drawers;
}

void Thumbnails::takeMade() {
    std::vector<Made> made;
    bool done = false;
    {
        const QMutexLocker lock(&m_shelf->mutex);
        made.swap(m_shelf->made);
        m_shelf->announced = false;
        done = m_shelf->wanted.empty() && m_shelf->begun.empty();
    }
    std::vector<ContentKey> contents;
    for (Made& one : made) {
        contents.push_back(one.content);
        insert(std::move(one));
    }
    dropOldest();
    m_idle = done;
    emit ready(contents);
    if (m_idle) {
        emit idle();
    }
}

void Thumbnails::insert(Made made) {
    if (made.image.isNull()) {
        m_failed.insert(made.content);
        return;
    }
    if (look(made.content, made.side) != m_kept.end()) {
        return;
    }
    m_bytes += made.image.sizeInBytes();
    m_kept.push_front({made.content, made.side, std::move(made.image)});
    m_byContent.emplace(m_kept.front().content, m_kept.begin());
}

void Thumbnails::needMemory(qint64 bytes) {
    m_memoryBytes = std::max(bytes, m_limits.memoryBytes);
}

void Thumbnails::dropOldest() {
    while (m_bytes > m_memoryBytes && m_kept.size() > 1) {
        const auto last = std::prev(m_kept.end());
        const auto [from, to] = m_byContent.equal_range(last->content);
        const auto entry =
            std::find_if(from, to, [&](const auto& pair) { return pair.second == last; });
        m_byContent.erase(entry);
        m_bytes -= last->image.sizeInBytes();
        m_kept.pop_back();
    }
}

}  // namespace matwright::app
