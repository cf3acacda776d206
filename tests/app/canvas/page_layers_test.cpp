// SPDX-License-Identifier: MIT
#include "app/canvas/page_layers.h"

#include <QApplication>
#include <QImage>
#include <QPainter>

#include "tests/app/canvas/canvas_fixture.h"

namespace matwright::app {
namespace {

int distance(QColor a, QColor b) {
    return std::abs(a.red() - b.red()) + std::abs(a.green() - b.green()) +
           std::abs(a.blue() - b.blue());
}

class PageLayersTest : public CanvasFixture {
  protected:
    PageLayersTest() {
        Sketch crowded = blankSketch();
        std::vector<Piece> pieces;
        for (int i = 0; i < 40; ++i) {
            Piece block;
            block.place = {inches(i % 8), inches(i / 8)};
            block.size = {inches(1, 1, 2), inches(1, 1, 4)};
            block.rotation = Angle::degrees(i % 3 == 0 ? 10 : 0);
            pieces.push_back(block);
        }
        EXPECT_TRUE(apply(crowded, addPieces(crowded, pieces)));
        session.reset(crowded);
        shown();
    }

    QImage shown() { return page().grab().toImage(); }
    // The same view painted from nothing.
    QImage afresh() {
        PageView other(session, *settings);
        other.setFocusPolicy(Qt::NoFocus);
        other.resize(page().size());
        other.setViewport(page().viewport());
        return other.grab().toImage();
    }
    void expectSameAsAfresh(const char* when) {
        page().clearFocus();
        session.clearSelection();
        QEvent leave(QEvent::Leave);
        QApplication::sendEvent(&page(), &leave);
        const QImage now = shown();
        const QImage wanted = afresh();
        ASSERT_EQ(now.size(), wanted.size());
        QRect differing;
        for (int y = 0; y < now.height(); ++y) {
            for (int x = 0; x < now.width(); ++x) {
                if (distance(now.pixelColor(x, y), wanted.pixelColor(x, y)) > 24) {
                    differing |= QRect(x, y, 1, 1);
                }
            }
        }
        EXPECT_TRUE(differing.isEmpty())
            << when << ": " << differing.x() << ", " << differing.y() << ", " << differing.width()
            << " x " << differing.height();
    }
};

TEST_F(PageLayersTest, ADragPaintsThePageNeitherAnewNorInPart) {
    session.select({PieceId{20}});
    shown();
    const QPointF from = middleOf(PieceId{20});
    press(from);
    moveTo(from + QPointF(10, 0));
    shown();  // the layers of the drag are made once
    const int rebuilds = page().layers().rebuilds();
    const int mends = page().layers().mends();
    for (int i = 0; i < 20; ++i) {
        moveTo(from + QPointF(10 + 5 * i, 3 * i));
        shown();
    }
    EXPECT_EQ(page().layers().rebuilds(), rebuilds);
    EXPECT_EQ(page().layers().mends(), mends);
    release(from + QPointF(105, 57));
    shown();
    EXPECT_EQ(page().layers().rebuilds(), rebuilds);
    EXPECT_EQ(page().layers().mends(), mends + 1);
}

TEST_F(PageLayersTest, HoveringAndSelectingPaintNothingAnew) {
    const int rebuilds = page().layers().rebuilds();
    const int mends = page().layers().mends();
    for (const auto& entry : sketch().pieces) {
        hover(middleOf(entry.first));
        session.select({entry.first});
        shown();
    }
    EXPECT_EQ(page().layers().rebuilds(), rebuilds);
    EXPECT_EQ(page().layers().mends(), mends);
}

TEST_F(PageLayersTest, ScrollingShiftsThePicture) {
    canvas->setZoom(2);
    shown();
    const int rebuilds = page().layers().rebuilds();
    for (const QPointF by : {QPointF(-31, 0), QPointF(12, -40), QPointF(-5, 77)}) {
        page().setViewport(page().viewport().scrolled(by));
        shown();
    }
    EXPECT_EQ(page().layers().rebuilds(), rebuilds);
    expectSameAsAfresh("after scrolling");
}

TEST_F(PageLayersTest, WhatAnEditTouchesIsMendedAndNothingIsLeftBehind) {
    drag(middleOf(PieceId{20}), middleOf(PieceId{20}) + QPointF(83, 41));
    expectSameAsAfresh("after a drag");
    session.undoStack().undo();
    expectSameAsAfresh("after undo");
    session.select({PieceId{7}});
    key(Qt::Key_Delete);
    expectSameAsAfresh("after deleting");
    Edit reordered;
    reordered.order = sketch().order;
    std::swap(reordered.order->front(), reordered.order->back());
    ASSERT_TRUE(session.perform(reordered, "order"));
    expectSameAsAfresh("after a change of order");
    PageSetup wider = sketch().page;
    wider.size.width = inches(11);
    ASSERT_TRUE(session.perform(changePage(wider), "page"));
    expectSameAsAfresh("after a change of page");
}

TEST_F(PageLayersTest, AWholeDragShowsWhatTheEditWillShow) {
    // A piece in the middle of the order is dragged under those above it.
    session.select({PieceId{10}});
    const QPointF from = middleOf(PieceId{10});
    press(from);
    moveTo(from + QPointF(60, 30));
    const QRect inner = paintedRect(page().preview().changed.at(PieceId{10}), page().viewport());
    const QPoint probe = at(trimBounds(piece(PieceId{11})).centreRoundedDown()).toPoint();
    ASSERT_TRUE(inner.contains(probe));
    const QColor during = shown().pixelColor(probe);
    release(from + QPointF(60, 30));
    session.clearSelection();
    EXPECT_EQ(shown().pixelColor(probe), during);
}

class RunsTest : public CanvasFixture {
  protected:
    // Blocks on top of each other, each a little to the right of the one below, with the kinds (and
    // so the fills) told apart.
    void layStack(int count) {
        for (int i = 0; i < count; ++i) {
            Piece piece;
            piece.kind = allPieceKinds[1 + i % 5];
            piece.place = {inches(1) + inches(0, 1, 4) * i, inches(2)};
            piece.size = {inches(4), inches(4)};
            lay(piece);
        }
    }
    QImage shown() { return page().grab().toImage(); }
    // Presses on the topmost of the pieces; all of them are selected.
    void startDrag(const Session::Selection& pieces, QPointF by) {
        session.select(pieces);
        const Rect box = trimBounds(piece(*pieces.rbegin()));
        const QPointF from = at(box.bottomRight()) - QPointF(12, 12);
        press(from);
        moveTo(from + by);
        m_end = from + by;
    }
    void expectSameAfterTheDrop() {
        const QImage during = shown();
        release(m_end);
        session.clearSelection();
        const QImage after = shown();
        // Away from edges and words, which the drag may show half a pixel off.
        for (int i = 0; i < 10; ++i) {
            const QPoint probe =
                at({inches(1, 1, 8) + inches(0, 1, 4) * i, inches(4, 3, 4)}).toPoint();
            // What lies over the drag is blended in once more: a step of a channel off at most.
            EXPECT_LE(distance(during.pixelColor(probe), after.pixelColor(probe)), 3) << i;
        }
    }

