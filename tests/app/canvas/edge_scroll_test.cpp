// SPDX-License-Identifier: MIT
#include "app/canvas/edge_scroll.h"

#include <QApplication>
#include <QDropEvent>
#include <QMimeData>
#include <QTest>

#include "app/editing/piece_mime.h"
#include "tests/app/canvas/canvas_fixture.h"

namespace matwright::app {
namespace {

TEST(EdgeScrollStepTest, NothingInsideAndFasterTheDeeperAtEveryEdge) {
    const QRectF view(0, 0, 800, 600);
    EXPECT_EQ(edgeScrollStep({400, 300}, view), QPointF());
    EXPECT_EQ(edgeScrollStep({edgeStrip, 600 - edgeStrip}, view), QPointF());
    EXPECT_GT(edgeScrollStep({edgeStrip - 1, 300}, view).x(), 0);
    EXPECT_LT(edgeScrollStep({800 - edgeStrip + 1, 300}, view).x(), 0);
    EXPECT_GT(edgeScrollStep({400, edgeStrip - 1}, view).y(), 0);
    EXPECT_LT(edgeScrollStep({400, 600 - edgeStrip + 1}, view).y(), 0);
    EXPECT_GT(edgeScrollStep({0, 300}, view).x(), edgeScrollStep({20, 300}, view).x());
    EXPECT_GT(edgeScrollStep({-20, 300}, view).x(), edgeScrollStep({0, 300}, view).x());
    EXPECT_EQ(edgeScrollStep({-5000, 300}, view), edgeScrollStep({-500, 300}, view));
    EXPECT_EQ(edgeScrollStep({-5, 5}, QRectF(0, 0, 90, 90)), QPointF());
}

class EdgeScrollTest : public CanvasFixture {
  protected:
    EdgeScrollTest() {
        layBlock({inches(5), inches(5)}, {inches(2), inches(2)});
        canvas->setZoom(2);
    }
    QPointF origin() { return page().viewport().origin(); }
    QPointF atRightEdge() { return {page().width() - 3.0, page().height() / 2.0}; }
    // Long enough for several steps where it scrolls at all.
    bool scrollsByItself() {
        const QPointF before = origin();
        return QTest::qWaitFor([&] { return (origin() - before).manhattanLength() > 40; }, 3000);
    }
    bool staysPut() {
        const QPointF before = origin();
        QTest::qWait(edgeDwellMs + 4 * edgeStepMs);
        return origin() == before;
    }
};

TEST_F(EdgeScrollTest, AMovedPieceComesAlongAndStaysUnderThePointer) {
    setSnap(false);
    const QPointF from = middleOf(PieceId{1});
    press(from);
    moveTo(from + QPointF(30, 0));
    moveTo(atRightEdge());
    ASSERT_TRUE(scrollsByItself());
    release(atRightEdge());
    EXPECT_LT((middleOf(PieceId{1}) - atRightEdge()).manhattanLength(), 2);
    EXPECT_EQ(undoSteps(), 1);
    EXPECT_TRUE(staysPut());
}

TEST_F(EdgeScrollTest, TheRubberBandKeepsItsFirstCornerOnThePage) {
    canvas->page().setViewport({page().viewport().pixelsPerTick(), {0, 0}});
    press({100, 100});
    const Point first = page().viewport().toPage(QPointF(100, 100));
    moveTo({200, 200});
    moveTo(atRightEdge());
    ASSERT_TRUE(scrollsByItself());
    ASSERT_TRUE(page().preview().band);
    EXPECT_EQ(page().preview().band->topLeft(), first);
    EXPECT_EQ(page().preview().band->right(), page().viewport().toPage(atRightEdge()).x);
    release(atRightEdge());
}

TEST_F(EdgeScrollTest, EscEndsIt) {
    const QPointF from = middleOf(PieceId{1});
    press(from);
    moveTo(from + QPointF(30, 0));
    moveTo(atRightEdge());
    ASSERT_TRUE(scrollsByItself());
    key(Qt::Key_Escape);
    EXPECT_TRUE(staysPut());
    EXPECT_EQ(undoSteps(), 0);
}

TEST_F(EdgeScrollTest, PassingThroughTheEdgeOrPanningScrollsNothing) {
    const QPointF from = middleOf(PieceId{1});
    press(from);
    moveTo(atRightEdge());
    moveTo(from + QPointF(30, 0));
    EXPECT_TRUE(staysPut());
    key(Qt::Key_Escape);
    release(from);
    press(from, {}, Qt::MiddleButton);
    moveTo(atRightEdge(), {}, Qt::MiddleButton);
    EXPECT_TRUE(staysPut());
    release(atRightEdge(), {}, Qt::MiddleButton);
}

TEST_F(EdgeScrollTest, APageThatIsAllInViewStays) {
    canvas->fitPage();
    const QPointF from = middleOf(PieceId{1});
    press(from);
    moveTo(from + QPointF(30, 0));
    moveTo(atRightEdge());
    EXPECT_TRUE(staysPut());
    key(Qt::Key_Escape);
}

TEST_F(EdgeScrollTest, WhatIsDroppedFromElsewhereScrollsToo) {
    Piece slot;
    slot.size = {inches(1), inches(1)};
    const std::unique_ptr<QMimeData> mime(toMime({slot}));
    QDragEnterEvent enter(QPoint(300, 300), Qt::CopyAction, mime.get(), Qt::LeftButton, {});
    QApplication::sendEvent(&page(), &enter);
    QDragMoveEvent move(atRightEdge().toPoint(), Qt::CopyAction, mime.get(), Qt::LeftButton, {});
    QApplication::sendEvent(&page(), &move);
    EXPECT_TRUE(scrollsByItself());
    QDragLeaveEvent leave;
    QApplication::sendEvent(&page(), &leave);
    EXPECT_TRUE(staysPut());
}

}  // namespace
}  // namespace matwright::app
