// SPDX-License-Identifier: MIT
#include "core/prints/print_notes.h"

#include <gtest/gtest.h>

#include "core/sketch/edit.h"

namespace matwright {

namespace {

constexpr Length eighth = Length::inches(0, 1, 8);

// Slots of these sizes side by side, each with a photo.
Making makingOf(const std::vector<Size>& sizes) {
    Making making{blankSketch(), {}};
    std::vector<Piece> pieces;
    Length left;
    for (const Size& size : sizes) {
        Piece& piece = pieces.emplace_back();
        piece.kind = PieceKind::PhotoSlot;
        piece.place.x = left;
        piece.size = size;
        piece.printSize = size;
        left = left + size.width;
    }
    EXPECT_TRUE(apply(making.sketch, addPieces(making.sketch, pieces)));
    making.work.photos[PhotoId{1}].upright = {4032, 3024};
    for (const PieceId id : making.sketch.order) {
        making.work.placements[id] = Placement{PhotoId{1}, {}, {}};
    }
    return making;
}

constexpr Size threeByFour{Length::inches(3), Length::inches(4)};

bool isOneNoteWith(const std::vector<std::string>& notes, const std::string& words) {
    return notes.size() == 1 && notes.front().contains(words);
}

TEST(PrintNotes, AreNoneWhereEveryChoiceDoesSomething) {
    Making making = makingOf({threeByFour, threeByFour});
    for (auto& entry : making.sketch.pieces) {
        entry.second.size = {Length::inches(2), Length::inches(3)};
    }
    PrintOptions options;
    options.cutMarks = true;
    EXPECT_TRUE(printNotes(making, options, true).empty());
    EXPECT_TRUE(printNotes(makingOf({}), options, true).empty());
}

TEST(PrintNotes, SayWhyNoTwoPrintsShareASheet) {
    const Making pair = makingOf({threeByFour, threeByFour});
    EXPECT_TRUE(printNotes(pair, {}, true).empty());
    EXPECT_TRUE(isOneNoteWith(printNotes(makingOf({threeByFour}), {}, true), "only one print"));
    PrintOptions bleeding;
    bleeding.bleed = eighth;
    EXPECT_TRUE(isOneNoteWith(printNotes(pair, bleeding, true), "with the bleed"));
    const Size fourBySix{Length::inches(4), Length::inches(6)};
    EXPECT_TRUE(
        isOneNoteWith(printNotes(makingOf({threeByFour, fourBySix}), {}, true), "two of one size"));
    // Not asked for: not told.
    EXPECT_TRUE(printNotes(makingOf({threeByFour}), bleeding, false).empty());
}

TEST(PrintNotes, SayThatCutMarksHaveNoRoom) {
    Making making = makingOf({threeByFour, threeByFour});
    PrintOptions options;
    options.cutMarks = true;
    EXPECT_TRUE(isOneNoteWith(printNotes(making, options, false), "cut marks"));
    // Picture up to the paper's edge leaves no room either.
    options.bleed = eighth;
    EXPECT_TRUE(isOneNoteWith(printNotes(making, options, false), "cut marks"));
    options.bleed = {};
    making.sketch.pieces.begin()->second.size = {Length::inches(2), Length::inches(3)};
    EXPECT_TRUE(isOneNoteWith(printNotes(making, options, false), "1 of 2 prints have no room"));
    making.sketch.pieces.rbegin()->second.size = {Length::inches(2), Length::inches(3)};
    EXPECT_TRUE(printNotes(making, options, false).empty());
}

TEST(PrintNotes, NameTurnedSlotsAcrossTheFold) {
    Making making = makingOf({threeByFour});
    making.sketch.page.doublePage = true;
    Piece& slot = making.sketch.pieces.begin()->second;
    slot.place.x = making.sketch.page.size.width - Length::inches(1);
    EXPECT_TRUE(printNotes(making, {}, false).empty());  // two prints that meet
    slot.rotation = Angle::degrees(4);
    ASSERT_EQ(printsOf(making, {}).size(), 1U);
    EXPECT_TRUE(isOneNoteWith(printNotes(making, {}, false), "to be cut by hand"));
    slot.place.x = Length::inches(1);
    EXPECT_TRUE(printNotes(making, {}, false).empty());
}

}  // namespace

}  // namespace matwright
