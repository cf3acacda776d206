// SPDX-License-Identifier: MIT
#include "core/prints/rendering.h"

#include <fmt/format.h>

#include <mutex>
#include <optional>
#include <utility>

#include "core/photo/photo_source.h"
#include "core/prints/cut_marks.h"
#include "core/prints/on_all_cores.h"
#include "core/prints/photo_view.h"
#include "core/prints/pixel_places.h"
#include "core/prints/sheet_pixels.h"
#include "core/prints/within_memory.h"

namespace matwright {

namespace {

std::optional<Error> findFault(const PrintOptions& options) {
    if (options.ppi < smallestPpi || options.ppi > largestPpi) {
        return Error{ErrorCode::OutOfRange, "A print has 72 to 1200 pixels an inch.", ""};
    }
    if (options.quality < 1 || options.quality > 100) {
        return Error{ErrorCode::OutOfRange, "The quality of a JPEG is 1 to 100.", ""};
    }
    return std::nullopt;
}

std::optional<Error> findTooLarge(PixelSize paper) {
    if (paper.count() <= mostPrintPixels) {
        return std::nullopt;
    }
    return Error{ErrorCode::TooLarge,
                 fmt::format("The print would have {} megapixels; at most {} can be made. Choose "
                             "fewer pixels an inch.",
                             paper.count() / 1'000'000, mostPrintPixels / 1'000'000),
                 ""};
}

// Tone, then sharpening: on the photo's own pixels, so that white stays white.
Result<void> evenOut(Raster& picture, const Tone& tone, const std::filesystem::path& file,
                     const std::stop_token& stop) {
    Histogram sample;
    if (tone.evenOut) {
        const Result<Histogram> read = toneSample(file, stop);
        if (!read) {
            return std::unexpected(read.error());
        }
        sample = *read;
    }
    apply(toneMapOf(tone, sample), picture);
    sharpen(picture, tone.sharpen);
    return {};
}

Result<Raster> printPixels(const Print& print, const Photo& photo, const PrintOptions& options,
                           const std::stop_token& stop) {
    if (const std::optional<Error> fault = findFault(options)) {
        return std::unexpected(*fault);
    }
    const PixelPlaces places = placesOf(print, options);
    if (const std::optional<Error> error = findTooLarge(places.paper)) {
        return std::unexpected(*error);
    }
    const PhotoView view{print.crop, print.window,  print.from,
                         print.to,   places.window, places.picture};
    Result<Raster> picture = photoPixels(photo, view, stop);
    if (!picture) {
        return picture;
    }
    if (const auto done = evenOut(*picture, print.tone, photo.path, stop); !done) {
        return std::unexpected(done.error());
    }
    if (picture->size == places.paper) {
        return picture;
    }
    Raster paper = whiteSheet(places.paper);
    lay(paper, *picture, {places.picture.left, places.picture.top});
    if (options.cutMarks) {
        drawCutMarks(paper, places.trim, places.picture, options.ppi);
    }
    return paper;
}

Result<Raster> gangPixels(const Gang& gang, const std::vector<Print>& prints,
                          const std::function<const Photo&(PhotoId)>& photoOf,
                          const PrintOptions& options, const std::stop_token& stop) {
    if (const std::optional<Error> fault = findFault(options)) {
        return std::unexpected(*fault);
    }
    const PixelSize size = pixelsOf(gang.sheet, options.ppi);
    if (const std::optional<Error> error = findTooLarge(size)) {
        return std::unexpected(*error);
    }
    Raster sheet = whiteSheet(size);
    std::mutex sheetOrFailure;
    std::optional<Error> failure;
    const Result<void> done = onAllCores(gang.places.size(), [&](std::size_t i) {
        const Gang::Place& place = gang.places[i];
        const Print& print = prints.at(place.print);
        Result<Raster> part = printPixels(print, photoOf(print.photo), options, stop);
        const PixelPoint at{pixelAt(place.at.x, options.ppi), pixelAt(place.at.y, options.ppi)};
        const std::scoped_lock lock(sheetOrFailure);
        if (part) {
            lay(sheet, place.turned ? turnedRight(*part) : *part, at);
        } else if (!failure) {
            failure = part.error();
        }
    });
    if (!failure && !done) {
        failure = done.error();
    }
    return failure ? Result<Raster>(std::unexpected(*failure)) : std::move(sheet);
}

}  // namespace

Result<Raster> renderPrint(const Print& print, const Photo& photo, const PrintOptions& options,
                           const std::stop_token& stop) {
    return withinMemory([&] { return printPixels(print, photo, options, stop); });
}

Result<Raster> renderGang(const Gang& gang, const std::vector<Print>& prints,
                          const std::function<const Photo&(PhotoId)>& photoOf,
                          const PrintOptions& options, const std::stop_token& stop) {
    return withinMemory([&] { return gangPixels(gang, prints, photoOf, options, stop); });
}

}  // namespace matwright
