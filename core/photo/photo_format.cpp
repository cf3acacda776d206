// SPDX-License-Identifier: MIT
#include "core/photo/photo_format.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "core/photo/photo_endings.h"

namespace matwright {

namespace {

using std::string_view_literals::operator""sv;

// The brands of ISO/IEC 23008-12 for pictures coded with HEVC, and the two of any coding.
constexpr std::array hevcBrands{"heic"sv, "heix"sv, "heim"sv, "heis"sv,
                                "hevc"sv, "hevx"sv, "hevm"sv, "hevs"sv};
constexpr std::array anyPictureBrands{"mif1"sv, "msf1"sv, "mif2"sv};

template <std::size_t n>
bool isOneOf(const std::array<std::string_view, n>& those, std::string_view one) {
    return std::ranges::find(those, one) != those.end();
}

// What a file of the ISO base media format calls itself; the first brand is the major one.
class Brands {
  public:
    explicit Brands(std::string_view bytes) : m_bytes(bytes) {}

    std::string_view major() const { return m_bytes.substr(8, 4); }

    template <std::size_t n>
    bool anyOf(const std::array<std::string_view, n>& wanted) const {
        for (std::size_t at = 8; at + 4 <= std::min(m_bytes.size(), boxSize()); at += 4) {
            // The minor version stands between the major brand and the others.
            if (at != 12 && isOneOf(wanted, m_bytes.substr(at, 4))) {
                return true;
            }
        }
        return false;
    }

  private:
    std::size_t boxSize() const {
        std::size_t size = 0;
        for (const char c : m_bytes.substr(0, 4)) {
            size = size << 8U | static_cast<unsigned char>(c);
        }
        return size;
    }

    std::string_view m_bytes;
};

// What else is known by its first bytes, to say what the file is. Empty where nothing is.
std::string_view otherKind(std::string_view bytes) {
    struct Kind {
        std::size_t at;
        std::string_view start;
        std::string_view name;
    };
    static constexpr std::array kinds{
        Kind{0, "GIF8"sv, "a GIF picture"sv},
        Kind{0, "BM"sv, "a BMP picture"sv},
        Kind{0, "%PDF"sv, "a PDF document"sv},
        Kind{0, "8BPS"sv, "a layered picture of a paint program"sv},
        Kind{0, "\0\0\0\x0CjP  "sv, "a JPEG 2000 picture"sv},
        Kind{0, "\xFF\x0A"sv, "a JPEG XL picture"sv},
        Kind{0, "\0\0\0\x0CJXL "sv, "a JPEG XL picture"sv},
        Kind{0, "FUJIFILMCCD-RAW"sv, "a camera's raw picture"sv},
        Kind{0, "IIRO"sv, "a camera's raw picture"sv},
        Kind{0, "IIU\0"sv, "a camera's raw picture"sv},
        Kind{0, "PK\x03\x04"sv, "a packed folder"sv},
        Kind{0, "<?xml"sv, "a text or drawing"sv},
        Kind{0, "<svg"sv, "a drawing"sv},
        Kind{8, "AVI "sv, "a video"sv},
    };
    const auto* found = std::ranges::find_if(kinds, [&](const Kind& kind) {
        return bytes.size() > kind.at && bytes.substr(kind.at).starts_with(kind.start);
    });
    return found == kinds.end() ? ""sv : found->name;
}

std::string_view otherKindOf(const Brands& brands) {
    if (brands.anyOf(std::array{"avif"sv, "avis"sv})) {
        return "an AVIF picture";
    }
    return brands.major() == "crx " ? "a camera's raw picture" : "a video or sound";
}

bool isTiff(std::string_view bytes) {
    return bytes.starts_with("II*\0"sv) || bytes.starts_with("MM\0*"sv) ||
           bytes.starts_with("II+\0"sv) || bytes.starts_with("MM\0+"sv);
}

bool isHeic(const Brands& brands) {
    return brands.anyOf(hevcBrands) ||
           (brands.anyOf(anyPictureBrands) && !brands.anyOf(std::array{"avif"sv, "avis"sv}));
}

constexpr std::string_view readKinds = "JPEG, PNG, TIFF, WebP or HEIC";

}  // namespace

std::string_view formatName(PhotoFormat format) {
    switch (format) {
        case PhotoFormat::Jpeg:
            return "JPEG";
        case PhotoFormat::Png:
            return "PNG";
        case PhotoFormat::Tiff:
            return "TIFF";
        case PhotoFormat::WebP:
            return "WebP";
        case PhotoFormat::Heic:
            return "HEIC";
    }
    return "";
}

Error notReadHere(std::string_view kind, const std::filesystem::path& file) {
    if (kind.empty()) {
        return {ErrorCode::WrongFormat,
                fmt::format("This is no photo of a kind that is read here. Choose a {} file.",
                            readKinds),
                file.string()};
    }
    return {ErrorCode::WrongFormat,
            fmt::format("This is {}, which is not read here. Choose a {} file, or save it as one "
                        "with the program it comes from.",
                        kind, readKinds),
            file.string()};
}

Result<PhotoFormat> formatOf(std::string_view firstBytes, const std::filesystem::path& file) {
    if (firstBytes.empty()) {
        return std::unexpected(Error{ErrorCode::WrongFormat,
                                     "The file is empty. Copy the photo again from where it came.",
                                     file.string()});
    }
    if (firstBytes.starts_with("\xFF\xD8\xFF")) {
        return PhotoFormat::Jpeg;
    }
    if (firstBytes.starts_with("\x89PNG\r\n\x1A\n")) {
        return PhotoFormat::Png;
    }
    if (firstBytes.starts_with("RIFF") && firstBytes.substr(4).substr(4).starts_with("WEBP")) {
        return PhotoFormat::WebP;
    }
    if (firstBytes.size() >= 12 && firstBytes.substr(4, 4) == "ftyp") {
        const Brands brands(firstBytes);
        return isHeic(brands) ? Result<PhotoFormat>(PhotoFormat::Heic)
                              : std::unexpected(notReadHere(otherKindOf(brands), file));
    }
    if (isTiff(firstBytes) && firstBytes.substr(0, 10).substr(8) != "CR") {
        return PhotoFormat::Tiff;
    }
    return std::unexpected(
        notReadHere(isTiff(firstBytes) ? "a camera's raw picture" : otherKind(firstBytes), file));
}

std::string wrongNameRemark(const std::filesystem::path& file, PhotoFormat format) {
    const std::string ending = endingOf(file);
    if (ending.empty()) {
        return fmt::format("Its name has no ending; it is a {} photo.", formatName(format));
    }
    if (std::ranges::find(endingsOf(format), ending) != endingsOf(format).end()) {
        return "";
    }
    return fmt::format("It is called {} but is a {} photo.", ending, formatName(format));
}

}  // namespace matwright
