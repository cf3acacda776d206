// SPDX-License-Identifier: MIT
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>

#include "app/panels/piece_changes.h"
#include "app/panels/text_field.h"
#include "tests/app/panels/piece_panel_bench.h"

namespace matwright::app {
namespace {

TEST_F(PiecePanelTest, OneClickAddsAMatToFourPhotoSlotsInOneUndoStep) {
    fill({photoSlot(inchSize(4, 6)), photoSlot(inchSize(3, 4)), photoSlot(inchSize(3, 4)),
          photoSlot(inchSize(3, 4))});
    const Sketch before = session.sketch();
    session.selectAll();
    click("Add mat to 4 photo slots");
    for (std::uint32_t id = 1; id <= 4; ++id) {
        EXPECT_EQ(piece(id).mats, (std::vector<Mat>{{inches(0, 1, 8), std::nullopt, {}}}));
    }
    EXPECT_EQ(undoSteps(), 1);
    session.undoStack().undo();
    EXPECT_EQ(session.sketch(), before);
}

TEST_F(PiecePanelTest, ShowsTheSizeOfEachMat) {
    fill({photoSlot(inchSize(4, 6))});
    select({1});
    click("Add mat");
    EXPECT_NE(labelled<QLabel>(panel, "First mat: 4 1/4 × 6 1/4 in"), nullptr);
    click("Add second mat");
    EXPECT_NE(labelled<QLabel>(panel, "Second mat: 4 1/2 × 6 1/2 in"), nullptr);
    EXPECT_EQ(piece(1).mats.size(), maxMats);
    EXPECT_FALSE(labelled<QPushButton>(panel, "Two mats is the most")->isEnabled());
}

TEST_F(PiecePanelTest, EditsOneMatAndTakesItOff) {
    fill({photoSlot(inchSize(4, 6))});
    select({1});
    click("Add mat");
    type(length("Border"), "1/4");
    EXPECT_EQ(piece(1).mats[0].border, inches(0, 1, 4));
    EXPECT_EQ(length("Bottom border"), nullptr);
    QTest::mouseClick(labelled<QCheckBox>(panel, "Bottom border differs"), Qt::LeftButton, {},
                      {8, 12});
    EXPECT_TRUE(piece(1).mats[0].bottomBorder.has_value());
    type(length("Bottom border"), "1");
    EXPECT_EQ(piece(1).mats[0].bottomBorder, inches(1));
    auto* paper = control<TextField>(panel, "Paper: First mat");
    ASSERT_NE(paper, nullptr);
    QTest::keyClicks(paper, QStringLiteral("navy"));
    EXPECT_EQ(piece(1).mats[0].paper, "navy");
    click("Remove");
    EXPECT_TRUE(piece(1).mats.empty());
}

TEST_F(PiecePanelTest, AnotherPrintBringsAnUntrimmedSlotToItsSize) {
    fill({photoSlot(inchSize(6, 4))});
    select({1});
    choose("Print size", QStringLiteral("7 × 5 in"));
    EXPECT_EQ(piece(1).printSize, inchSize(7, 5)) << "sizes are offered as the slot lies";
    EXPECT_EQ(piece(1).size, inchSize(7, 5));
    EXPECT_EQ(undoSteps(), 1);
}

TEST_F(PiecePanelTest, SlotsOfDifferentPrintsHaveTheWholePrintInCommon) {
    Piece trimmed = photoSlot(inchSize(5, 7));
    trimmed.size = inchSize(5, 5);
    fill({photoSlot(inchSize(4, 6)), trimmed});
    session.selectAll();
    auto* box = control<QComboBox>(panel, "Trim to");
    ASSERT_NE(box, nullptr);
    EXPECT_EQ(box->currentIndex(), -1);
    choose("Trim to", QStringLiteral("Whole print"));
    EXPECT_EQ(piece(2).size, inchSize(5, 7));
    EXPECT_EQ(box->currentText(), QStringLiteral("Whole print"));
}

TEST_F(PiecePanelTest, TrimsToACommonSizeAndBack) {
    fill({photoSlot(inchSize(3, 4))});
    select({1});
    choose("Trim to", QStringLiteral("3 × 3 in"));
    EXPECT_EQ(piece(1).size, inchSize(3, 3));
    EXPECT_EQ(piece(1).printSize, inchSize(3, 4));
    click("Trim to whole print");
    EXPECT_EQ(piece(1).size, inchSize(3, 4));
}

TEST_F(PiecePanelTest, TakesACustomPrintSize) {
    fill({photoSlot(inchSize(4, 6))});
    select({1});
    EXPECT_EQ(length("Print width"), nullptr);
    choose("Print size", QStringLiteral("Custom…"));
    EXPECT_EQ(undoSteps(), 0) << "asking for the fields changes nothing";
    type(length("Print width"), "4 1/2");
    EXPECT_EQ(piece(1).printSize, (Size{inches(4, 1, 2), inches(6)}));
    EXPECT_NE(length("Print width"), nullptr) << "the size is not in the catalogue";
}

TEST_F(PiecePanelTest, SaysSoWhenATypedSizeChangesThePrint) {
    const char* told = "Print size is now 5 × 7 in.";
    fill({photoSlot(inchSize(4, 6)), photoSlot(inchSize(4, 6))});
    select({1});
    type(length("Width"), "3 3/4");
    EXPECT_EQ(labelled<QLabel>(panel, told), nullptr) << "still cut from the same print";
    type(length("Width"), "4 3/4");
    ASSERT_EQ(piece(1).printSize, inchSize(5, 7));
    EXPECT_NE(labelled<QLabel>(panel, told), nullptr);
    select({2});
    EXPECT_EQ(labelled<QLabel>(panel, told), nullptr) << "it was about the other slot";
    choose("Print size", QString::fromUtf8("5 × 7 in"));
    ASSERT_EQ(piece(2).printSize, inchSize(5, 7));
    EXPECT_EQ(labelled<QLabel>(panel, told), nullptr) << "that was asked for";
}

TEST_F(PiecePanelTest, SaysHowMuchAMatLeavesWhereThatIsLessThanTheGutter) {
    const char* leaves = "The mat leaves 1/8 in to its neighbour; the gutter is 1/4 in.";
    fill({photoSlot(inchSize(4, 6)), photoSlot(inchSize(4, 6), {inches(4, 1, 4), {}})});
    select({1});
    EXPECT_EQ(labelled<QLabel>(panel, leaves), nullptr);
    click("Add mat");
    EXPECT_NE(labelled<QLabel>(panel, leaves), nullptr);
    select({1, 2});
    click("Add mat to 2 photo slots");
    EXPECT_NE(labelled<QLabel>(panel, "The mat and a neighbour overlap by 1/8 in."), nullptr);
    session.undoStack().undo();
    EXPECT_NE(labelled<QLabel>(panel, leaves), nullptr);
    select({1});
    type(length("Border"), "1/4");
    EXPECT_NE(labelled<QLabel>(panel, "The mat touches its neighbour; the gutter is 1/4 in."),
              nullptr);
}

TEST_F(PiecePanelTest, TellsWhichPhotoIsInTheSlotAndHowFinelyItPrints) {
    fill({photoSlot(inchSize(4, 6)), photoSlot(inchSize(4, 6))});
    Photo photo;
    photo.path = "/photos/beach.jpg";
    photo.content.bytes[0] = 1;
    photo.upright = {1600, 2400};
    ASSERT_TRUE(session.perform(addPhotos(session.work(), {&photo, 1}), QStringLiteral("Add")));
    PhotoEdit put;
    put.placements[PieceId{1}] = Placement{PhotoId{1}, {}, {}};
    select({1});
    const char* const told = "beach.jpg prints at 400 ppi.";
    EXPECT_EQ(labelled<QLabel>(panel, told), nullptr);
    ASSERT_TRUE(session.perform(put, QStringLiteral("Put")));
    EXPECT_NE(labelled<QLabel>(panel, told), nullptr);
    const QSignalSpy asked(&panel, &PiecePanel::cropRequested);
    for (auto* button : panel.findChildren<QPushButton*>()) {
        if (button->isVisible() && button->text().remove(u'&').startsWith(QStringLiteral("Crop"))) {
            button->click();
        }
    }
    EXPECT_EQ(asked.count(), 1);
    select({2});
    EXPECT_EQ(labelled<QLabel>(panel, told), nullptr);
}

}  // namespace
}  // namespace matwright::app
