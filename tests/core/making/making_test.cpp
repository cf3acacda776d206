// SPDX-License-Identifier: MIT
#include "core/making/making.h"

#include <gtest/gtest.h>

#include "tests/core/making/random_making.h"

namespace matwright::test {
namespace {

Making onePlaced() {
    Making making = fourSlots();
    making.work.photos[PhotoId{7}] = plainPhoto(7);
    making.work.placements[PieceId{1}] = {PhotoId{7}, Crop(), Length::inches(0, 1, 8)};
    making.work.focal = PhotoId{7};
    making.work.papers["kraft"] = {
        {200, 170, 130}, "/papers/kraft.jpg", contentKeyOf("k"), Length::inches(12)};
    return making;
}

TEST(Making, ASoundPageHasNoFault) {
    EXPECT_EQ(findFault(Making{blankSketch(), {}}), std::nullopt);
    EXPECT_EQ(findFault(onePlaced()), std::nullopt);
}

// Each of these breaks one rule.
TEST(Making, EveryBrokenRuleIsASentence) {
    using Break = void (*)(Making&);
    const std::pair<const char*, Break> rows[] = {
        {"sketch", [](Making& m) { m.sketch.order.pop_back(); }},
        {"photo id 0", [](Making& m) { m.work.photos[PhotoId{0}] = plainPhoto(1); }},
        {"large photo id",
         [](Making& m) { m.work.photos[PhotoId{1'000'000'001}] = plainPhoto(1); }},
        {"no path", [](Making& m) { m.work.photos[PhotoId{7}].path.clear(); }},
        {"path with a line break", [](Making& m) { m.work.photos[PhotoId{7}].path = "/a\nb"; }},
        {"path that is no text", [](Making& m) { m.work.photos[PhotoId{7}].path = "/a\xFF"; }},
        {"long time", [](Making& m) { m.work.photos[PhotoId{7}].taken.assign(10'001, '1'); }},
        {"no width", [](Making& m) { m.work.photos[PhotoId{7}].upright.width = 0; }},
        {"too high", [](Making& m) { m.work.photos[PhotoId{7}].upright.height = 200'001; }},
        {"rating", [](Making& m) { m.work.photos[PhotoId{7}].rating = 6; }},
        {"wish", [](Making& m) { m.work.photos[PhotoId{7}].wish = Size(); }},
        {"tone", [](Making& m) { m.work.photos[PhotoId{7}].tone.warmth = 101; }},
        {"focal", [](Making& m) { m.work.focal = PhotoId{8}; }},
        {"missing photo", [](Making& m) { m.work.placements[PieceId{1}].photo = PhotoId{8}; }},
        {"missing slot", [](Making& m) { m.work.placements[PieceId{9}] = {PhotoId{7}, {}, {}}; }},
        {"no slot",
         [](Making& m) {
             Piece& piece = m.sketch.pieces.at(PieceId{1});
             piece.kind = PieceKind::Block;
             piece.printSize.reset();
         }},
        {"crop", [](Making& m) { m.work.placements[PieceId{1}].crop.zoom = 0; }},
        {"negative border",
         [](Making& m) { m.work.placements[PieceId{1}].border = Length::fromTicks(-1); }},
        {"wide border",
         [](Making& m) {
             m.work.placements[PieceId{1}].border =
                 Length::inches(1, 15, 16) + Length::fromTicks(1);
         }},
        {"paper without a name", [](Making& m) { m.work.papers[""] = {}; }},
        {"picture without a width",
         [](Making& m) { m.work.papers["kraft"].pictureWidth = Length(); }},
        {"width without a picture", [](Making& m) { m.work.papers["kraft"].picture.clear(); }},
    };
    for (const auto& [name, breakRule] : rows) {
        Making making = onePlaced();
        breakRule(making);
        const auto fault = findFault(making);
        ASSERT_TRUE(fault) << name;
        EXPECT_TRUE(fault->sentence.ends_with('.')) << name;
        EXPECT_EQ(fault->code, ErrorCode::Malformed) << name;
    }
}

TEST(Making, ABorderMayLeaveAnEighthOfAnInch) {
    Making making = onePlaced();
    making.work.placements[PieceId{1}].border = Length::inches(1, 15, 16);
    EXPECT_EQ(findFault(making), std::nullopt);
    EXPECT_EQ(windowOf(making.sketch.pieces.at(PieceId{1}), Length::inches(1, 15, 16)),
              (Size{Length::inches(0, 1, 8), Length::inches(2, 1, 8)}));
}

TEST(Making, TheNextPhotoIdIsOnePastTheLargest) {
    PhotoWork work;
    EXPECT_EQ(nextPhotoId(work), PhotoId{1});
    work.photos[PhotoId{1}] = {};
    work.photos[PhotoId{5}] = {};
    EXPECT_EQ(nextPhotoId(work), PhotoId{6});
    work.photos[maxPhotoId] = {};
    EXPECT_EQ(nextPhotoId(work), PhotoId{2});
}

}  // namespace
}  // namespace matwright::test
