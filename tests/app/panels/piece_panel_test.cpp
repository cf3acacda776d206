// SPDX-License-Identifier: MIT
#include <QAbstractButton>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>

#include "app/panels/angle_field.h"
#include "app/panels/piece_changes.h"
#include "app/panels/text_field.h"
#include "tests/app/panels/piece_panel_bench.h"

namespace matwright::app {
namespace {

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
