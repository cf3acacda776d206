// SPDX-License-Identifier: MIT
#include "core/checks/photo_checks.h"

#include "tests/core/checks/check_fixture.h"

namespace matwright::test {
namespace {

// A 3 x 4 in slot with a photo of so many pixels across its 3 inches.
Making pageWith(std::int32_t across) {
    Making making{sketchWith({photoAt("1", "1", "3", "4")}), {}};
    Photo photo;
    photo.path = "/photos/pier.jpg";
    photo.upright = {across, across / 3 * 4};
    making.work.photos.emplace(PhotoId{1}, photo);
    making.work.placements.emplace(PieceId{1}, Placement{PhotoId{1}, {}, {}});
    return making;
}

TEST(PhotoChecks, AFinePrintIsNothingToMend) {
    EXPECT_TRUE(checkMaking(pageWith(600), {}).empty());
}

TEST(PhotoChecks, ASoftPrintIsTold) {
    const auto findings = checkMaking(pageWith(480), {});
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].kind, CheckKind::CoarsePrint);
    EXPECT_EQ(findings[0].pieces, std::vector{PieceId{1}});
    EXPECT_EQ(findings[0].sentence,
              "1 · photo slot 3 × 4 in: pier.jpg prints at about 160 ppi: this will look soft; "
              "print it smaller, or show more of the photo.");
}

TEST(PhotoChecks, AZoomCountsAsMuchAsASmallPhoto) {
    Making making = pageWith(600);
    making.work.placements.at(PieceId{1}).crop.zoom = 3 * Crop::one;  // 67 ppi
    const auto findings = checkMaking(making, {});
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_NE(findings[0].sentence.find("66 ppi: too coarse to print"), std::string::npos)
        << findings[0].sentence;
}

TEST(PhotoChecks, WhatIsWrongWithTheSketchComesFirst) {
    Making making = pageWith(480);
    making.sketch.pieces.at(PieceId{1}).place.x = in("11");
    const auto findings = checkMaking(making, {});
    ASSERT_EQ(findings.size(), 2U);
    EXPECT_EQ(findings[0].kind, CheckKind::OffPage);
    EXPECT_EQ(findings[1].kind, CheckKind::CoarsePrint);
}

}  // namespace
}  // namespace matwright::test
