// SPDX-License-Identifier: MIT
#include "app/canvas/drags/rotate_drag.h"

#include <cmath>
#include <numbers>

#include "tests/app/canvas/canvas_fixture.h"

namespace matwright::app {
namespace {

class RotateDragTest : public CanvasFixture {
  protected:
    PieceId m_id = layBlock({inches(4), inches(4)}, {inches(4), inches(2)});

    QPointF turnSpot() { return page().handles().spots.back().at; }
    // Where the handle is when its piece is turned by so much, clockwise.
    QPointF turnedSpot(double degrees) {
        const QPointF centre = middleOf(m_id);
        const QPointF arm = turnSpot() - centre;
        const double a = degrees * std::numbers::pi / 180;
        return centre + QPointF(arm.x() * std::cos(a) - arm.y() * std::sin(a),
                                arm.x() * std::sin(a) + arm.y() * std::cos(a));
    }
};

TEST_F(RotateDragTest, TheHandleTurnsThePieceByWholeDegreesAsOneUndoStep) {
    session.select({m_id});
    drag(turnSpot(), turnedSpot(30.3));
    EXPECT_EQ(piece(m_id).rotation, Angle::degrees(30));
    EXPECT_EQ(undoSteps(), 1);
    session.undoStack().undo();
    EXPECT_TRUE(piece(m_id).rotation.isZero());
}

TEST_F(RotateDragTest, AQuarterTurnHoldsThePiece) {
    session.select({m_id});
    drag(turnSpot(), turnedSpot(88.2));
    EXPECT_EQ(piece(m_id).rotation, Angle::degrees(90));
}

TEST_F(RotateDragTest, ShiftTurnsBy15DegreesAndAltFreely) {
    session.select({m_id});
    drag(turnSpot(), turnedSpot(50), Qt::ShiftModifier);
    EXPECT_EQ(piece(m_id).rotation, Angle::degrees(45));
    session.undoStack().undo();
    const QPointF from = turnSpot();
    const QPointF to = turnedSpot(33.4);
    press(from);
    moveTo(to, Qt::AltModifier);
    release(to, Qt::AltModifier);
    EXPECT_NEAR(piece(m_id).rotation.toDegrees(), 33.4, 0.01);
}

TEST_F(RotateDragTest, EscPutsItBack) {
    session.select({m_id});
    const Sketch before = sketch();
    const QPointF from = turnSpot();
    const QPointF to = turnedSpot(30);
    press(from);
    moveTo(to);
    EXPECT_EQ(page().preview().readout, QString::fromUtf8("30° to the right"));
    key(Qt::Key_Escape);
    release(to);
    EXPECT_EQ(sketch(), before);
    EXPECT_EQ(undoSteps(), 0);
}

TEST_F(RotateDragTest, SeveralPiecesTurnAboutTheirCommonCentre) {
    const PieceId other = layBlock({inches(4), inches(6)}, {inches(4), inches(2)});
    session.selectAll();
    const QPointF centre = at({inches(6), inches(6)});
    const QPointF arm = turnSpot() - centre;
    drag(turnSpot(), centre + QPointF(-arm.y(), arm.x()));
    EXPECT_EQ(piece(m_id).rotation, Angle::degrees(90));
    EXPECT_EQ(piece(other).rotation, Angle::degrees(90));
    EXPECT_EQ(trimBounds(piece(m_id)).centreRoundedDown(), (Point{inches(7), inches(6)}));
    EXPECT_EQ(trimBounds(piece(other)).centreRoundedDown(), (Point{inches(5), inches(6)}));
    EXPECT_EQ(undoSteps(), 1);
}

TEST(TurnedTogetherTest, FourQuarterTurnsLeadBack) {
    Piece a;
    a.place = {Length::inches(1), Length::inches(1)};
    a.size = {Length::inches(2), Length::inches(4)};
    Piece b = a;
    b.place.x = Length::inches(6);
    const std::map<PieceId, Piece> start{{PieceId{1}, a}, {PieceId{2}, b}};
    auto now = start;
    for (int i = 0; i < 4; ++i) {
        now = turnedTogether(now, Angle::degrees(90));
    }
    EXPECT_EQ(now, start);
}

TEST_F(RotateDragTest, ATurnToTheLeftIsReadAsThat) {
    session.select({m_id});
    const QPointF to = turnedSpot(-6);
    press(turnSpot());
    moveTo(to);
    EXPECT_EQ(page().preview().readout, QString::fromUtf8("6° to the left"));
    release(to);
    EXPECT_EQ(session.undoStack().undoText(), QStringLiteral("Turn block"));
}

}  // namespace
}  // namespace matwright::app
