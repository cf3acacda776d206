// SPDX-License-Identifier: MIT
#include "app/canvas/canvas.h"

#include <QSignalSpy>

#include "app/canvas/padlock.h"
#include "core/arrange/arrange.h"
#include "core/arrange/placing.h"
#include "tests/app/canvas/canvas_fixture.h"

namespace matwright::app {
namespace {

using CanvasTest = CanvasFixture;

Piece slot4x6() {
    Piece slot;
    slot.kind = PieceKind::PhotoSlot;
    slot.size = {inches(4), inches(6)};
    slot.printSize = slot.size;
    return slot;
}

TEST_F(CanvasTest, PlaceFindsAFreePlaceSelectsAndIsOneStep) {
    canvas->place(slot4x6());
    canvas->place(slot4x6());
    ASSERT_EQ(sketch().pieces.size(), 2u);
    const auto& first = sketch().pieces.at(PieceId{1});
    const auto& second = sketch().pieces.at(PieceId{2});
    EXPECT_FALSE(trimBox(first).intersects(trimBox(second)));
    EXPECT_EQ(first.place, freePlace(blankSketch(), slot4x6()));
    EXPECT_EQ(session.onlySelected(), PieceId{2});
    EXPECT_EQ(undoSteps(), 2);
}

TEST_F(CanvasTest, PlaceSaysWhereNothingIsFreeAndLaysThePieceInTheMiddle) {
    QSignalSpy hints(canvas.get(), &Canvas::hint);
    Piece large = slot4x6();
    large.size = {inches(11), inches(11)};
    large.printSize = large.size;
    canvas->place(large);
    ASSERT_FALSE(hints.isEmpty());
    EXPECT_EQ(hints.back().front().toString(), QString());
    canvas->place(slot4x6());
    EXPECT_TRUE(hints.back().front().toString().startsWith(
        QStringLiteral("No free place: laid in the middle, over others.")));
    EXPECT_EQ(piece(session.onlySelected()).place, middlePlace(sketch(), slot4x6()));
    canvas->setTool(Canvas::Tool::Photo);
    key(Qt::Key_Return);  // with the keyboard as well
    EXPECT_EQ(canvas->tool(), Canvas::Tool::Select);
    EXPECT_TRUE(hints.back().front().toString().startsWith(QStringLiteral("No free place")));
}

TEST_F(CanvasTest, ALockedPieceShowsAPadlockWithoutBeingSelected) {
    const PieceId id = layBlock({inches(2), inches(2)}, {inches(4), inches(4)});
    const QRect corner(padlockPlace(piece(id), page().viewport()).toPoint() - QPoint(8, 10),
                       QSize(16, 18));
    const QImage open = page().grab(corner).toImage();
    EXPECT_TRUE(session.perform(lockedSet(sketch(), std::span(&id, 1), true), {}));
    EXPECT_TRUE(session.selection().empty());
    const QImage locked = page().grab(corner).toImage();
    EXPECT_NE(open, locked);
    EXPECT_EQ(locked.pixelColor(8 * locked.width() / 16, 13 * locked.height() / 18), padlockColour);
    EXPECT_TRUE(session.perform(lockedSet(sketch(), std::span(&id, 1), false), {}));
    EXPECT_EQ(page().grab(corner).toImage(), open) << "unlocking takes it away";
}

TEST_F(CanvasTest, TheHintOnAnEmptyPageGoesWithTheFirstPiece) {
    const QPoint middle = at({inches(6), inches(6)}).toPoint();
    const QRect around(middle - QPoint(200, 12), QSize(400, 24));
    const auto inked = [&] {
        const QImage image = page().grab().copy(around).toImage();
        int dark = 0;
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x) {
                dark += image.pixelColor(x, y).lightness() < 160 ? 1 : 0;
            }
        }
        return dark;
    };
    EXPECT_GT(inked(), 200);
    layBlock({inches(1), inches(1)}, {inches(1), inches(1)});
    EXPECT_EQ(inked(), 0);
}

TEST_F(CanvasTest, ThePaperIsWhiteInBothThemesAndTheSurroundingsFollowThePalette) {
    const QPoint onPaper = at({inches(1), inches(1)}).toPoint();
    const QPoint outside(8, 8);
    for (const QColor window : {QColor(240, 240, 240), QColor(40, 42, 45)}) {
        QPalette palette;
        palette.setColor(QPalette::Window, window);
        canvas->setPalette(palette);
        const QImage image = page().grab().toImage();
        EXPECT_EQ(image.pixelColor(onPaper), QColor(Qt::white));
        EXPECT_NEAR(image.pixelColor(outside).lightness(), window.lightness(), 25);
    }
}

TEST_F(CanvasTest, TheFocusIsSeenInBothThemes) {
    for (const QColor window : {QColor(240, 240, 240), QColor(40, 42, 45)}) {
        QPalette palette;
        palette.setColor(QPalette::Window, window);
        palette.setColor(QPalette::Highlight, QColor(0, 120, 160));
        canvas->setPalette(palette);
        page().setFocus();
        const QColor with = page().grab().toImage().pixelColor(1, 300);
        page().clearFocus();
        EXPECT_NE(with, page().grab().toImage().pixelColor(1, 300));
        EXPECT_EQ(with, QColor(0, 120, 160));
    }
}

TEST_F(CanvasTest, ThePointersPlaceOnThePageIsTold) {
    QSignalSpy moves(canvas.get(), &Canvas::pointerMoved);
    hover(at({inches(3), inches(7)}));
    ASSERT_EQ(moves.count(), 1);
    const auto told = moves.front().front().value<std::optional<Point>>();
    ASSERT_TRUE(told);
    EXPECT_NEAR(told->x.toInches(), 3, 1e-6);
    EXPECT_NEAR(told->y.toInches(), 7, 1e-6);
}

TEST_F(CanvasTest, LoadingAnotherSketchFitsItAndDropsADrag) {
    const PieceId id = layBlock({inches(4), inches(4)}, {inches(2), inches(2)});
    press(middleOf(id));
    moveTo(middleOf(id) + QPointF(50, 50));
    Sketch other = blankSketch();
    other.page.size = {inches(8), inches(8)};
    session.reset(other);
    EXPECT_FALSE(page().isDragging());
    release({10, 10});
    EXPECT_EQ(sketch(), other);
    EXPECT_TRUE(QRectF(page().rect()).contains(page().viewport().toView(surface(other.page))));
}

TEST_F(CanvasTest, ToolsCanBeSetAndAreTold) {
    QSignalSpy changes(canvas.get(), &Canvas::toolChanged);
    EXPECT_EQ(canvas->tool(), Canvas::Tool::Select);
    canvas->setTool(Canvas::Tool::Select);
    EXPECT_EQ(changes.count(), 0);
    canvas->setTool(Canvas::Tool::Title);
    EXPECT_EQ(canvas->tool(), Canvas::Tool::Title);
    EXPECT_EQ(changes.count(), 1);
}

TEST_F(CanvasTest, TheExtentIsOfTheSelection) {
    EXPECT_FALSE(page().extent());
    const PieceId a = layBlock({inches(1), inches(1)}, {inches(1), inches(1)});
    const PieceId b = layBlock({inches(5), inches(3)}, {inches(1), inches(1)});
    session.select({a, b});
    EXPECT_EQ(page().extent(), Rect::at({inches(1), inches(1)}, {inches(5), inches(3)}));
}

}  // namespace
}  // namespace matwright::app
