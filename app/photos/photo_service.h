// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>
#include <QObject>
#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "core/making/making.h"
#include "core/tone/tone.h"

namespace matwright::app {

// A photo that something is wanted of: what it holds, and where it was seen last.
struct WantedPhoto {
    ContentKey content;
    std::string path;
    std::uintmax_t bytes = 0;  // how long its file is; 0: not known
    friend bool operator==(const WantedPhoto&, const WantedPhoto&) = default;
};

// One file that was looked at for the tray: a photo, or why it is none.
struct LookedAt {
    std::string path;
    Result<Photo> photo;
    std::vector<std::string> remarks;  // "animated: the first picture"
};

// Whether the photo is where it was seen last.
enum class PhotoState {
    Unknown,  // not looked at yet
    There,
    Missing,  // no such file: moved, renamed, or a drive that is not plugged in
    Changed,  // the file holds another picture now
    Broken    // it is there and cannot be read
};

// Everything that reads photos from the disk, in the background. It is implemented in the part
// "photos" (app/photos/reading), because the library that decodes photos brings about a hundred
// others; the program knows this interface only. See PhotoAccess for how to come by it.
//
// All calls and signals belong to the window's thread, and none of them waits for the disk.
// Pictures are known by what their files hold, never by a path: whatever is kept is never out of
// date.
class PhotoService : public QObject {
    Q_OBJECT

  public:
    // The longer side of a working copy, and of a thumbnail, in pixels.
    static constexpr int workingSide = 2'600;
    static constexpr int thumbnailSide = 256;

    using QObject::QObject;

    // ---- for the tray

    // Reads what these files say of themselves, and of each folder the photos in and below it, in
    // order; answers with lookedAt() and, when all of them are done, lookedAtAll().
    virtual void lookAt(std::vector<std::string> paths) = 0;
    // Gives up what lookAt() and makeThumbnails() have not begun, and every search; lookedAtAll()
    // and searchEnded() come too.
    virtual void cancel() = 0;
    // Whether the files are there, answered with stateChanged(); names only. A file that could not
    // be read, or held another picture, is tried again where it was written to since.
    virtual void checkStates(std::vector<WantedPhoto> photos) = 0;
    // Searches the folders (and below) for these contents; answers with found() and, once, with
    // searchEnded() of the number that comes back.
    virtual int search(std::vector<WantedPhoto> photos, std::vector<std::string> folders) = 0;

    // What is known now; asks for nothing.
    virtual PhotoState stateOf(const ContentKey& content) const = 0;
    // Why a photo is Broken, as a sentence; empty otherwise.
    virtual QString faultOf(const ContentKey& content) const = 0;

    // ---- pictures, upright and in sRGB (QImage::Format_RGB32)

    // No larger than thumbnailSide; a null image where it is not in memory, then it is fetched
    // before others and thumbnailReady() comes.
    virtual QImage thumbnail(const WantedPhoto& photo) = 0;
    // Makes those that are not on the disk yet, after everything else.
    virtual void makeThumbnails(std::vector<WantedPhoto> photos) = 0;

    // The photos that the page shows from now on: their working copies are decoded once each and
    // kept. Many photos share the memory, so they come out smaller then; see workingCopy().
    virtual void showOnPage(std::vector<WantedPhoto> photos) = 0;
    // One photo that is worked on large (the crop view), at workingSide; nothing: none any more.
    virtual void showLarge(std::optional<WantedPhoto> photo) = 0;
    // The largest copy in memory, a thumbnail at least, or a null image; asks for nothing.
    // workingCopyReady() comes when there is a better one.
    virtual QImage workingCopy(const ContentKey& content) const = 0;

    // Whether a better one is on its way for the page.
    virtual bool isCopyComing(const ContentKey& content) const = 0;

    // What the automatic evening out has to know of a photo (toneMapOf()); nothing where it is not
    // known yet, then it is worked out and toneSampleReady() comes.
    virtual std::optional<Histogram> toneSample(const WantedPhoto& photo) = 0;

    // A JPEG of what shows in a slot's window, for the page file: about 400 pixels on its longer
    // side, toned. Empty where the photo is not in memory. Costs a few milliseconds.
    virtual std::string smallPicture(const Photo& photo, const Placement& placement,
                                     Size window) = 0;

    // Bytes of pictures in memory, for tests and bars.
    virtual qint64 memoryUsed() const = 0;
    // Nothing is being read and nothing waits.
    virtual bool isIdle() const = 0;

  signals:
    void lookedAt(const std::vector<matwright::app::LookedAt>& files);
    void lookedAtAll();
    // Of everything that a person waits for: files and thumbnails. 0 of 0 when there is nothing
    // left.
    void progressed(int done, int total);
    void stateChanged(const matwright::ContentKey& content);
    void found(const matwright::ContentKey& content, const QString& path);
    void searchEnded(int search, int found, bool wasCancelled);
    void thumbnailReady(const matwright::ContentKey& content);
    void workingCopyReady(const matwright::ContentKey& content);
    void toneSampleReady(const matwright::ContentKey& content);
};

}  // namespace matwright::app
