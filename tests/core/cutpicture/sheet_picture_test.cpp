// SPDX-License-Identifier: MIT
#include "core/cutpicture/sheet_picture.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/core/cutpicture/planned_sheets.h"

namespace matwright {
namespace {

using test::Random;

const Rect letterRoom =
    Rect::at({Length::inches(1), Length::inches(2)}, {Length::inches(4), Length::inches(3)});

void expectInside(const std::vector<DrawingItem>& items, const Rect& room) {
    for (const DrawingItem& item : items) {
        const Rect ink = test::inkOf(item);
        const auto* text = std::get_if<TextItem>(&item);
        EXPECT_TRUE(room.expanded(Length::hundredthMillimetres(5)).contains(ink))
            << (text ? text->text : "a path") << " at " << ink.left().toInches() << ", "
            << ink.top().toInches() << " to " << ink.right().toInches() << ", "
            << ink.bottom().toInches();
    }
}

TEST(SheetPicture, KeepsTheProportionsInTheMiddleOfItsRoom) {
    const Size sheet{Length::inches(12), Length::inches(6)};
    const Rect whole = placeInRoom(Rect::at({}, sheet), sheet, letterRoom);
    EXPECT_EQ(whole, Rect::at({Length::inches(1), Length::inches(2, 1, 2)},
                              {Length::inches(4), Length::inches(2)}));
    const Rect part = placeInRoom(
        Rect::at({Length::inches(3), Length::inches(3)}, {Length::inches(6), Length::inches(3)}),
        sheet, letterRoom);
    EXPECT_EQ(part, Rect::at({Length::inches(2), Length::inches(3, 1, 2)},
                             {Length::inches(2), Length::inches(1)}));
}

TEST(SheetPicture, ShowsEveryLetterNumberAndSize) {
    const PlannedSheet sheet = test::smallSheet();
    const auto items = sheetItems(sheet, Rect::at({}, {Length::inches(6), Length::inches(6)}));
    for (const char* text : {"A", "B", "C", "strip", "mat", "12 × 3 in", "4 × 5 in"}) {
        EXPECT_TRUE(test::says(items, text)) << text;
    }
    for (std::size_t step = 1; step <= sheet.steps.steps.size(); ++step) {
        EXPECT_TRUE(test::says(items, std::to_string(step))) << step;
    }
    EXPECT_FALSE(test::says(items, std::to_string(sheet.steps.steps.size() + 1)));
}

TEST(SheetPicture, CutLinesLieWhereTheBladeGoes) {
    const PlannedSheet sheet = test::smallSheet();
    const Rect room = Rect::at({}, {Length::inches(6), Length::inches(6)});
    const auto items = sheetItems(sheet, room);
    for (const CutStep& step : sheet.steps.steps) {
        const CutPart& part = sheet.plan.parts[static_cast<std::size_t>(step.part)];
        const bool upright = step.direction == CutDirection::Upright;
        const Rect line =
            upright ? Rect{{part.at, part.at}, part.area.y} : Rect{part.area.x, {part.at, part.at}};
        const Rect there = placeInRoom(line, sheet.size, room);
        EXPECT_TRUE(std::ranges::any_of(items, [&](const DrawingItem& item) {
            return std::holds_alternative<PathItem>(item) && test::inkOf(item) == there;
        }));
    }
}

TEST(SheetPicture, AKnifeCutIsDashedAndSaysSo) {
    PlannedSheet sheet = test::smallSheet();
    const auto piece = std::ranges::find(sheet.plan.parts, CutPart::Use::Piece, &CutPart::use);
    sheet.knifeCuts = {{static_cast<int>(piece - sheet.plan.parts.begin()),
                        piece->area.expanded(-Length::inches(0, 1, 2)), "it is sheet 2"}};
    const auto items = sheetItems(sheet, Rect::at({}, {Length::inches(6), Length::inches(6)}));
    EXPECT_TRUE(test::says(items, "knife"));
    EXPECT_EQ(std::ranges::count_if(items,
                                    [](const DrawingItem& item) {
                                        const auto* path = std::get_if<PathItem>(&item);
                                        return path && path->stroke && !path->stroke->dash.empty();
                                    }),
              1);
}

TEST(SheetPicture, AnUpDirectionIsShown) {
    PlannedSheet sheet = test::smallSheet();
    const Rect room = Rect::at({}, {Length::inches(6), Length::inches(6)});
    EXPECT_FALSE(test::says(sheetItems(sheet, room), "up"));
    sheet.hasUp = true;
    EXPECT_TRUE(test::says(sheetItems(sheet, room), "up"));
}

TEST(SheetPicture, StaysInItsRoomHoweverSmall) {
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        Random random(seed);
        for (PlannedSheet& sheet : test::plannedSheets(test::randomCutJob(random))) {
            sheet.hasUp = seed % 2 == 0;
            for (const std::int64_t inches : {1, 3, 8}) {
                const Rect room = Rect::at({Length::inches(1), Length::inches(1)},
                                           {Length::inches(inches), Length::inches(inches)});
                expectInside(sheetItems(sheet, room), room);
                const Rect smaller = room;
                for (std::size_t step = 0; step < sheet.steps.steps.size(); ++step) {
                    expectInside(stepItems(sheet, step, smaller), smaller);
                }
            }
        }
    }
}

TEST(SheetPicture, EveryPieceOfRandomSheetsHasItsLetter) {
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
        Random random(seed);
        for (const PlannedSheet& sheet : test::plannedSheets(test::randomCutJob(random))) {
            const auto items =
                sheetItems(sheet, Rect::at({}, {Length::inches(4), Length::inches(4)}));
            const auto letters = partLetters(sheet.plan);
            for (std::size_t i = 0; i < letters.size(); ++i) {
                if (sheet.plan.parts[i].use == CutPart::Use::Piece) {
                    EXPECT_TRUE(test::says(items, letters[i])) << letters[i] << ", seed " << seed;
                }
            }
        }
    }
}

