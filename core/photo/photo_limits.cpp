// SPDX-License-Identifier: MIT
#include "core/photo/photo_limits.h"

#include <fmt/format.h>

#include "core/photo/photo_source.h"

namespace matwright {

namespace {

Error tooLarge(std::string sentence, const std::filesystem::path& file) {
    return {ErrorCode::TooLarge, std::move(sentence), file.string()};
}

std::string inMegapixels(std::int64_t pixels) {
    return fmt::format("{}", (pixels + 500'000) / 1'000'000);
}

}  // namespace

std::int64_t decoderBytes(const PhotoWeight& weight) {
    const std::int64_t values = weight.stored.count() * weight.bands;
    switch (weight.format) {
        case PhotoFormat::Jpeg:
            return weight.inPasses ? 2 * values : 0;
        case PhotoFormat::Png:
            return weight.inPasses ? values * weight.bytesABand : 0;
        case PhotoFormat::Tiff:
            return values * weight.bytesABand;
        case PhotoFormat::WebP:
            return 8 * weight.stored.count();
        case PhotoFormat::Heic:
            return (weight.bytesABand > 1 ? 16 : 9) * weight.stored.count();
    }
    return 0;
}

std::optional<Error> findTooLarge(const PhotoWeight& weight, PixelSize result,
                                  const std::filesystem::path& file) {
    const PixelSize size = weight.stored;
    if (size.width > maxPhotoSide || size.height > maxPhotoSide) {
        return tooLarge(fmt::format("The photo is {} by {} pixels; at most {} a side can be read. "
                                    "Make a smaller copy of it with another program.",
                                    size.width, size.height, maxPhotoSide),
                        file);
    }
    if (size.count() > maxPhotoPixels) {
        return tooLarge(fmt::format("The photo has {} megapixels; at most {} can be read. Make a "
                                    "smaller copy of it with another program.",
                                    inMegapixels(size.count()), inMegapixels(maxPhotoPixels)),
                        file);
    }
    if (decoderBytes(weight) + 3 * result.count() <= photoMemory) {
        return std::nullopt;
    }
    return tooLarge(
        fmt::format("The photo has {} megapixels, which is too much for one that is kept as {}. "
                    "Make a smaller copy of it, or save it as a plain JPEG with another program.",
                    inMegapixels(size.count()), formatName(weight.format)),
        file);
}

}  // namespace matwright
