// SPDX-License-Identifier: MIT
#include "core/prints/double_check.h"

#include <gtest/gtest.h>

#include "core/measure/catalogue.h"
#include "core/photo/photo_source.h"
#include "core/photo/photo_words.h"
#include "core/sketch/edit.h"
#include "tests/support/busy_photo.h"
#include "tests/support/temporary_folder.h"

namespace matwright {

namespace {

// A page of so many 3x4 slots with one photo.
Making pageOf(int slots, const std::string& photo) {
    Making making{blankSketch(), {}};
    std::vector<Piece> pieces;
    for (int i = 0; i < slots; ++i) {
        Piece& piece = pieces.emplace_back();
        piece.kind = PieceKind::PhotoSlot;
        piece.name = "A slot with a name that is much too long for a column of a sheet of paper";
        piece.size = {Length::inches(3), Length::inches(4)};
        piece.printSize = piece.size;
    }
    EXPECT_TRUE(apply(making.sketch, addPieces(making.sketch, pieces)));
    making.work.photos[{1}].path = photo;
    making.work.photos[{1}].upright = {1200, 900};
    for (const PieceId id : making.sketch.order) {
        making.work.placements[id] = Placement{{1}, {}, {}};
    }
    return making;
}

constexpr Size letter{Length::inches(8, 1, 2), Length::inches(11)};

bool says(const Drawing& drawing, const std::string& words) {
    for (const DrawingItem& item : drawing.layers.front().items) {
        const auto* text = std::get_if<TextItem>(&item);
        if (text && text->text.find(words) != std::string::npos) {
            return true;
        }
    }
    return false;
}

TEST(DoubleCheck, ShowsEveryPrintOnceOnAsManySheetsAsItTakes) {
    const test::TemporaryFolder place;
    const Making making =
        pageOf(13, test::writeBusyPhoto(place / "beach.jpg", {1200, 900}, 1).string());
    const auto prints = printsOf(making, {});
    const auto sheets = doubleCheckSheets(making, prints, letter, Scale::SixteenthInch);
    // Five rows of two.
    ASSERT_EQ(sheets.size(), 2U);
    EXPECT_EQ(sheets[0].pictures.size() + sheets[1].pictures.size(), prints.size());
    for (const DoubleCheckSheet& sheet : sheets) {
        const Rect paper = Rect::at({}, letter);
        for (const SmallPrint& picture : sheet.pictures) {
            EXPECT_TRUE(paper.contains(picture.place));
            const auto raster = fromSmallJpeg(picture.jpeg);
            ASSERT_TRUE(raster);
            EXPECT_EQ(raster->size, (PixelSize{216, 288}));
            for (const SmallPrint& other : sheet.pictures) {
                EXPECT_TRUE(&other == &picture || !other.place.interiorIntersects(picture.place));
            }
        }
        // 3:4 out of 4:3 leaves 675 of 1,200 pixels across: 225 an inch, 7/16 cut off.
        EXPECT_TRUE(says(sheet.drawing, "beach.jpg"));
        EXPECT_TRUE(says(sheet.drawing, "225 ppi"));
        EXPECT_TRUE(says(sheet.drawing, "44 % of the photo is cut off"));
    }
}

TEST(DoubleCheck, KeepsTextsInsideTheirColumns) {
    const Making making = pageOf(4, "/nowhere/photo.jpg");
    const auto sheets =
        doubleCheckSheets(making, printsOf(making, {}), letter, Scale::SixteenthInch);
    ASSERT_EQ(sheets.size(), 1U);
    for (const DrawingItem& item : sheets[0].drawing.layers.front().items) {
        if (const auto* text = std::get_if<TextItem>(&item)) {
            const double end =
                text->at.x +
                static_cast<double>(textWidthBound(text->text, text->height, text->bold).ticks());
            const double middle = static_cast<double>(letter.width.ticks()) / 2;
            EXPECT_LE(end, text->at.x < middle && text->text.find("sheet") == std::string::npos
                               ? middle
                               : 2 * middle)
                << text->text;
        }
    }
}

TEST(DoubleCheck, ShowsAWarningToItsLastWord) {
    const test::TemporaryFolder place;
    Making making = pageOf(1, test::writeBusyPhoto(place / "beach.jpg", {1200, 900}, 1).string());
    Placement& placement = making.work.placements.begin()->second;
    placement.crop.zoom = 2 * Crop::one;  // 900 pixels of height for 4 inches, halved: 112 ppi
    placement.crop.straighten = Angle::degrees(4);
    const auto sheets =
        doubleCheckSheets(making, printsOf(making, {}), letter, Scale::SixteenthInch);
    std::string all;
    for (const DrawingItem& item : sheets.front().drawing.layers.front().items) {
        if (const auto* text = std::get_if<TextItem>(&item)) {
            all += text->text + ' ';
        }
    }
    const Print print = printsOf(making, {}).front();
    const double ppi = effectivePpi(print.crop, {1200, 900}, print.window);
    EXPECT_NE(all.find(ppiText(ppi)), std::string::npos) << all;
    EXPECT_NE(all.find("to the right"), std::string::npos) << all;
}

TEST(DoubleCheck, SaysWherePhotosAreOutOfReach) {
    const Making making = pageOf(1, "/nowhere/photo.jpg");
    const auto sheets =
        doubleCheckSheets(making, printsOf(making, {}), letter, Scale::SixteenthInch);
    ASSERT_EQ(sheets.size(), 1U);
    EXPECT_TRUE(sheets[0].pictures.empty());
    EXPECT_TRUE(says(sheets[0].drawing, "out of reach"));
}

TEST(DoubleCheck, HasNoSheetWithoutPrints) {
    EXPECT_TRUE(doubleCheckSheets(pageOf(0, ""), {}, letter, Scale::SixteenthInch).empty());
}

}  // namespace

}  // namespace matwright
