// SPDX-License-Identifier: MIT
#include "core/prints/picture_file.h"

#include <array>
#include <cassert>

#include <vips/vips8>

#include "core/prints/capture_packet.h"
#include "core/prints/srgb_profile.h"
#include "core/prints/vips_seam.h"

namespace matwright {

using vips::VImage;

namespace {

constexpr double millimetresPerInch = 25.4;

VImage withDensity(const Raster& raster, int ppi) {
    // The library never writes to it.
    auto* pixels = const_cast<std::uint8_t*>(raster.pixels.data());
    const VImage image = VImage::new_from_memory(pixels, raster.pixels.size(), raster.size.width,
                                                 raster.size.height, 3, VIPS_FORMAT_UCHAR);
    const double density = ppi / millimetresPerInch;
    return image.copy(VImage::option()
                          ->set("interpretation", VIPS_INTERPRETATION_sRGB)
                          ->set("xres", density)
                          ->set("yres", density));
}

void addFacts(const VImage& image, const CaptureFacts& facts, bool asExif) {
    VipsImage* target = image.get_image();
    vips_image_set_int(target, VIPS_META_ORIENTATION, 1);
    const std::string packet = capturePacket(facts.taken);
    if (!packet.empty()) {
        vips_image_set_blob_copy(target, VIPS_META_XMP_NAME, packet.data(), packet.size());
    }
    if (!asExif) {
        return;
    }
    vips_image_set_string(target, "exif-ifd2-ColorSpace", "1");
    if (!facts.taken.empty()) {
        vips_image_set_string(target, "exif-ifd2-DateTimeOriginal", exifDate(facts.taken).c_str());
    }
    for (const auto& [field, text] : facts.place) {
        vips_image_set_string(target, field.c_str(), text.c_str());
    }
}

// libvips leaves the JFIF header out where there is an Exif one; readers that know only one of the
// two then find no density. Both in this order is what cameras write too (JFIF 1.01, ITU-T T.871).
std::string withJfifHeader(std::string jpeg, int ppi) {
    const auto high = static_cast<char>(ppi / 256);
    const auto low = static_cast<char>(ppi % 256);
    const std::array<char, 18> header{'\xff', '\xe0', 0, 16,   'J', 'F',  'I', 'F', 0,
                                      1,      1,      1, high, low, high, low, 0,   0};
    assert(jpeg.size() > 4 && jpeg[0] == '\xff' && jpeg[1] == '\xd8');
    const bool hasOne = jpeg[2] == '\xff' && jpeg[3] == '\xe0';
    if (!hasOne) {
        jpeg.insert(2, header.data(), header.size());
    }
    return jpeg;
}

std::string taken(VipsBlob* blob) {
    std::size_t size = 0;
    const auto* bytes = static_cast<const char*>(vips_blob_get(blob, &size));
    std::string text(bytes, size);
    vips_area_unref(VIPS_AREA(blob));
    return text;
}

std::string asJpeg(const VImage& image, const PrintOptions& options) {
    constexpr int finestQuality = 90;
    VipsBlob* blob = image.jpegsave_buffer(
        VImage::option()
            ->set("Q", options.quality)
            ->set("subsample_mode", options.quality >= finestQuality ? VIPS_FOREIGN_SUBSAMPLE_OFF
                                                                     : VIPS_FOREIGN_SUBSAMPLE_ON));
    return withJfifHeader(taken(blob), options.ppi);
}

std::string asPng(const VImage& image) {
    // The filters cost much time for little on photos.
    return taken(image.pngsave_buffer(
        VImage::option()->set("compression", 3)->set("filter", VIPS_FOREIGN_PNG_FILTER_SUB)));
}

std::string asTiff(const VImage& image) {
    return taken(
        image.tiffsave_buffer(VImage::option()
                                  ->set("resunit", "inch")
                                  ->set("compression", VIPS_FOREIGN_TIFF_COMPRESSION_DEFLATE)
                                  ->set("predictor", VIPS_FOREIGN_TIFF_PREDICTOR_HORIZONTAL)));
}

}  // namespace

Result<std::string> pictureFile(const Raster& raster, const CaptureFacts& facts,
                                const PrintOptions& options) {
    const Result<std::string> profile = srgbProfile();
    if (!profile) {
        return profile;
    }
    return guarded(ErrorCode::WriteFailed, "The picture file could not be made", "", [&] {
        const bool asJpegFile =
            options.format == PrintFormat::Jpeg || options.format == PrintFormat::Pdf;
        const VImage image = withDensity(raster, options.ppi);
        vips_image_set_blob_copy(image.get_image(), VIPS_META_ICC_NAME, profile->data(),
                                 profile->size());
        addFacts(image, facts, asJpegFile);
        switch (options.format) {
            case PrintFormat::Png:
                return asPng(image);
            case PrintFormat::Tiff:
                return asTiff(image);
            default:
                return asJpeg(image, options);
        }
    });
}

}  // namespace matwright