TEST(SheetPicture, TheStepAtHandIsMarked) {
    const PlannedSheet sheet = test::smallSheet();
    const Rect room = Rect::at({}, {Length::inches(6), Length::inches(6)});
    SheetPictureOptions options;
    options.current = 1;
    const auto marked = sheetItems(sheet, room, options);
    const auto plain = sheetItems(sheet, room);
    EXPECT_EQ(marked.size(), plain.size() + 1);  // the part in hand is outlined
}

TEST(StepPicture, TheBladeStandsUprightWhereTheSettingSays) {
    PlannedSheet sheet = test::smallSheet();
    for (std::size_t i = 0; i < sheet.steps.steps.size(); ++i) {
        const Drawing picture = stepPicture(sheet, i, {Length::inches(3), Length::inches(2)});
        EXPECT_EQ(picture.title, stepSentence(sheet, i));
        const auto& items = picture.layers.front().items;
        EXPECT_TRUE(test::says(items, lengthText(sheet.steps.steps[i].setting, sheet.scale)));
        const CutStep& step = sheet.steps.steps[i];
        const Size part = sheet.plan.parts[static_cast<std::size_t>(step.part)].area.size();
        const bool upright = step.direction == CutDirection::Upright;
        const double share = ratio(step.setting, upright ? part.width : part.height);
        // The outline of the part is the widest path there is; the blade the only upright line
        // higher than it.
        Rect whole;
        Rect blade;
        for (const DrawingItem& item : items) {
            const Rect ink = test::inkOf(item);
            if (!std::holds_alternative<PathItem>(item)) {
                continue;
            }
            if (ink.size().width.isZero() && ink.size().height > blade.size().height) {
                blade = ink;
            }
            if (ink.size().width > whole.size().width && !ink.size().height.isZero()) {
                whole = ink;
            }
        }
        EXPECT_NEAR(ratio(blade.left() - whole.left(), whole.size().width), share, 1e-4);
        EXPECT_GT(blade.size().height, whole.size().height);
    }
}

}  // namespace
}  // namespace matwright
