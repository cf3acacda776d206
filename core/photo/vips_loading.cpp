// SPDX-License-Identifier: MIT
#include "core/photo/vips_loading.h"

#include <fmt/format.h>

#include <memory>
#include <vector>

#include "core/photo/photo_profile.h"

namespace matwright {

namespace {

using vips::VImage;
using vips::VOption;

// libwebp is given the whole file in memory: libvips would map the file, and a mapped file that
// another program cuts short ends this one.
constexpr std::size_t maxWebPBytes = 100'000'000;

constexpr auto intent = VIPS_INTENT_RELATIVE;

VOption* loadOptions() {
    return VImage::option()
        ->set("access", VIPS_ACCESS_SEQUENTIAL)
        ->set("fail_on", VIPS_FAIL_ON_TRUNCATED);
}

VImage loadedWebP(const std::string& bytes, int shrink) {
    // The picture keeps it for as long as it is read.
    const std::unique_ptr<VipsBlob, void (*)(VipsBlob*)> blob(
        vips_blob_copy(bytes.data(), bytes.size()),
        [](VipsBlob* done) { vips_area_unref(VIPS_AREA(done)); });
    return VImage::webpload_buffer(blob.get(), loadOptions()->set("scale", 1.0 / shrink));
}

VImage loadedFrom(PhotoFormat format, int file, int shrink) {
    const vips::VSource source = vips::VSource::new_from_descriptor(file);
    switch (format) {
        case PhotoFormat::Jpeg:
            return VImage::jpegload_source(source, loadOptions()->set("shrink", shrink));
        case PhotoFormat::Png:
            return VImage::pngload_source(source, loadOptions());
        case PhotoFormat::Tiff:
            return VImage::tiffload_source(source, loadOptions());
        default:
            return VImage::heifload_source(source, loadOptions());
    }
}

Result<VImage> loaded(const PhotoFile& file, int shrink) {
    if (file.format() == PhotoFormat::WebP) {
        const auto bytes = file.contents(maxWebPBytes);
        if (!bytes) {
            return std::unexpected(bytes.error());
        }
        return loadedWebP(*bytes, shrink);
    }
    const auto descriptor = file.rewound();
    if (!descriptor) {
        return std::unexpected(descriptor.error());
    }
    return loadedFrom(file.format(), *descriptor, shrink);
}

// How many colours its pixels have; 0 where they are of no kind that is read.
int coloursOf(const VImage& image) {
    const bool isPlain =
        image.format() == VIPS_FORMAT_UCHAR || image.format() == VIPS_FORMAT_USHORT;
    int colours = 0;
    switch (image.interpretation()) {
        case VIPS_INTERPRETATION_B_W:
        case VIPS_INTERPRETATION_GREY16:
            colours = isPlain ? 1 : 0;
            break;
        case VIPS_INTERPRETATION_RGB:
        case VIPS_INTERPRETATION_sRGB:
        case VIPS_INTERPRETATION_RGB16:
            colours = isPlain ? 3 : 0;
            break;
        case VIPS_INTERPRETATION_CMYK:
            colours = isPlain ? 4 : 0;
            break;
        case VIPS_INTERPRETATION_LAB:
        case VIPS_INTERPRETATION_LABS:
            colours = 3;
            break;
        default:
            break;
    }
    return image.bands() >= colours ? colours : 0;
}

bool isLab(const VImage& image) {
    return image.interpretation() == VIPS_INTERPRETATION_LAB ||
           image.interpretation() == VIPS_INTERPRETATION_LABS;
}

bool isSet(const VImage& image, const char* field) {
    return image.get_typeof(field) == G_TYPE_INT && image.get_int(field) != 0;
}

bool isReadInPasses(const VImage& image) {
    return isSet(image, "interlaced") || isSet(image, "jpeg-multiscan");
}

int orientationOf(const VImage& image, PhotoFormat format) {
    // libheif has turned the pixels already, by the picture's own boxes; what the Exif data say of
    // the turn is for readers that do not know those.
    return format == PhotoFormat::Heic ? 1 : vips_image_get_orientation(image.get_image());
}

PhotoWeight weightOf(const VImage& image, PhotoFormat format) {
    return {format,
            {image.width(), image.height()},
            image.bands(),
            static_cast<int>(vips_format_sizeof(image.format())),
            isReadInPasses(image)};
}

void addProfile(LoadedPhoto& photo) {
    if (photo.image.get_typeof(VIPS_META_ICC_NAME) == 0) {
        return;
    }
    std::size_t size = 0;
    const void* bytes = photo.image.get_blob(VIPS_META_ICC_NAME, &size);
    const ProfileFacts facts =
        profileFacts({static_cast<const std::byte*>(bytes), size}, photo.colours);
    photo.profile = facts.name.empty() ? "a damaged profile" : facts.name;
    photo.isProfileUsable = facts.isUsable && !isLab(photo.image);
}

Error unreadable(const PhotoFile& file) {
    return {ErrorCode::Malformed,
            fmt::format("This {} photo cannot be read: its beginning is damaged, or written in a "
                        "rare way. Copy it again from where it came, or save it anew with another "
                        "program.",
                        formatName(file.format())),
            file.path().string()};
}

Error rareColours(const PhotoFile& file) {
    return {ErrorCode::Unsupported,
            fmt::format("The pixels of this {} photo are of a rare kind that is not read. Save it "
                        "with 8 or 16 bits a colour with another program.",
                        formatName(file.format())),
            file.path().string()};
}

}  // namespace

Result<LoadedPhoto> loadPhoto(const PhotoFile& file, int shrink) {
    LoadedPhoto photo;
    if (file.format() == PhotoFormat::Tiff) {
        photo.tiff = tiffTags(file);
        if (photo.tiff.isRaw) {
            return std::unexpected(notReadHere("a camera's raw picture", file.path()));
        }
    }
    try {
        auto image = loaded(file, shrink);
        if (!image) {
            return std::unexpected(image.error());
        }
        photo.image = *image;
        photo.weight = weightOf(*image, file.format());
        photo.orientation = orientationOf(*image, file.format());
        photo.colours = coloursOf(*image);
        if (photo.colours == 0) {
            return std::unexpected(rareColours(file));
        }
        addProfile(photo);
        return photo;
    } catch (const vips::VError&) {
        vips_error_clear();
        return std::unexpected(unreadable(file));
    }
}

vips::VImage onWhite(const LoadedPhoto& photo) {
    VImage image = photo.image;
    if (image.has_alpha()) {
        const bool isInk = image.interpretation() == VIPS_INTERPRETATION_CMYK;
        const double white = image.format() == VIPS_FORMAT_USHORT ? 65535 : 255;
        image = image.flatten(VImage::option()->set(
            "background",
            std::vector<double>(static_cast<std::size_t>(image.bands() - 1), isInk ? 0 : white)));
    }
    return image.bands() == photo.colours
               ? image
               : image.extract_band(0, VImage::option()->set("n", photo.colours));
}

vips::VImage toSrgb(const LoadedPhoto& photo, const vips::VImage& image) {
    const auto options = [] {
        return VImage::option()
            ->set("intent", intent)
            ->set("black_point_compensation", true)
            ->set("depth", 8);
    };
    if (photo.isProfileUsable) {
        return image.icc_transform("srgb", options()->set("embedded", true));
    }
    if (photo.colours == 4) {
        return image.icc_transform("srgb", options()->set("input_profile", "cmyk"));
    }
    const VImage plain = image.colourspace(VIPS_INTERPRETATION_sRGB);
    return plain.format() == VIPS_FORMAT_UCHAR ? plain : plain.cast(VIPS_FORMAT_UCHAR);
}

}  // namespace matwright
