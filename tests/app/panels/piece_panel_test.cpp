// SPDX-License-Identifier: MIT
#include "app/panels/piece_panel.h"

#include <QAbstractButton>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTableView>

#include "app/panels/angle_field.h"
#include "app/panels/piece_changes.h"
#include "app/panels/text_field.h"
#include "tests/app/panels/panel_bench.h"

namespace matwright::app {
namespace {

class PiecePanelTest : public PanelBench {
  protected:
    PiecePanelTest() : panel(session, settings) { show(panel, {320, 1100}); }

    void select(std::initializer_list<std::uint32_t> ids) {
        Session::Selection selection;
        for (const std::uint32_t id : ids) {
            selection.insert(PieceId{id});
        }
        session.select(selection);
    }
    LengthField* length(const char* name) { return control<LengthField>(panel, name); }
    void click(const char* text) {
        auto* button = labelled<QPushButton>(panel, text);
        ASSERT_NE(button, nullptr) << text;
        QTest::mouseClick(button, Qt::LeftButton);
    }
    void choose(const char* combo, const QString& entry) {
        auto* box = control<QComboBox>(panel, combo);
        ASSERT_NE(box, nullptr) << combo;
        PanelBench::choose(box, box->findText(entry));
    }

    PiecePanel panel;
};

TEST_F(PiecePanelTest, SaysWhatToSelectWhenNothingIs) {
    EXPECT_NE(labelled<QLabel>(panel, "Nothing selected"), nullptr);
    EXPECT_EQ(length("Width"), nullptr);
}

TEST_F(PiecePanelTest, TypedFractionsChangeThePieceToTheTick) {
    fill({photoSlot(inchSize(4, 6))});
    select({1});
    type(length("From left edge"), "1 3/16");
    type(length("From top edge"), "33 mm");
    type(length("Width"), "3 7/8");
    type(length("Height"), "5-1/2");
    type(control<AngleField>(panel, "Rotation"), "7.5");
    EXPECT_EQ(piece(1).place, (Point{inches(1, 3, 16), Length::millimetres(33)}));
    EXPECT_EQ(piece(1).size, (Size{inches(3, 7, 8), inches(5, 1, 2)}));
    EXPECT_EQ(piece(1).printSize, inchSize(4, 6)) << "the trim is cut from the same print";
    EXPECT_EQ(piece(1).rotation, Angle::millidegrees(7500));
    EXPECT_EQ(undoSteps(), 5);
}

TEST_F(PiecePanelTest, BadTextLeavesThePieceAsItWas) {
    fill({block(inchSize(4, 4))});
    select({1});
    const Sketch before = session.sketch();
    for (const char* text : {"abc", "0", "-1", "1/0", "201"}) {
        type(length("Width"), text);
        EXPECT_EQ(session.sketch(), before) << text;
        EXPECT_TRUE(length("Width")->hasError()) << text;
    }
    EXPECT_EQ(undoSteps(), 0);
}

TEST_F(PiecePanelTest, StepsInOneBurstAreOneUndo) {
    fill({block(inchSize(4, 4))});
    select({1});
    const Sketch before = session.sketch();
    LengthField* left = length("From left edge");
    left->setFocus();
    for (int i = 0; i < 5; ++i) {
        QTest::keyClick(left->lineEdit(), Qt::Key_Up);
    }
    EXPECT_EQ(piece(1).place.x, inches(0, 5, 16));
    EXPECT_EQ(undoSteps(), 1);
    session.undoStack().undo();
    EXPECT_EQ(session.sketch(), before);
}

TEST_F(PiecePanelTest, ChangesFromOutsideRefreshTheFieldsWithoutEdits) {
    fill({block(inchSize(4, 4))});
    select({1});
    type(length("Width"), "5");
    session.undoStack().undo();
    EXPECT_EQ(length("Width")->value(), inches(4));
    EXPECT_TRUE(session.undoStack().canRedo()) << "a new edit would have dropped the redo";
    session.undoStack().redo();
    EXPECT_EQ(length("Width")->value(), inches(5));
    EXPECT_EQ(undoSteps(), 1);
}

TEST_F(PiecePanelTest, KeepsTheRatioOnRequest) {
    fill({block(inchSize(4, 6))});
    select({1});
    QTest::mouseClick(labelled<QCheckBox>(panel, "Keep ratio"), Qt::LeftButton, {}, {8, 12});
    type(length("Width"), "2");
    EXPECT_EQ(piece(1).size, inchSize(2, 3));
    type(length("Height"), "12");
    EXPECT_EQ(piece(1).size, inchSize(8, 12));
}

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

TEST_F(PiecePanelTest, ShowsThatPiecesDifferAndSetsAllAtOnce) {
    fill({photoSlot(inchSize(4, 6)), photoSlot(inchSize(3, 4))});
    session.selectAll();
    EXPECT_TRUE(length("Width")->isMixed());
    type(length("From top edge"), "2");
    EXPECT_EQ(piece(1).place.y, inches(2));
    EXPECT_EQ(piece(2).place.y, inches(2));
    choose("Print size", QStringLiteral("3 × 4 in"));
    EXPECT_EQ(piece(1).size, inchSize(3, 4));
    EXPECT_FALSE(length("Width")->isMixed());
    EXPECT_EQ(undoSteps(), 2);
}

TEST_F(PiecePanelTest, TypingInAFieldDoesNotReachThePieceSelectedNext) {
    fill({block(inchSize(4, 4)), block(inchSize(2, 2))});
    select({1});
    type(length("Width"), "abc");
    select({2});
    EXPECT_FALSE(length("Width")->hasError());
    EXPECT_EQ(length("Width")->lineEdit()->text(), QStringLiteral("2 in"));
}

TEST_F(PiecePanelTest, LocksAndThenLeavesThePieceInPlace) {
    fill({block(inchSize(4, 4)), block(inchSize(2, 2))});
    select({1});
    QTest::mouseClick(labelled<QCheckBox>(panel, "Locked in place"), Qt::LeftButton, {}, {8, 12});
    EXPECT_TRUE(piece(1).locked);
    EXPECT_FALSE(length("Width")->isEnabled());
    EXPECT_FALSE(control<QComboBox>(panel, "Shape")->isEnabled());
    select({1, 2});
    type(length("From left edge"), "3");
    EXPECT_EQ(piece(1).place.x, Length());
    EXPECT_EQ(piece(2).place.x, inches(3));
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

TEST_F(PiecePanelTest, OnADoublePageLeftCountsFromThePageThePieceLiesOn) {
    fill({block(inchSize(2, 2)), block(inchSize(2, 2))});
    select({1});
    EXPECT_EQ(labelled<QLabel>(panel, "On the left page"), nullptr) << "there is only one";
    PageSetup setup = session.sketch().page;
    setup.doublePage = true;
    setup.foldGap = inches(0, 1, 2);
    Edit edit = changePage(setup);
    Piece right = piece(2);
    right.place.x = inches(13);
    edit.pieces.emplace(PieceId{2}, right);
    ASSERT_TRUE(session.perform(edit, {}));
    select({2});
    EXPECT_NE(labelled<QLabel>(panel, "On the right page"), nullptr);
    LengthField* left = length("From left edge");
    ASSERT_NE(left, nullptr);
    EXPECT_EQ(left->value(), inches(0, 1, 2));
    EXPECT_EQ(left->lineEdit()->accessibleName(),
              QStringLiteral("From left edge, on the right page"));
    type(left, "1");
    EXPECT_EQ(piece(2).place.x, inches(13, 1, 2));
    select({1, 2});
    EXPECT_NE(labelled<QLabel>(panel, "On both pages"), nullptr);
    type(length("From left edge"), "2");
    EXPECT_EQ(piece(1).place.x, inches(2));
    EXPECT_EQ(piece(2).place.x, inches(14, 1, 2));
}

TEST_F(PiecePanelTest, AWordTypedIsOneUndo) {
    fill({block(inchSize(4, 4))});
    select({1});
    auto* name = control<TextField>(panel, "Name");
    name->setFocus();
    QTest::keyClicks(name, QStringLiteral("Sky"));
    EXPECT_EQ(piece(1).name, "Sky");
    EXPECT_EQ(undoSteps(), 1);
    session.undoStack().undo();
    EXPECT_EQ(name->text(), QString());
}

TEST_F(PiecePanelTest, ChangesTheShapeAndItsRadius) {
    fill({block(inchSize(4, 2))});
    select({1});
    choose("Shape", QStringLiteral("Rounded corners"));
    type(length("Corner radius"), "1/4");
    EXPECT_EQ(piece(1).shape, Shape(RoundedRectangleShape{inches(0, 1, 4)}));
    choose("Shape", QStringLiteral("Circle or oval"));
    EXPECT_EQ(piece(1).shape, Shape(OvalShape{}));
    EXPECT_EQ(length("Corner radius"), nullptr);
}

class PolygonPanelTest : public PiecePanelTest {
  protected:
    PolygonPanelTest() {
        fill({block(inchSize(4, 2))});
        select({1});
        choose("Shape", QStringLiteral("Polygon"));
        table = control<QTableView>(panel, "Corners");
    }
    std::vector<Point> corners() const { return std::get<PolygonShape>(piece(1).shape).corners; }
    void set(int row, int column, const char* text) {
        table->model()->setData(table->model()->index(row, column), QLatin1String(text));
    }
    QTableView* table;
};

TEST_F(PolygonPanelTest, MovesACornerByTyping) {
    ASSERT_EQ(corners().size(), 6U);
    set(0, 0, "1/2");
    EXPECT_EQ(corners()[0], (Point{inches(0, 1, 2), Length()}));
}

TEST_F(PolygonPanelTest, AddsAndRemovesCorners) {
    table->setCurrentIndex(table->model()->index(0, 0));
    click("Add corner");
    ASSERT_EQ(corners().size(), 7U) << "halfway on a straight side is a corner too";
    table->setCurrentIndex(table->model()->index(1, 0));
    click("Remove corner");
    EXPECT_EQ(corners().size(), 6U);
}

TEST_F(PolygonPanelTest, SaysWhyACornerIsRefusedAndKeepsThePolygon) {
    const std::vector<Point> before = corners();
    for (const char* text : {"5", "abc"}) {  // outside the box; no length
        set(0, 0, text);
        EXPECT_EQ(corners(), before) << text;
        bool told = false;
        for (const QLabel* label : panel.findChildren<QLabel*>()) {
            told |= label->isVisible() &&
                    (label->text().contains(QStringLiteral("corner")) ||
                     label->text().contains(QStringLiteral("abc"))) &&
                    label->text().endsWith(QLatin1Char('.'));
        }
        EXPECT_TRUE(told) << text;
    }
}

TEST_F(PiecePanelTest, TabGoesDownThePanel) {
    Piece matted = photoSlot(inchSize(4, 6));
    matted.mats = {{usualBorder, usualBorder, {}}};
    Piece polygon = block(inchSize(2, 2));
    polygon.shape = beginningShape(ShapeKind::Polygon, polygon.size);
    fill({matted, polygon});
    select({1});
    expectTabGoesDown(panel, control<QComboBox>(panel, "Print size"));
    select({2});
    expectTabGoesDown(panel, length("From left edge"));
}

TEST_F(PiecePanelTest, EveryControlIsTallEnoughAndNamed) {
    fill({photoSlot(inchSize(4, 6)), block(inchSize(2, 2))});
    for (const std::uint32_t id : {1U, 2U}) {
        select({id});
        QTest::qWait(1);
        for (const QWidget* widget : panel.findChildren<QWidget*>()) {
            const bool control = qobject_cast<const QLineEdit*>(widget) ||
                                 qobject_cast<const QAbstractButton*>(widget) ||
                                 qobject_cast<const QComboBox*>(widget);
            if (!control || !widget->isVisible()) {
                continue;
            }
            const auto* button = qobject_cast<const QAbstractButton*>(widget);
            const QString name = button ? button->text() : widget->accessibleName();
            EXPECT_FALSE(name.isEmpty()) << widget->metaObject()->className();
            EXPECT_GE(widget->height(), 24) << name.toStdString();
        }
    }
}

}  // namespace
}  // namespace matwright::app
