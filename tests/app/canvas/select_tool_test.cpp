// SPDX-License-Identifier: MIT
#include <QApplication>
#include <QSignalSpy>
#include <QTest>

#include "tests/app/canvas/canvas_fixture.h"

namespace matwright::app {
namespace {

class SelectToolTest : public CanvasFixture {
  protected:
    // Two pieces on each other, one beside them.
    PieceId m_low = layBlock({inches(2), inches(2)}, {inches(4), inches(4)});
    PieceId m_high = layBlock({inches(3), inches(3)}, {inches(2), inches(2)});
    PieceId m_beside = layBlock({inches(8), inches(2)}, {inches(2), inches(2)});
    QPointF m_onBoth = at({inches(4), inches(4)});
    QPointF m_onPaper = at({inches(1), inches(10)});
};

using Selection = Session::Selection;

TEST_F(SelectToolTest, AClickTakesTheTopmostPieceAndPaperTakesNone) {
    click(m_onBoth);
    EXPECT_EQ(session.selection(), Selection{m_high});
    click(m_onPaper);
    EXPECT_TRUE(session.selection().empty());
    EXPECT_EQ(undoSteps(), 0);
}

TEST_F(SelectToolTest, AltClickGoesBelowAndRoundAgain) {
    click(m_onBoth);
    click(m_onBoth, Qt::AltModifier);
    EXPECT_EQ(session.selection(), Selection{m_low});
    click(m_onBoth, Qt::AltModifier);
    EXPECT_EQ(session.selection(), Selection{m_high});
}

TEST_F(SelectToolTest, AnotherClickOnTheSameSpotKeepsThePiece) {
    for (int i = 0; i < 3; ++i) {
        click(m_onBoth);
        EXPECT_EQ(session.selection(), Selection{m_high});
    }
}

TEST_F(SelectToolTest, AClickTakesTheTopmostPieceEvenWhereOneBelowIsSelected) {
    session.select({m_low});
    click(m_onBoth);
    EXPECT_EQ(session.selection(), Selection{m_high});
}

TEST_F(SelectToolTest, AClickElsewhereOnTheSamePieceKeepsIt) {
    click(m_onBoth);
    click(m_onBoth + QPointF(25, 25));
    EXPECT_EQ(session.selection(), Selection{m_high});
}

TEST_F(SelectToolTest, ShiftAndCtrlClicksAddAndTakeAway) {
    for (const auto modifier : {Qt::ShiftModifier, Qt::ControlModifier}) {
        click(middleOf(m_beside));
        click(m_onBoth, modifier);
        EXPECT_EQ(session.selection(), (Selection{m_high, m_beside}));
        click(m_onBoth, modifier);
        EXPECT_EQ(session.selection(), Selection{m_beside});
        click(m_onPaper, modifier);
        EXPECT_EQ(session.selection(), Selection{m_beside});
    }
}

TEST_F(SelectToolTest, AClickInsideASelectionOfManyTakesThatPieceAlone) {
    session.selectAll();
    click(middleOf(m_beside));
    EXPECT_EQ(session.selection(), Selection{m_beside});
}

TEST_F(SelectToolTest, ASelectedPieceBelowIsDraggedThoughAnotherLiesOverIt) {
    session.select({m_low});
    drag(m_onBoth, m_onBoth + QPointF(60, 0));
    EXPECT_GT(piece(m_low).place.x, inches(2));
    EXPECT_EQ(piece(m_high).place.x, inches(3));
}

TEST_F(SelectToolTest, PressingAnotherPieceTakesAndDragsIt) {
    session.select({m_low});
    drag(middleOf(m_beside), middleOf(m_beside) + QPointF(0, 60));
    EXPECT_EQ(session.selection(), Selection{m_beside});
    EXPECT_GT(piece(m_beside).place.y, inches(2));
    EXPECT_EQ(piece(m_low).place.y, inches(2));
}

TEST_F(SelectToolTest, AShakyClickIsNotADrag) {
    press(m_onBoth);
    moveTo(m_onBoth + QPointF(2, 2));
    release(m_onBoth + QPointF(2, 2));
    EXPECT_EQ(piece(m_high).place, (Point{inches(3), inches(3)}));
    EXPECT_EQ(session.selection(), Selection{m_high});
}

TEST_F(SelectToolTest, EscWithoutADragSelectsNothing) {
    session.selectAll();
    key(Qt::Key_Escape);
    EXPECT_TRUE(session.selection().empty());
}

TEST_F(SelectToolTest, ARightClickSelectsWhatItIsOnAndAsksForTheMenu) {
    QSignalSpy wanted(canvas.get(), &Canvas::contextMenuWanted);
    const QPoint spot = middleOf(m_beside).toPoint();
    QContextMenuEvent event(QContextMenuEvent::Mouse, spot, page().mapToGlobal(spot));
    QApplication::sendEvent(&page(), &event);
    EXPECT_EQ(session.selection(), Selection{m_beside});
    ASSERT_EQ(wanted.count(), 1);
    EXPECT_EQ(wanted.front().front().toPoint(), page().mapToGlobal(spot));
}

TEST_F(SelectToolTest, TheMenuKeyAsksForTheMenuAtTheSelection) {
    session.select({m_beside});
    QSignalSpy wanted(canvas.get(), &Canvas::contextMenuWanted);
    QContextMenuEvent event(QContextMenuEvent::Keyboard, QPoint(1, 1), QPoint(1, 1));
    QApplication::sendEvent(&page(), &event);
    ASSERT_EQ(wanted.count(), 1);
    EXPECT_EQ(wanted.front().front().toPoint(), page().mapToGlobal(middleOf(m_beside).toPoint()));
}

TEST_F(SelectToolTest, ADoubleClickAsksForThePiecesFigures) {
    QSignalSpy activated(canvas.get(), &Canvas::pieceActivated);
    click(m_onBoth);
    QTest::mouseDClick(&page(), Qt::LeftButton, {}, m_onBoth.toPoint());
    EXPECT_EQ(activated.takeFirst().front().value<PieceId>(), m_high) << "not the one below";
    click(middleOf(m_beside));
    QTest::mouseDClick(&page(), Qt::LeftButton, {}, middleOf(m_beside).toPoint());
    ASSERT_EQ(activated.count(), 1);
    EXPECT_EQ(activated.front().front().value<PieceId>(), m_beside);
}

TEST_F(SelectToolTest, TheHintSaysWhatAPressWouldDo) {
    QSignalSpy hints(canvas.get(), &Canvas::hint);
    hover(middleOf(m_beside));
    ASSERT_FALSE(hints.isEmpty());
    EXPECT_TRUE(hints.back().front().toString().contains("drag to move"));
    session.select({m_beside});
    hover(at({inches(10), inches(4)}));
    EXPECT_TRUE(hints.back().front().toString().contains("Shift: keep the ratio"));
}

}  // namespace
}  // namespace matwright::app
