// SPDX-License-Identifier: MIT
#include "tests/support/made_photos.h"

#include <algorithm>
#include <cstdlib>

#include "core/photo/photo_source.h"

namespace matwright::test {

namespace {

std::uint8_t share(int part, int whole) {
    return static_cast<std::uint8_t>(whole > 1 ? 255 * part / (whole - 1) : 0);
}

void setText(const vips::VImage& image, const char* field, const std::string& text) {
    if (!text.empty()) {
        vips_image_set_string(image.get_image(), field, text.c_str());
    }
}

void setBlob(const vips::VImage& image, const char* field, const std::string& bytes) {
    if (!bytes.empty()) {
        vips_image_set_blob_copy(image.get_image(), field, bytes.data(), bytes.size());
    }
}

}  // namespace

Raster madePicture(PixelSize size) {
    Raster raster{size, {}};
    raster.pixels.reserve(3 * static_cast<std::size_t>(size.count()));
    for (int y = 0; y < size.height; ++y) {
        for (int x = 0; x < size.width; ++x) {
            raster.pixels.push_back(share(x, size.width));
            raster.pixels.push_back(share(y, size.height));
            raster.pixels.push_back(3 * x < size.width && 3 * y < size.height ? 255 : 0);
        }
    }
    return raster;
}

vips::VImage madeImage(const Raster& raster, const MadeWith& with) {
    preparePhotoReading();
    VipsImage* made = vips_image_new_from_memory_copy(raster.pixels.data(), raster.pixels.size(),
                                                      raster.size.width, raster.size.height, 3,
                                                      VIPS_FORMAT_UCHAR);
    made->Type = VIPS_INTERPRETATION_sRGB;
    const vips::VImage image(made);
    if (with.orientation != 0) {
        vips_image_set_int(made, VIPS_META_ORIENTATION, with.orientation);
    }
    setText(image, "exif-ifd2-DateTimeOriginal", with.taken);
    setText(image, "exif-ifd2-DateTimeDigitized", with.digitized);
    setBlob(image, VIPS_META_XMP_NAME, with.xmp);
    setBlob(image, VIPS_META_ICC_NAME, with.profile);
    return image;
}

std::string encoded(const vips::VImage& image, const std::string& suffix) {
    void* bytes = nullptr;
    std::size_t size = 0;
    image.write_to_buffer(suffix.c_str(), &bytes, &size);
    std::string text(static_cast<const char*>(bytes), size);
    g_free(bytes);
    return text;
}

Difference differenceOf(const Raster& one, const Raster& other) {
    if (one.size != other.size || one.pixels.empty()) {
        return {};
    }
    int worst = 0;
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < one.pixels.size(); ++i) {
        const int step = std::abs(int{one.pixels[i]} - int{other.pixels[i]});
        worst = std::max(worst, step);
        sum += step;
    }
    return {worst, static_cast<double>(sum) / static_cast<double>(one.pixels.size())};
}

}  // namespace matwright::test
