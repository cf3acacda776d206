// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>
#include <optional>
#include <stop_token>
#include <string>
#include <utility>
#include <vector>

#include "app/photos/photo_service.h"
#include "core/raster/raster.h"

namespace matwright::app {

// What the threads of the photo service do with a file; no state, any thread.

// A file as a photo for the tray.
LookedAt lookedAtFile(const std::string& path);

// The photos in the folder and below it, by their names' endings, in the order of their paths;
// hidden ones, links to folders and what lies deeper than 16 folders are left out.
std::vector<std::string> photosIn(const std::string& folder, std::size_t most,
                                  const std::stop_token& stop);
bool isFolder(const std::string& path);

// By which a file that was written to, or allowed to be read, since is noticed; all zero where it
// is not there.
struct FileStamp {
    std::int64_t bytes = 0;
    std::int64_t written = 0;  // nanoseconds
    std::int64_t changed = 0;  // nanoseconds; its permissions count too
    friend bool operator==(const FileStamp&, const FileStamp&) = default;
};
FileStamp stampOf(const std::string& path);

// A picture, or what is wrong with its file; stopped is an error with an empty sentence.
struct Decoded {
    QImage picture;                   // Format_RGB32; null where there is none
    std::optional<Histogram> sample;  // where `longSide` was toneSampleSide
    PhotoState state = PhotoState::There;
    QString fault;
    bool stopped = false;
    FileStamp stamp = {};       // of the file before it was read
    bool isRemembered = false;  // the picture is of an earlier reading; the file was not read
};
// Only where the file still holds what it is said to.
Decoded decoded(const WantedPhoto& photo, int longSide, const std::stop_token& stop);
// There or Missing.
PhotoState stateOnDisk(const std::string& path);

// Where these contents are now, in the folders or below them; see core/making/finding.h.
std::vector<std::pair<ContentKey, std::string>> foundAgain(const std::vector<WantedPhoto>& photos,
                                                           const std::vector<std::string>& folders,
                                                           const std::stop_token& stop);

QImage toImage(const Raster& raster);
Raster toRaster(const QImage& image);

}  // namespace matwright::app
