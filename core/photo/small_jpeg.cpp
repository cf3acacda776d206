// SPDX-License-Identifier: MIT
#include <algorithm>
#include <memory>

#include "core/photo/photo_source.h"
#include "core/photo/upright_sink.h"
#include "core/photo/vips_photo.h"

namespace matwright {

namespace {

using vips::VImage;

constexpr std::int64_t mostPixels = 16'000'000;

Error noSmallJpeg() {
    return {ErrorCode::Malformed, "The small picture is damaged; it has to be made again.", ""};
}

Result<Raster> rasterOf(const VImage& image) {
    if (image.bands() != 3 || image.format() != VIPS_FORMAT_UCHAR) {
        return std::unexpected(noSmallJpeg());
    }
    if (std::int64_t{image.width()} * image.height() > mostPixels) {
        return std::unexpected(
            Error{ErrorCode::TooLarge, "The small picture is too large to be one.", ""});
    }
    Poured poured = pourUpright(image, 1, {});
    if (!poured.isWhole) {
        return std::unexpected(noSmallJpeg());
    }
    return std::move(poured.raster);
}

}  // namespace

std::string smallJpeg(const Raster& raster, int quality) {
    if (!raster.size.isPositive()) {
        return "";
    }
    preparePhotoReading();
    try {
        const VImage image(vips_image_new_from_memory(raster.pixels.data(), raster.pixels.size(),
                                                      raster.size.width, raster.size.height, 3,
                                                      VIPS_FORMAT_UCHAR));
        image.get_image()->Type = VIPS_INTERPRETATION_sRGB;
        const std::unique_ptr<VipsBlob, void (*)(VipsBlob*)> blob(
            image.jpegsave_buffer(VImage::option()
                                      ->set("Q", std::clamp(quality, 1, 100))
                                      ->set("optimize_coding", true)
                                      ->set("strip", true)),
            [](VipsBlob* done) { vips_area_unref(VIPS_AREA(done)); });
        std::size_t size = 0;
        const void* bytes = vips_blob_get(blob.get(), &size);
        return {static_cast<const char*>(bytes), size};
    } catch (const vips::VError&) {
        vips_error_clear();
        return "";
    }
}

Result<Raster> fromSmallJpeg(std::string_view bytes) {
    preparePhotoReading();
    try {
        const std::unique_ptr<VipsBlob, void (*)(VipsBlob*)> blob(
            vips_blob_new(nullptr, bytes.data(), bytes.size()),
            [](VipsBlob* done) { vips_area_unref(VIPS_AREA(done)); });
        const VImage image =
            VImage::jpegload_buffer(blob.get(), VImage::option()
                                                    ->set("access", VIPS_ACCESS_SEQUENTIAL)
                                                    ->set("fail_on", VIPS_FAIL_ON_TRUNCATED));
        auto raster = rasterOf(image);
        vips_error_clear();
        return raster;
    } catch (const vips::VError&) {
        vips_error_clear();
        return std::unexpected(noSmallJpeg());
    }
}

}  // namespace matwright
