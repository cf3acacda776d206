// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "core/photo/photo_file.h"
#include "core/photo/photo_source.h"
#include "core/photo/upright_sink.h"
#include "core/photo/vips_loading.h"
#include "core/photo/vips_photo.h"

namespace matwright {

namespace {

using vips::VImage;

// How large the picture is wanted, before it is turned.
struct Wanted {
    PixelSize size;  // none: as the decoder gives it
    int shrink = 1;  // left to the decoder
};

int roundedShare(int length, int part, int whole) {
    const auto product = std::int64_t{2} * length * part;
    return std::max(1, static_cast<int>((product + whole) / (std::int64_t{2} * whole)));
}

bool canShrink(PhotoFormat format) {
    return format == PhotoFormat::Jpeg || format == PhotoFormat::WebP;
}

// The decoder shrinks as far as half as many pixels again as wanted are left each way, so that
// the resampling that follows still has something to choose from.
Wanted wantedOf(const PhotoWeight& weight, int longSide) {
    const PixelSize stored = weight.stored;
    const int longStored = std::max(stored.width, stored.height);
    if (longSide <= 0 || longSide >= longStored) {
        return {stored, 1};
    }
    int shrink = canShrink(weight.format) ? 8 : 1;
    while (shrink > 1 && 2 * (longStored / shrink) < 3 * longSide) {
        shrink /= 2;
    }
    return {{roundedShare(stored.width, longSide, longStored),
             roundedShare(stored.height, longSide, longStored)},
            shrink};
}

VImage resized(const VImage& image, PixelSize size) {
    if (image.width() == size.width && image.height() == size.height) {
        return image;
    }
    const double across = static_cast<double>(size.width) / image.width();
    const double down = static_cast<double>(size.height) / image.height();
    return image.resize(across, VImage::option()->set("vscale", down));
}

Error damaged(const PhotoFile& file, int rows, int allRows) {
    const int percent = static_cast<int>(std::int64_t{100} * rows / allRows);
    const std::string extent =
        percent < 1 ? "" : fmt::format(" after about {} % of its height", percent);
    return {ErrorCode::Malformed,
            fmt::format("This {} photo is damaged or cut short{}. Copy it again from where it "
                        "came.",
                        formatName(file.format()), extent),
            file.path().string()};
}

Error calledOff(const PhotoFile& file) {
    return {ErrorCode::Unsupported, "Reading the photo was called off.", file.path().string()};
}

Result<Raster> poured(const PhotoFile& file, const LoadedPhoto& photo, PixelSize size,
                      const std::stop_token& stop) {
    Poured result;
    try {
        const VImage image = toSrgb(photo, resized(onWhite(photo), size));
        result = pourUpright(image, photo.orientation, stop);
    } catch (const vips::VError&) {
        result = {};
    }
    vips_error_clear();
    if (stop.stop_requested()) {
        return std::unexpected(calledOff(file));
    }
    if (auto change = file.findChange()) {
        return std::unexpected(*std::move(change));
    }
    if (!result.isWhole) {
        return std::unexpected(damaged(file, result.rows, size.height));
    }
    return std::move(result.raster);
}

template <typename Wish>
Result<Raster> decoded(const std::filesystem::path& path, Wish wish, const std::stop_token& stop) {
    preparePhotoReading();
    const auto file = PhotoFile::open(path);
    if (!file) {
        return std::unexpected(file.error());
    }
    auto photo = loadPhoto(*file);
    if (!photo) {
        return std::unexpected(photo.error());
    }
    const Wanted wanted = wish(photo->weight);
    const bool isSized = wanted.size.isPositive();
    if (auto error =
            findTooLarge(photo->weight, isSized ? wanted.size : photo->weight.stored, path)) {
        return std::unexpected(*std::move(error));
    }
    if (wanted.shrink > 1) {
        photo = loadPhoto(*file, wanted.shrink);
        if (!photo) {
            return std::unexpected(photo.error());
        }
    }
    return poured(*file, *photo, isSized ? wanted.size : photo->weight.stored, stop);
}

}  // namespace

Result<Raster> decodePhoto(const std::filesystem::path& file, int longSide, std::stop_token stop) {
    return decoded(
        file, [&](const PhotoWeight& weight) { return wantedOf(weight, longSide); }, stop);
}

Result<VipsHandle> openUpright(const std::filesystem::path& file, int shrinkHint,
                               std::stop_token stop) {
    auto raster = decoded(
        file,
        [&](const PhotoWeight& weight) {
            return Wanted{{}, canShrink(weight.format) ? shrinkHint : 1};
        },
        stop);
    if (!raster) {
        return std::unexpected(raster.error());
    }
    return vipsImageOf(*std::move(raster));
}

VipsHandle vipsImageOf(Raster raster) {
    preparePhotoReading();
    auto* kept = new Raster(std::move(raster));
    VipsImage* image =
        vips_image_new_from_memory(kept->pixels.data(), kept->pixels.size(), kept->size.width,
                                   kept->size.height, 3, VIPS_FORMAT_UCHAR);
    image->Type = VIPS_INTERPRETATION_sRGB;
    g_signal_connect_swapped(
        image, "postclose",
        G_CALLBACK(+[](gpointer pixels) { delete static_cast<Raster*>(pixels); }), kept);
    return VipsHandle(image);
}

}  // namespace matwright
