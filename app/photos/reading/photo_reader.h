// SPDX-License-Identifier: MIT
#pragma once

#include <QTimer>
#include <set>
#include <unordered_map>
#include <unordered_set>

#include "app/photos/photo_service.h"
#include "app/photos/reading/job_queue.h"
#include "app/photos/reading/photo_decoding.h"
#include "app/photos/reading/picture_store.h"
#include "app/thumbnails/thumbnail_files.h"

namespace matwright::app {

// How much memory the pictures of a photo service may take, in bytes.
struct PhotoMemory {
    qint64 thumbnails = 64LL << 20;
    qint64 page = 260LL << 20;
};

// The photo service over core/photo: a queue of jobs on two threads; what they make comes back to
// the window's thread as queued calls.
class PhotoReader final : public PhotoService {
    Q_OBJECT

  public:
    explicit PhotoReader(const QString& cacheFolder, PhotoMemory memory = {});
    ~PhotoReader() override;

    void lookAt(std::vector<std::string> paths) override;
    void cancel() override;
    void checkStates(std::vector<WantedPhoto> photos) override;
    int search(std::vector<WantedPhoto> photos, std::vector<std::string> folders) override;
    PhotoState stateOf(const ContentKey& content) const override;
    QString faultOf(const ContentKey& content) const override;
    QImage thumbnail(const WantedPhoto& photo) override;
    void makeThumbnails(std::vector<WantedPhoto> photos) override;
    void showOnPage(std::vector<WantedPhoto> photos) override;
    void showLarge(std::optional<WantedPhoto> photo) override;
    QImage workingCopy(const ContentKey& content) const override;
    bool isCopyComing(const ContentKey& content) const override;
    std::optional<Histogram> toneSample(const WantedPhoto& photo) override;
    std::string smallPicture(const Photo& photo, const Placement& placement, Size window) override;
    qint64 memoryUsed() const override;
    bool isIdle() const override;

    // The longer side of the working copies of so many photos on a page.
    static int sideFor(std::size_t photos, qint64 bytes);

  private:
    using Urgency = JobQueue::Urgency;

    // Does `act` on the window's thread.
    template <typename Act>
    void later(Act act) {
        QMetaObject::invokeMethod(this, std::move(act), Qt::QueuedConnection);
    }
    void takeFolder(int round, std::vector<std::string> files);
    void takeLookedAt(int round, LookedAt file);
    void tellLookedAt();
    bool fetchThumbnail(const WantedPhoto& photo, Urgency urgency);
    void takeThumbnail(const ContentKey& content, const Decoded& made, std::optional<int> round);
    void fetchCopy(const WantedPhoto& photo, int side, Urgency urgency);
    void takeCopy(const ContentKey& content, const Decoded& made, int side, Urgency urgency);
    void noteState(const ContentKey& content, const Decoded& made);
    void takeState(const WantedPhoto& photo, PhotoState state, const FileStamp& stamp);
    void readAgain(const WantedPhoto& photo);
    void setState(const ContentKey& content, PhotoState state, const QString& fault);
    void advance(int done);

    struct Condition {
        PhotoState state = PhotoState::Unknown;
        QString fault;
        FileStamp stamp = {};  // of the file when it was found so
    };
    struct Large {
        WantedPhoto photo;
        QImage picture;
    };

    ThumbnailFiles m_files;
    qint64 m_pageBytes;
    PictureStore m_thumbnails;
    PictureStore m_copies;
    std::unordered_map<ContentKey, int> m_copySides;  // the side that was asked for
    std::unordered_map<std::string, int> m_coming;    // the sides of copies on their way
    std::vector<WantedPhoto> m_onPage;
    std::optional<Large> m_large;
    std::unordered_map<ContentKey, Histogram> m_samples;
    std::unordered_map<ContentKey, Condition> m_conditions;
    std::unordered_set<ContentKey> m_asked;  // thumbnails that are on their way

    std::vector<LookedAt> m_looked;  // not told yet
    QTimer m_tell;
    int m_round = 0;  // counts up when it is cancelled
    int m_searches = 0;
    std::set<int> m_openSearches;
    int m_toLookAt = 0;
    int m_done = 0;
    int m_total = 0;

    JobQueue m_jobs;  // last: ends before what its work touches
};

}  // namespace matwright::app
