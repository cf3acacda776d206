// SPDX-License-Identifier: MIT
#include "app/canvas/drags/resize_drag.h"

#include <cmath>

#include "tests/app/canvas/canvas_fixture.h"

namespace matwright::app {
namespace {

class ResizeDragTest : public CanvasFixture {
  protected:
    void dragHandle(PieceId id, Handle handle, QPointF by, Qt::KeyboardModifiers modifiers = {}) {
        session.select({id});
        for (const HandleSpot& spot : page().handles().spots) {
            if (spot.resize == handle) {
                drag(spot.at, spot.at + by, modifiers);
                return;
            }
        }
        ADD_FAILURE() << "no such handle";
    }
    QPointF pixels(double inchesAcross, double inchesDown) {
        return QPointF(inchesAcross, inchesDown) * page().viewport().pixelsPerInch();
    }
};

TEST_F(ResizeDragTest, ACornerResizesBothSidesAsOneUndoStep) {
    const PieceId id = layBlock({inches(4), inches(4)}, {inches(2), inches(2)});
    const Sketch before = sketch();
    dragHandle(id, Handle::BottomRight, pixels(0.76, 0.49));
    EXPECT_EQ(piece(id).place, (Point{inches(4), inches(4)}));
    EXPECT_EQ(piece(id).size, (Size{inches(2, 3, 4), inches(2, 1, 2)}));
    EXPECT_EQ(undoSteps(), 1);
    session.undoStack().undo();
    EXPECT_EQ(sketch(), before);
}

TEST_F(ResizeDragTest, AnUpperLeftCornerKeepsTheOppositeOne) {
    const PieceId id = layBlock({inches(4), inches(4)}, {inches(2), inches(2)});
    dragHandle(id, Handle::TopLeft, pixels(-0.76, 0.51));
    EXPECT_EQ(trimBox(piece(id)),
              (Rect{{inches(3, 1, 4), inches(6)}, {inches(4, 1, 2), inches(6)}}));
}

TEST_F(ResizeDragTest, ASideSnapsExactlyOntoTheMargin) {
    const PieceId id = layBlock({inches(8), inches(4)}, {inches(2), inches(2)});
    dragHandle(id, Handle::Right, pixels(1.5, 0) + QPointF(3.3, 0));
    EXPECT_EQ(trimBox(piece(id)).right(), inches(11, 1, 2));
    EXPECT_EQ(piece(id).size.height, inches(2));
}

TEST_F(ResizeDragTest, AltResizesFreely) {
    const PieceId id = layBlock({inches(8), inches(4)}, {inches(2), inches(2)});
    dragHandle(id, Handle::Right, pixels(1.5, 0) + QPointF(3.3, 0), Qt::AltModifier);
    const double ppi = page().viewport().pixelsPerInch();
    EXPECT_NEAR(piece(id).size.width.toInches(), 3.5 + 3.3 / ppi, 1e-4);
}

TEST_F(ResizeDragTest, ShiftKeepsTheRatio) {
    const PieceId id = laySlot({inches(2), inches(2)}, {inches(4), inches(6)});
    dragHandle(id, Handle::BottomRight, pixels(1.0, 0.2), Qt::ShiftModifier);
    EXPECT_GT(piece(id).size.width, inches(4));
    EXPECT_NEAR(ratio(piece(id).size.height, piece(id).size.width), 1.5, 1e-6);
}

TEST_F(ResizeDragTest, CtrlPullsFromTheCentre) {
    const PieceId id = layBlock({inches(4), inches(4)}, {inches(2), inches(2)});
    dragHandle(id, Handle::Right, pixels(0.5, 0), Qt::ControlModifier);
    EXPECT_EQ(trimBox(piece(id)).centreRoundedDown(), (Point{inches(5), inches(5)}));
    EXPECT_EQ(piece(id).size, (Size{inches(3), inches(2)}));
}

TEST_F(ResizeDragTest, EscPutsItBack) {
    const PieceId id = layBlock({inches(4), inches(4)}, {inches(2), inches(2)});
    const Sketch before = sketch();
    session.select({id});
    const QPointF corner = at({inches(6), inches(6)});
    press(corner);
    moveTo(corner + QPointF(40, 40));
    EXPECT_NE(page().preview().changed.at(id), piece(id));
    key(Qt::Key_Escape);
    release(corner + QPointF(40, 40));
    EXPECT_EQ(sketch(), before);
    EXPECT_EQ(undoSteps(), 0);
}

TEST_F(ResizeDragTest, TheSizeIsReadWhileDragging) {
    const PieceId id = layBlock({inches(4), inches(4)}, {inches(2), inches(2)});
    session.select({id});
    const QPointF side = at({inches(6), inches(5)});
    press(side);
    moveTo(side + pixels(1, 0));
    EXPECT_EQ(page().preview().readout, QString::fromUtf8("3 × 2 in"));
    release(side);
}

TEST_F(ResizeDragTest, AGrownPhotoSlotPrintsOnTheNextCatalogueSize) {
    const PieceId id = laySlot({inches(2), inches(2)}, {inches(4), inches(6)});
    dragHandle(id, Handle::Right, pixels(0.5, 0));
    EXPECT_EQ(piece(id).size.width, inches(4, 1, 2));
    EXPECT_EQ(piece(id).printSize, (Size{inches(5), inches(7)}));
}

// Laws of the arithmetic for turned pieces.
TEST(PulledAlongTest, TheSideThatStaysStaysOnThePageWithinATick) {
    Piece start;
    start.place = {Length::inches(3), Length::inches(4)};
    start.size = {Length::inches(2), Length::inches(1)};
    for (const int degrees : {0, 17, 45, 90, 133, 180, 270, 301}) {
        start.rotation = Angle::degrees(degrees);
        const Piece after =
            pulledAlong({start, Handle::Right, {}, {}}, {Length::inches(1), Length()});
        EXPECT_EQ(after.size, (Size{Length::inches(3), Length::inches(1)})) << degrees;
        const auto leftMiddle = [](const Piece& piece) {
            const double half = static_cast<double>(piece.size.width.ticks()) / 2;
            const double cx = static_cast<double>(piece.place.x.ticks()) + half;
            const double cy = static_cast<double>(piece.place.y.ticks()) +
                              static_cast<double>(piece.size.height.ticks()) / 2;
            return Vertex{cx - half * piece.rotation.cosine(), cy - half * piece.rotation.sine()};
        };
        EXPECT_NEAR(leftMiddle(after).x, leftMiddle(start).x, 1.5) << degrees;
        EXPECT_NEAR(leftMiddle(after).y, leftMiddle(start).y, 1.5) << degrees;
    }
}

TEST(PulledAlongTest, WithAStepTurnedPiecesStillGetRoundSides) {
    Piece start;
    start.size = {Length::inches(2), Length::inches(1)};
    start.rotation = Angle::degrees(33);
    const Piece after = pulledAlong({start, Handle::BottomRight, {}, Length::inches(0, 1, 16)},
                                    {Length::fromTicks(123'456), Length::fromTicks(-98'765)});
    EXPECT_TRUE(after.size.width.isMultipleOf(Length::inches(0, 1, 16)));
    EXPECT_TRUE(after.size.height.isMultipleOf(Length::inches(0, 1, 16)));
}

TEST(AlongAxesTest, AQuarterTurnIsExact) {
    const Point by{Length::fromTicks(5), Length::fromTicks(7)};
    EXPECT_EQ(alongAxes(by, Angle::degrees(90)),
              (Point{Length::fromTicks(7), Length::fromTicks(-5)}));
    EXPECT_EQ(alongAxes(alongAxes(by, Angle::degrees(90)), Angle::degrees(-90)), by);
}

}  // namespace
}  // namespace matwright::app
