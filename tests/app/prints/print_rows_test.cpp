// SPDX-License-Identifier: MIT
#include "app/prints/print_rows.h"

#include "app/prints/prints_choice_bytes.h"
#include "app/prints/prints_run.h"
#include "tests/app/prints/prints_fixture.h"

namespace matwright::app {
namespace {

class PrintRowsTest : public PrintsFixture {};

TEST_F(PrintRowsTest, SayWhatIsPrintedHowFineAndWhatIsLost) {
    const PieceId fine = addSlot({}, {Length::inches(3), Length::inches(2)});
    const PieceId coarse = addSlot({Length::inches(4), {}}, {Length::inches(8), Length::inches(6)});
    addSlot({{}, Length::inches(7)}, {Length::inches(4), Length::inches(4)});
    const PhotoId photo = addPhoto(1, {1200, 900});
    put(photo, fine);
    put(photo, coarse);
    const auto rows = printRows(making, printsOf(making, {}));
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_TRUE(rows[0].size.startsWith("3 × 2 in")) << rows[0].size.toStdString();
    EXPECT_TRUE(rows[0].fineness.contains("400"));
    EXPECT_EQ(rows[0].sharpness, Sharpness::Fine);
    EXPECT_TRUE(rows[0].loss.contains("1/9")) << rows[0].loss.toStdString();
    EXPECT_EQ(rows[1].sharpness, Sharpness::Soft);
    EXPECT_EQ(rows[0].photo, QString::fromStdString(test::sceneName(1) + ".jpg"));
    const QString summary = summaryOf(rows, freeSlotsOf(making));
    EXPECT_TRUE(summary.contains("2 prints"));
    EXPECT_TRUE(summary.contains("1 of them will not look sharp"));
    EXPECT_TRUE(summary.contains("1 slot has no photo"));
}

TEST_F(PrintRowsTest, SameBorderFitsEveryCropToItsNewWindow) {
    const PieceId slot = addSlot({}, {Length::inches(4), Length::inches(6)});
    put(addPhoto(1, {1200, 900}), slot);
    const Making bordered = withBorders(making, Length::inches(0, 1, 4));
    EXPECT_EQ(bordered.work.placements.at(slot).border, Length::inches(0, 1, 4));
    EXPECT_FALSE(findFault(bordered));
    EXPECT_EQ(withBorders(making, Length::inches(3)), making) << "no room for it";
}

TEST_F(PrintRowsTest, TwoSmallPrintsAreOneFileWhenTheyAreGanged) {
    const PhotoId photo = addPhoto(1, {1200, 900});
    for (int i = 0; i < 3; ++i) {
        put(photo, addSlot({Length::inches(3 * i), {}}, {Length::inches(3), Length::inches(4)}));
    }
    EXPECT_EQ(planOf(making, {}, false).files.size(), 3u);
    const PrintsPlan plan = planOf(making, {}, true);
    ASSERT_EQ(plan.files.size(), 2u);
    EXPECT_EQ(plan.files[0].gang.places.size(), 2u);
    EXPECT_EQ(plan.files[1].gang.places.size(), 1u);
}

TEST(PrintsChoiceBytes, ComeBackAsTheyWereButForThePlace) {
    PrintsChoice choice;
    choice.options.format = PrintFormat::Tiff;
    choice.options.ppi = 600;
    choice.options.quality = 80;
    choice.options.bleed = Length::inches(0, 1, 8);
    choice.options.cutMarks = true;
    choice.ganged = true;
    choice.ownBorders = false;
    choice.border = Length::inches(0, 1, 4);
    EXPECT_EQ(choiceFrom(bytesOf(choice)), choice);
    choice.options.keepPlace = true;
    EXPECT_FALSE(choiceFrom(bytesOf(choice)).options.keepPlace);
}

TEST(PrintsChoiceBytes, WhatCannotBeReadIsTheBeginning) {
    EXPECT_EQ(choiceFrom({}), PrintsChoice{});
    QByteArray bytes = bytesOf({});
    bytes[11] = char(99);  // in the ppi
    bytes[8] = char(99);
    EXPECT_EQ(choiceFrom(bytes), PrintsChoice{});
    EXPECT_EQ(choiceFrom(bytesOf({}).left(9)), PrintsChoice{});
}

}  // namespace
}  // namespace matwright::app
