// SPDX-License-Identifier: MIT
#include "app/canvas/drags/move_drag.h"

#include "tests/app/canvas/canvas_fixture.h"

namespace matwright::app {
namespace {

using MoveDragTest = CanvasFixture;

TEST_F(MoveDragTest, ADragMovesThePieceAsOneUndoStep) {
    setSnap(false);
    const PieceId id = layBlock({inches(4), inches(4)}, {inches(2), inches(2)});
    const Sketch before = sketch();
    drag(middleOf(id), middleOf(id) + QPointF(100, 50));
    const double ppi = page().viewport().pixelsPerInch();
    EXPECT_NEAR(piece(id).place.x.toInches(), 4 + 100 / ppi, 1e-5);
    EXPECT_NEAR(piece(id).place.y.toInches(), 4 + 50 / ppi, 1e-5);
    EXPECT_EQ(undoSteps(), 1);
    session.undoStack().undo();
    EXPECT_EQ(sketch(), before);
    session.undoStack().redo();
    EXPECT_NE(sketch(), before);
}

TEST_F(MoveDragTest, PartsOfAPixelCount) {
    setSnap(false);
    const PieceId id = layBlock({inches(4), inches(4)}, {inches(2), inches(2)});
    const QPointF from = middleOf(id);
    drag(from, from + QPointF(20.25, 0.5));
    const double ppi = page().viewport().pixelsPerInch();
    EXPECT_NEAR((piece(id).place.x.toInches() - 4) * ppi, 20.25, 1e-3);
    EXPECT_NEAR((piece(id).place.y.toInches() - 4) * ppi, 0.5, 1e-3);
}

TEST_F(MoveDragTest, APieceLandsExactlyOnTheMargin) {
    const PieceId id = layBlock({inches(4), inches(4)}, {inches(2), inches(2)});
    const QPointF from = middleOf(id);
    drag(from, from + at({inches(0, 1, 2), inches(0, 1, 2)}) - at({inches(4), inches(4)}) +
                   QPointF(2.7, -3.1));
    EXPECT_EQ(piece(id).place, (Point{inches(0, 1, 2), inches(0, 1, 2)}));
}

TEST_F(MoveDragTest, TheSnapIsSaidWhileItHolds) {
    const PieceId id = layBlock({inches(4), inches(4)}, {inches(2), inches(2)});
    const QPointF from = middleOf(id);
    press(from);
    moveTo(from + at({inches(0, 1, 2), inches(3)}) - at({inches(4), inches(4)}));
    ASSERT_TRUE(page().preview().snap.horizontal);
    const QString why = QString::fromStdString(page().preview().snap.horizontal->why);
    EXPECT_TRUE(page().overlay().chipTexts().contains(why)) << qPrintable(why);
    EXPECT_TRUE(page().overlay().chipTexts().contains("left 1/2 · top 3"));
    for (const QRectF& chip : page().overlay().chipRects()) {
        EXPECT_TRUE(QRectF(page().rect()).contains(chip));
    }
    release(from);
    EXPECT_TRUE(page().overlay().chipTexts().isEmpty());
}

TEST_F(MoveDragTest, AltSuspendsSnapping) {
    const PieceId id = layBlock({inches(4), inches(4)}, {inches(2), inches(2)});
    const QPointF from = middleOf(id);
    const QPointF by =
        at({inches(0, 1, 2), inches(0, 1, 2)}) - at({inches(4), inches(4)}) + QPointF(2.7, -3.1);
    hover(from);
    press(from);
    moveTo(from + by / 2, Qt::AltModifier);
    moveTo(from + by, Qt::AltModifier);
    release(from + by, Qt::AltModifier);
    const double ppi = page().viewport().pixelsPerInch();
    EXPECT_NEAR(piece(id).place.x.toInches(), 0.5 + 2.7 / ppi, 1e-4);
    EXPECT_NEAR(piece(id).place.y.toInches(), 0.5 - 3.1 / ppi, 1e-4);
}

TEST_F(MoveDragTest, WhereNothingHoldsItAPieceStandsOnTheScale) {
    Settings value = settings->value();
    value.snap = {};
    for (bool* rule : {&value.snap.pageEdges, &value.snap.margins, &value.snap.pageCentres,
                       &value.snap.neighbourEdges, &value.snap.neighbourCentres, &value.snap.gutter,
                       &value.snap.equalGaps, &value.snap.matEdges}) {
        *rule = false;
    }
    settings->set(value);
    const PieceId id = layBlock({inches(4), inches(4)}, {inches(2), inches(2)});
    const QPointF from = middleOf(id);
    drag(from, from + QPointF(33.3, 71.9));
    EXPECT_TRUE(piece(id).place.x.isMultipleOf(inches(0, 1, 16)));
    EXPECT_TRUE(piece(id).place.y.isMultipleOf(inches(0, 1, 16)));
    EXPECT_GT(piece(id).place.x, inches(4, 1, 4));
}

TEST_F(MoveDragTest, ShiftMovesStraight) {
    setSnap(false);
    const PieceId id = layBlock({inches(4), inches(4)}, {inches(2), inches(2)});
    const QPointF from = middleOf(id);
    hover(from);
    press(from);
    moveTo(from + QPointF(80, 30), Qt::ShiftModifier);
    release(from + QPointF(80, 30), Qt::ShiftModifier);
    EXPECT_EQ(piece(id).place.y, inches(4));
    EXPECT_GT(piece(id).place.x, inches(5));
}

TEST_F(MoveDragTest, EscPutsItBackWithoutAnUndoStep) {
    const PieceId id = layBlock({inches(4), inches(4)}, {inches(2), inches(2)});
    const Sketch before = sketch();
    const QPointF from = middleOf(id);
    press(from);
    moveTo(from + QPointF(60, 60));
    EXPECT_FALSE(page().preview().changed.empty());
    key(Qt::Key_Escape);
    EXPECT_TRUE(page().preview().isEmpty());
    moveTo(from + QPointF(90, 60));
    release(from + QPointF(90, 60));
    EXPECT_EQ(sketch(), before);
    EXPECT_EQ(undoSteps(), 0);
    EXPECT_TRUE(session.isClean());
}

TEST_F(MoveDragTest, ComingBackToTheStartIsNoEdit) {
    const PieceId id = layBlock({inches(4), inches(4)}, {inches(2), inches(2)});
    const QPointF from = middleOf(id);
    press(from);
    moveTo(from + QPointF(60, 60));
    moveTo(from);
    release(from);
    EXPECT_EQ(undoSteps(), 0);
    EXPECT_EQ(piece(id).place, (Point{inches(4), inches(4)}));
}

TEST_F(MoveDragTest, SeveralPiecesMoveTogetherAndLockedOnesStay) {
    setSnap(false);
    const PieceId a = layBlock({inches(2), inches(2)}, {inches(2), inches(2)});
    const PieceId b = layBlock({inches(6), inches(2)}, {inches(2), inches(2)});
    Piece fixed;
    fixed.place = {inches(2), inches(6)};
    fixed.size = {inches(2), inches(2)};
    fixed.locked = true;
    const PieceId c = lay(fixed);
    session.selectAll();
    const QPointF from = middleOf(a);
    drag(from, from + QPointF(40, 10));
    EXPECT_EQ(piece(b).place - piece(a).place, (Point{inches(4), Length()}));
    EXPECT_GT(piece(a).place.x, inches(2));
    EXPECT_EQ(piece(c), fixed);
    EXPECT_EQ(undoSteps(), 1);
}

TEST_F(MoveDragTest, ALockedPieceCanBeSelectedButNotMoved) {
    Piece fixed;
    fixed.place = {inches(2), inches(6)};
    fixed.size = {inches(2), inches(2)};
    fixed.locked = true;
    const PieceId id = lay(fixed);
    click(middleOf(id));
    EXPECT_EQ(session.onlySelected(), id);
    drag(middleOf(id), middleOf(id) + QPointF(50, 0));
    EXPECT_EQ(piece(id), fixed);
    EXPECT_EQ(undoSteps(), 0);
}

TEST_F(MoveDragTest, AnUndoDuringADragEndsIt) {
    const PieceId id = layBlock({inches(4), inches(4)}, {inches(2), inches(2)});
    drag(middleOf(id), middleOf(id) + QPointF(60, 0));
    const QPointF from = middleOf(id);
    press(from);
    moveTo(from + QPointF(0, 60));
    session.undoStack().undo();
    EXPECT_FALSE(page().isDragging());
    release(from + QPointF(0, 60));
    EXPECT_EQ(piece(id).place, (Point{inches(4), inches(4)}));
}

TEST_F(MoveDragTest, GapsToTheNeighboursAreMeasuredFromMatToMat) {
    const PieceId id = laySlot({inches(2), inches(2)}, {inches(3), inches(4)}, 1);
    layBlock({inches(7), inches(2)}, {inches(3), inches(4)});
    const QPointF from = middleOf(id);
    press(from);
    moveTo(from + at({inches(3), inches(2)}) - at({inches(2), inches(2)}));
    // Trim to trim is 1 in; the mat takes 1/8 of it.
    EXPECT_TRUE(page().overlay().chipTexts().contains("7/8"))
        << qPrintable(page().overlay().chipTexts().join("; "));
    release(from);
}

TEST(PlaceReadoutTest, ADoublePageIsMeasuredFromThePageThePieceLiesOn) {
    PageSetup setup;
    setup.doublePage = true;
    setup.foldGap = inches(0, 1, 2);
    const auto read = [&setup](Length left) {
        const Rect bounds = Rect::at({left, inches(2)}, {inches(1), inches(1)});
        return placeReadout(bounds, setup, Scale::SixteenthInch);
    };
    EXPECT_EQ(read(inches(1, 1, 2)), QString::fromUtf8("left page, left 1 1/2 · top 2"));
    EXPECT_EQ(read(inches(12, 1, 4)), QString::fromUtf8("left page, left 12 1/4 · top 2"));
    EXPECT_EQ(read(inches(12, 1, 2)), QString::fromUtf8("right page, left 0 · top 2"));
    setup.doublePage = false;
    EXPECT_EQ(read(inches(1, 1, 2)), QString::fromUtf8("left 1 1/2 · top 2"));
}

}  // namespace
}  // namespace matwright::app
