// SPDX-License-Identifier: MIT
#include "app/photos/reading/photo_decoding.h"

#include <sys/stat.h>

#include <algorithm>
#include <array>
#include <cstring>
#include <filesystem>
#include <utility>

#include "core/making/finding.h"
#include "core/photo/photo_endings.h"
#include "core/photo/photo_source.h"

namespace matwright::app {

namespace {

namespace fs = std::filesystem;

bool isHidden(const fs::path& path) {
    return path.filename().string().starts_with('.');
}

Decoded failed(const Error& error, const std::stop_token& stop) {
    Decoded none;
    none.stopped = stop.stop_requested();
    none.state = error.code == ErrorCode::NotFound ? PhotoState::Missing : PhotoState::Broken;
    none.fault = QString::fromStdString(error.sentence);
    return none;
}

}  // namespace

bool isFolder(const std::string& path) {
    std::error_code ignored;
    return fs::is_directory(path, ignored);
}

PhotoState stateOnDisk(const std::string& path) {
    std::error_code ignored;
    return fs::is_regular_file(path, ignored) ? PhotoState::There : PhotoState::Missing;
}

std::vector<std::string> photosIn(const std::string& folder, std::size_t most,
                                  const std::stop_token& stop) {
    constexpr int deepest = 16;
    std::vector<std::string> found;
    std::error_code failure;
    fs::recursive_directory_iterator it(folder, fs::directory_options::skip_permission_denied,
                                        failure);
    for (; !failure && it != fs::recursive_directory_iterator() && found.size() < most &&
           !stop.stop_requested();
         it.increment(failure)) {
        std::error_code ignored;
        const bool isDirectory = it->is_directory(ignored);
        if (isDirectory && (isHidden(it->path()) || it.depth() >= deepest)) {
            it.disable_recursion_pending();
        } else if (!isDirectory && !isHidden(it->path()) && isNamedAsPhoto(it->path()) &&
                   it->is_regular_file(ignored)) {
            found.push_back(it->path().string());
        }
    }
    std::ranges::sort(found);
    return found;
}

LookedAt lookedAtFile(const std::string& path) {
    auto facts = photoFacts(path);
    if (!facts) {
        return {path, std::unexpected(std::move(facts.error())), {}};
    }
    Photo photo;
    photo.path = path;
    photo.content = facts->content;
    photo.bytes = facts->bytes;
    photo.upright = facts->upright;
    photo.taken = std::move(facts->taken);
    photo.rating = facts->rating;
    return {path, std::move(photo), std::move(facts->remarks)};
}

FileStamp stampOf(const std::string& path) {
    struct stat state = {};
    if (::stat(path.c_str(), &state) != 0) {
        return {};
    }
    const auto nanoseconds = [](const timespec& time) {
        return std::int64_t{time.tv_sec} * 1'000'000'000 + time.tv_nsec;
    };
    return {state.st_size, nanoseconds(state.st_mtim), nanoseconds(state.st_ctim)};
}

namespace {

Decoded readAs(const WantedPhoto& photo, int longSide, const std::stop_token& stop) {
    const auto facts = photoFacts(photo.path);
    if (!facts) {
        return failed(facts.error(), stop);
    }
    if (facts->content != photo.content) {
        Decoded other;
        other.state = PhotoState::Changed;
        return other;
    }
    const auto raster = decodePhoto(photo.path, longSide, stop);
    if (!raster) {
        return failed(raster.error(), stop);
    }
    Decoded made;
    made.picture = toImage(*raster);
    if (longSide == toneSampleSide) {
        made.sample = histogramOf(*raster);
    }
    return made;
}

}  // namespace

Decoded decoded(const WantedPhoto& photo, int longSide, const std::stop_token& stop) {
    const FileStamp stamp = stampOf(photo.path);
    Decoded made = readAs(photo, longSide, stop);
    made.stamp = stamp;
    // Taken away while it was read: nothing is known against it, it is looked for.
    std::error_code unknown;
    if (made.state == PhotoState::Broken && !fs::exists(photo.path, unknown) && !unknown) {
        made.state = PhotoState::Missing;
        made.fault.clear();
    }
    return made;
}

std::vector<std::pair<ContentKey, std::string>> foundAgain(const std::vector<WantedPhoto>& photos,
                                                           const std::vector<std::string>& folders,
                                                           const std::stop_token& stop) {
    std::vector<LostFile> lost;
    lost.reserve(photos.size());
    for (const WantedPhoto& photo : photos) {
        lost.push_back({photo.path, photo.content, photo.bytes});
    }
    const std::vector<fs::path> places(folders.begin(), folders.end());
    const std::vector<Finding> findings = findAgain(lost, places, {}, stop);
    std::vector<std::pair<ContentKey, std::string>> found;
    for (std::size_t i = 0; i < findings.size(); ++i) {
        if (findings[i].place) {
            found.emplace_back(photos[i].content, findings[i].place->string());
        }
    }
    return found;
}

QImage toImage(const Raster& raster) {
    if (!raster.size.isPositive()) {
        return {};
    }
    return QImage(raster.pixels.data(), raster.size.width, raster.size.height,
                  qsizetype{3} * raster.size.width, QImage::Format_RGB888)
        .convertToFormat(QImage::Format_RGB32);
}

Raster toRaster(const QImage& image) {
    const QImage plain = image.convertToFormat(QImage::Format_RGB888);
    Raster raster{{plain.width(), plain.height()}, {}};
    const auto stride = std::size_t{3} * static_cast<std::size_t>(plain.width());
    raster.pixels.resize(stride * static_cast<std::size_t>(plain.height()));
    for (int y = 0; y < plain.height(); ++y) {
        std::memcpy(raster.pixels.data() + stride * static_cast<std::size_t>(y),
                    plain.constScanLine(y), stride);
    }
    return raster;
}

}  // namespace matwright::app
