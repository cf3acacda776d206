// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <utility>

#include "core/photo/metadata_text.h"
#include "core/photo/photo_file.h"
#include "core/photo/photo_source.h"
#include "core/photo/upright_sink.h"
#include "core/photo/vips_loading.h"

namespace matwright {

namespace {

using vips::VImage;

// Empty where there is none.
std::string_view textField(const VImage& image, const char* field) {
    const char* text = nullptr;
    if (image.get_typeof(field) == 0 ||
        vips_image_get_string(image.get_image(), field, &text) != 0) {
        return "";
    }
    return text;
}

std::string_view blobField(const VImage& image, const char* field) {
    const void* bytes = nullptr;
    std::size_t size = 0;
    if (image.get_typeof(field) == 0 ||
        vips_image_get_blob(image.get_image(), field, &bytes, &size) != 0) {
        return "";
    }
    return {static_cast<const char*>(bytes), size};
}

// In HEIC files it is one of the numbered blocks without a name of its own.
std::string_view xmpOf(const VImage& image) {
    const std::string_view named = blobField(image, VIPS_META_XMP_NAME);
    if (!named.empty()) {
        return named;
    }
    constexpr int mostBlocks = 16;
    for (int block = 0; block < mostBlocks; ++block) {
        const auto bytes = blobField(image, fmt::format("heif-mime-{}", block).c_str());
        if (bytes.substr(0, 200).contains("xmpmeta") || bytes.starts_with("<?xpacket")) {
            return bytes;
        }
    }
    return "";
}

// Of these the first that is one.
std::string takenOf(const LoadedPhoto& photo, const XmpFacts& xmp) {
    for (const std::string_view text : {textField(photo.image, "exif-ifd2-DateTimeOriginal"),
                                        std::string_view(photo.tiff.original),
                                        textField(photo.image, "exif-ifd2-DateTimeDigitized"),
                                        std::string_view(photo.tiff.digitized)}) {
        if (auto taken = exifTime(text)) {
            return *std::move(taken);
        }
    }
    return xmp.taken.value_or("");
}

int pagesOf(const VImage& image) {
    return image.get_typeof(VIPS_META_N_PAGES) == 0 ? 1 : image.get_int(VIPS_META_N_PAGES);
}

// "9" of "exif-ifd0-Orientation: 9 (Internal error, Short, ...)".
bool hasIllegalTurn(const VImage& image, PhotoFormat format) {
    const std::string_view turn = textField(image, "exif-ifd0-Orientation");
    return format != PhotoFormat::Heic && !turn.empty() &&
           (turn.size() > 1 && turn[1] != ' ' ? true : turn[0] < '1' || turn[0] > '8');
}

void addRemarks(PhotoFacts& facts, const PhotoFile& file, const LoadedPhoto& photo) {
    const auto add = [&](bool holds, std::string remark) {
        if (holds) {
            facts.remarks.push_back(std::move(remark));
        }
    };
    const std::string name = wrongNameRemark(file.path(), file.format());
    const int pages = pagesOf(photo.image);
    add(!name.empty(), name);
    add(pages > 1, fmt::format("It holds {} pictures; {} is used.", pages,
                               file.format() == PhotoFormat::Heic ? "the main one" : "the first"));
    add(hasIllegalTurn(photo.image, file.format()),
        "What it says of its turn makes no sense; it is shown as it lies.");
    add(!photo.profile.empty() && !photo.isProfileUsable,
        "Its colour profile is damaged or does not suit it; it is shown without.");
    add(photo.colours == 4, "It is in printing inks (CMYK); its colours are turned to sRGB.");
    add(photo.weight.bands > photo.colours, "It is transparent in parts; those are shown white.");
}

PhotoFacts factsOf(const PhotoFile& file, const LoadedPhoto& photo) {
    const XmpFacts xmp = readXmp(xmpOf(photo.image));
    PhotoFacts facts;
    facts.format = formatName(file.format());
    facts.stored = photo.weight.stored;
    facts.upright = uprightSize(facts.stored, photo.orientation);
    facts.orientation = photo.orientation;
    facts.profile = photo.profile;
    facts.rating = xmp.rating;
    facts.bytes = file.bytes();
    facts.taken = takenOf(photo, xmp);
    addRemarks(facts, file, photo);
    return facts;
}

}  // namespace

std::optional<Error> findOtherPicture(const std::filesystem::path& path, const ContentKey& known) {
    const auto file = PhotoFile::open(path);
    return file ? file->findOther(known) : std::optional(file.error());
}

Result<PhotoFacts> photoFacts(const std::filesystem::path& path) {
    preparePhotoReading();
    const auto file = PhotoFile::open(path);
    if (!file) {
        return std::unexpected(file.error());
    }
    const auto photo = loadPhoto(*file);
    if (!photo) {
        return std::unexpected(photo.error());
    }
    if (auto error = findTooLarge(photo->weight, {}, path)) {
        return std::unexpected(*std::move(error));
    }
    PhotoFacts facts = factsOf(*file, *photo);
    const auto content = file->content();
    if (!content) {
        return std::unexpected(content.error());
    }
    facts.content = *content;
    if (auto change = file->findChange()) {
        return std::unexpected(*std::move(change));
    }
    return facts;
}

}  // namespace matwright
