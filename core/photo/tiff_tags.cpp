// SPDX-License-Identifier: MIT
#include "core/photo/tiff_tags.h"

#include <tiffio.h>
#include <unistd.h>

#include <memory>

namespace matwright {

namespace {

// Nothing of what is read here is large; a file may say that it is.
constexpr tmsize_t mostAtOnce = 16'000'000;

int sayNothing(TIFF*, void*, const char*, const char*, va_list) {
    return 1;
}

using Tiff = std::unique_ptr<TIFF, void (*)(TIFF*)>;

Tiff opened(int file) {
    const std::unique_ptr<TIFFOpenOptions, void (*)(TIFFOpenOptions*)> options(
        TIFFOpenOptionsAlloc(), TIFFOpenOptionsFree);
    TIFFOpenOptionsSetMaxSingleMemAlloc(options.get(), mostAtOnce);
    TIFFOpenOptionsSetErrorHandlerExtR(options.get(), sayNothing, nullptr);
    TIFFOpenOptionsSetWarningHandlerExtR(options.get(), sayNothing, nullptr);
    const int own = ::dup(file);
    // "m": not mapped, because another program may cut the file short.
    Tiff tiff(own < 0 ? nullptr : TIFFFdOpenExt(own, "photo", "rm", options.get()), TIFFClose);
    if (!tiff && own >= 0) {
        ::close(own);
    }
    return tiff;
}

template <typename Value>
Value fieldOf(TIFF* tiff, std::uint32_t tag, Value otherwise) {
    Value value = otherwise;
    return TIFFGetField(tiff, tag, &value) == 1 ? value : otherwise;
}

// DNG specification 1.6: every DNG has its version; the others have a reduced picture or a colour
// filter mosaic in the first place.
bool isRaw(TIFF* tiff) {
    void* version = nullptr;
    return TIFFGetField(tiff, TIFFTAG_DNGVERSION, &version) == 1 ||
           (fieldOf<std::uint32_t>(tiff, TIFFTAG_SUBFILETYPE, 0) & FILETYPE_REDUCEDIMAGE) != 0 ||
           fieldOf<std::uint16_t>(tiff, TIFFTAG_PHOTOMETRIC, 0) == PHOTOMETRIC_CFA;
}

std::string textOf(TIFF* tiff, std::uint32_t tag) {
    const char* text = fieldOf<const char*>(tiff, tag, nullptr);
    return text ? text : "";
}

}  // namespace

TiffTags tiffTags(const PhotoFile& file) {
    const auto descriptor = file.rewound();
    const Tiff tiff = descriptor ? opened(*descriptor) : Tiff(nullptr, TIFFClose);
    if (!tiff) {
        return {};
    }
    TiffTags tags;
    tags.isRaw = isRaw(tiff.get());
    const auto exif = fieldOf<toff_t>(tiff.get(), TIFFTAG_EXIFIFD, 0);
    if (exif != 0 && TIFFReadEXIFDirectory(tiff.get(), exif) == 1) {
        tags.original = textOf(tiff.get(), EXIFTAG_DATETIMEORIGINAL);
        tags.digitized = textOf(tiff.get(), EXIFTAG_DATETIMEDIGITIZED);
    }
    return tags;
}

}  // namespace matwright
