// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>
#include <QObject>
#include <QString>
#include <QThreadPool>
#include <list>
#include <memory>
#include <optional>
#include <string>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "app/thumbnails/thumbnail_files.h"
#include "core/content/content_key.h"

namespace matwright::app {

// A thumbnail that is wanted: of the sketch file at `path` as long as it holds `content`.
struct WantedThumbnail {
    ContentKey content;
    std::string path;  // of the file, whole; the system's own bytes
    int side = 0;      // of the square it must fit, in device pixels
    friend bool operator==(const WantedThumbnail&, const WantedThumbnail&) = default;
};

// Makes thumbnails in the background and keeps those used last in memory. All calls belong to one
// thread, and none of them reads, decodes or draws anything.
class Thumbnails final : public QObject {
    Q_OBJECT

  public:
    struct Limits {
        qint64 memoryBytes = 12LL << 20;
        qint64 diskBytes = 256LL << 20;
        int threads = 2;
    };

    explicit Thumbnails(const QString& cacheFolder, QObject* parent = nullptr)
        : Thumbnails(cacheFolder, Limits(), parent) {}
    Thumbnails(const QString& cacheFolder, Limits limits, QObject* parent = nullptr);
    // Waits for the pictures that are being drawn.
    ~Thumbnails() override;

    // The picture, or a null image where it is not in memory.
    QImage find(const ContentKey& content, int side);
    // The same sketch in whatever size there is.
    QImage findAnySize(const ContentKey& content);
    // No picture can be had of what this file holds (or held when it was tried).
    bool hasFailed(const ContentKey& content) const;
    // The next time they are wanted they are tried again: files may have come back.
    void forgetFailures() { m_failed.clear(); }

    // What is wanted from now on, the most urgent first. What was wanted before, is not in the list
    // and was not begun is dropped; what is in memory is passed over.
    void want(std::vector<WantedThumbnail> wanted);
    // One more, before all others, until another is named here.
    void wantFirst(std::optional<WantedThumbnail> wanted);
    // Nothing is wanted that is not there.
    bool isIdle() const { return m_idle; }

    qint64 memoryUsed() const { return m_bytes; }
    // Large screens need more; never less than the limit at the beginning.
    void needMemory(qint64 bytes);

  signals:
    void ready(const std::vector<matwright::ContentKey>& contents);
    // Everything that was wanted is there now, or cannot be had.
    void idle();

  private:
    struct Shelf;  // what the drawing threads share
    struct Made;
    struct Kept {
        ContentKey content;
        int side;
        QImage image;
    };
    using KeptList = std::list<Kept>;

    void pass();
    std::vector<WantedThumbnail> missing() const;
    bool isKept(const ContentKey& content, int side) const;
    void draw();
    void takeMade();
    void insert(Made made);
    void dropOldest();
    // 0 is any size.
    KeptList::iterator look(const ContentKey& content, int side);

    Limits m_limits;
    qint64 m_memoryBytes;
    std::shared_ptr<Shelf> m_shelf;
    QThreadPool m_pool;
    KeptList m_kept;  // used last first
    std::unordered_multimap<ContentKey, KeptList::iterator> m_byContent;
    std::unordered_set<ContentKey> m_failed;
    qint64 m_bytes = 0;
    bool m_idle = true;
    std::vector<WantedThumbnail> m_wanted;
    std::optional<WantedThumbnail> m_first;
};

}  // namespace matwright::app