  private:
    QPointF m_end;
};

TEST_F(RunsTest, AStillPieceBetweenTwoDraggedOnesStaysBetweenThem) {
    layStack(3);
    startDrag({PieceId{1}, PieceId{3}}, {20, 5});
    shown();
    ASSERT_EQ(page().layers().runs().size(), 2u);
    EXPECT_EQ(page().layers().runs()[0].above, std::set{PieceId{2}});
    EXPECT_TRUE(page().layers().runs()[1].above.empty());
    expectSameAfterTheDrop();
}

TEST_F(RunsTest, PiecesWithNothingBetweenAreOneRunWithTheirNumbers) {
    layStack(5);
    startDrag({PieceId{2}, PieceId{3}}, {20, 5});
    shown();
    ASSERT_EQ(page().layers().runs().size(), 1u);
    const PageLayers::Run& run = page().layers().runs().front();
    EXPECT_EQ(run.lifted, (std::vector{PieceId{2}, PieceId{3}}));
    EXPECT_EQ(run.numbers, (std::vector<std::size_t>{2, 3}));
    EXPECT_EQ(run.above, (std::set{PieceId{4}, PieceId{5}}));
    expectSameAfterTheDrop();
}

TEST_F(RunsTest, OfManyRunsTheLowestAreTakenTogether) {
    layStack(14);
    startDrag(
        {PieceId{1}, PieceId{3}, PieceId{5}, PieceId{7}, PieceId{9}, PieceId{11}, PieceId{13}},
        {20, 5});
    shown();
    ASSERT_EQ(page().layers().runs().size(), PageLayers::maxRuns);
    EXPECT_EQ(page().layers().runs().front().lifted,
              (std::vector{PieceId{1}, PieceId{3}, PieceId{5}}));
    EXPECT_EQ(page().layers().runs().front().numbers, (std::vector<std::size_t>{1, 3, 5}));
    EXPECT_EQ(page().layers().runs().back().above, std::set{PieceId{14}});
    key(Qt::Key_Escape);
}

TEST_F(PageLayersTest, AnotherScaleOrFontSetsTheWordsAnew) {
    canvas->setZoom(2);  // so that there is room for the sizes
    const QImage before = shown();
    const int rebuilds = page().layers().rebuilds();
    setScale(Scale::WholeMillimetre);
    const QImage millimetres = shown();
    EXPECT_EQ(page().layers().rebuilds(), rebuilds + 1);
    EXPECT_NE(millimetres, before);
    QFont larger = page().font();
    larger.setPointSizeF(larger.pointSizeF() + 6);
    page().setFont(larger);
    EXPECT_NE(shown(), millimetres);
    EXPECT_EQ(page().layers().rebuilds(), rebuilds + 2);
}

TEST_F(PageLayersTest, TheMitresOfAPolygonsMatAreMendedToo) {
    Piece slot;
    slot.kind = PieceKind::PhotoSlot;
    slot.place = {inches(4), inches(8)};
    slot.size = {inches(3), inches(2)};
    slot.printSize = slot.size;
    slot.shape =
        PolygonShape{{{Length(), Length()}, {inches(3), inches(1)}, {Length(), inches(2)}}};
    slot.mats.push_back({inches(0, 1, 2), {}, ""});
    ASSERT_TRUE(session.perform(addPieces(sketch(), std::span(&slot, 1)), {}));
    expectSameAsAfresh("after laying it");
    const PieceId id = sketch().order.back();
    Piece moved = slot;
    moved.place.x = inches(1);
    ASSERT_TRUE(session.perform(changePiece(id, moved), {}));
    expectSameAsAfresh("after moving it");
    ASSERT_TRUE(session.perform(removePieces(sketch(), std::span(&id, 1)), {}));
    expectSameAsAfresh("after removing it");
}

}  // namespace
}  // namespace matwright::app
