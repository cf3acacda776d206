// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <string_view>
#include <vector>

#include <vips/vips8>

#include "core/photo/photo_file.h"
#include "core/photo/photo_source.h"
#include "core/photo/vips_loading.h"
#include "core/prints/picture_file.h"

namespace matwright {

namespace {

constexpr std::array<std::string_view, 2> serialNumbers{"exif-ifd2-BodySerialNumber",
                                                        "exif-ifd2-LensSerialNumber"};

bool isPlace(std::string_view field) {
    return (field.starts_with("exif-ifd3-GPS") && field != "exif-ifd3-GPSProcessingMethod") ||
           std::ranges::find(serialNumbers, field) != serialNumbers.end();
}

std::map<std::string, std::string> placeIn(const vips::VImage& image) {
    std::map<std::string, std::string> place;
    char** fields = vips_image_get_fields(image.get_image());
    for (char** field = fields; field && *field; ++field) {
        if (isPlace(*field) && image.get_typeof(*field) == VIPS_TYPE_REF_STRING) {
            place[*field] = image.get_string(*field);
        }
    }
    g_strfreev(fields);
    return place;
}

}  // namespace

CaptureFacts captureFacts(const Photo& photo, bool keepPlace) {
    CaptureFacts facts{photo.taken, {}};
    if (!keepPlace) {
        return facts;
    }
    preparePhotoReading();
    const Result<PhotoFile> file = PhotoFile::open(photo.path);
    const Result<LoadedPhoto> loaded =
        file ? loadPhoto(*file) : Result<LoadedPhoto>(std::unexpected(file.error()));
    if (loaded) {
        facts.place = placeIn(loaded->image);
    }
    return facts;
}

CaptureFacts common(CaptureFacts facts, const CaptureFacts& other) {
    if (facts.taken != other.taken) {
        facts.taken.clear();
    }
    if (facts.place != other.place) {
        facts.place.clear();
    }
    return facts;
}

}  // namespace matwright
