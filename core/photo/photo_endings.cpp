// SPDX-License-Identifier: MIT
#include "core/photo/photo_endings.h"

#include <algorithm>
#include <array>

namespace matwright {

namespace {

constexpr std::array allFormats{PhotoFormat::Jpeg, PhotoFormat::Png, PhotoFormat::Tiff,
                                PhotoFormat::WebP, PhotoFormat::Heic};
constexpr std::array<std::string_view, 4> jpegEndings{".jpg", ".jpeg", ".jpe", ".jfif"};
constexpr std::array<std::string_view, 1> pngEndings{".png"};
constexpr std::array<std::string_view, 2> tiffEndings{".tif", ".tiff"};
constexpr std::array<std::string_view, 1> webPEndings{".webp"};
constexpr std::array<std::string_view, 3> heicEndings{".heic", ".heif", ".hif"};

}  // namespace

std::span<const std::string_view> endingsOf(PhotoFormat format) {
    switch (format) {
        case PhotoFormat::Jpeg:
            return jpegEndings;
        case PhotoFormat::Png:
            return pngEndings;
        case PhotoFormat::Tiff:
            return tiffEndings;
        case PhotoFormat::WebP:
            return webPEndings;
        case PhotoFormat::Heic:
            return heicEndings;
    }
    return {};
}

std::vector<std::string_view> photoEndings() {
    std::vector<std::string_view> all;
    for (const PhotoFormat format : allFormats) {
        std::ranges::copy(endingsOf(format), std::back_inserter(all));
    }
    return all;
}

std::string endingOf(const std::filesystem::path& file) {
    std::string ending = file.extension().string();
    std::ranges::transform(ending, ending.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return ending;
}

bool isNamedAsPhoto(const std::filesystem::path& file) {
    const std::vector<std::string_view> all = photoEndings();
    return std::ranges::find(all, endingOf(file)) != all.end();
}

}  // namespace matwright
