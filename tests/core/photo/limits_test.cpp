// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/photo/photo_limits.h"
#include "core/photo/photo_source.h"

namespace matwright {
namespace {

PhotoWeight weightOf(PhotoFormat format, PixelSize size) {
    PhotoWeight weight;
    weight.format = format;
    weight.stored = size;
    return weight;
}

TEST(PhotoLimits, LetEveryPhonesPhotosThrough) {
    // 12, 48 and 50 megapixels, at full size.
    for (const PixelSize size :
         {PixelSize{4032, 3024}, PixelSize{8064, 6048}, PixelSize{8160, 6120}}) {
        for (const PhotoFormat format : {PhotoFormat::Jpeg, PhotoFormat::Png, PhotoFormat::Tiff,
                                         PhotoFormat::WebP, PhotoFormat::Heic}) {
            EXPECT_EQ(findTooLarge(weightOf(format, size), size, "a"), std::nullopt)
                << formatName(format) << size.width;
        }
    }
}

TEST(PhotoLimits, CountPixelsAndSides) {
    const auto jpeg = [](PixelSize size) {
        return findTooLarge(weightOf(PhotoFormat::Jpeg, size), {1, 1}, "a");
    };
    EXPECT_EQ(jpeg({25'000, 10'000}), std::nullopt);
    EXPECT_EQ(jpeg({25'001, 10'000})->code, ErrorCode::TooLarge);
    EXPECT_EQ(jpeg({maxPhotoSide, 1}), std::nullopt);
    EXPECT_EQ(jpeg({maxPhotoSide + 1, 1})->code, ErrorCode::TooLarge);
    EXPECT_EQ(jpeg({1, maxPhotoSide + 1})->code, ErrorCode::TooLarge);
}

TEST(PhotoLimits, CountWhatTheResultTakesToo) {
    const PhotoWeight tiff = weightOf(PhotoFormat::Tiff, {15'000, 12'000});
    EXPECT_EQ(findTooLarge(tiff, {512, 410}, "a"), std::nullopt);
    EXPECT_EQ(findTooLarge(tiff, tiff.stored, "a")->code, ErrorCode::TooLarge);
}

TEST(PhotoLimits, CountWhatAPhotoInPassesTakes) {
    PhotoWeight jpeg = weightOf(PhotoFormat::Jpeg, {20'000, 10'000});
    EXPECT_EQ(decoderBytes(jpeg), 0);
    jpeg.inPasses = true;
    EXPECT_EQ(decoderBytes(jpeg), 1'200'000'000);
    EXPECT_EQ(findTooLarge(jpeg, {512, 256}, "a")->code, ErrorCode::TooLarge);
}

}  // namespace
}  // namespace matwright
