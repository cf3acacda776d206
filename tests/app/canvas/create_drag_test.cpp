// SPDX-License-Identifier: MIT
#include "app/canvas/drags/create_drag.h"

#include <QSignalSpy>

#include "core/sketch/soundness.h"
#include "tests/app/canvas/canvas_fixture.h"

namespace matwright::app {
namespace {

class CreateDragTest : public CanvasFixture {
  protected:
    QPointF m_from = at({inches(3), inches(3)});
    QPointF m_to = at({inches(6), inches(5)});
};

TEST_F(CreateDragTest, EveryToolDrawsItsKindAndPutsItselfDown) {
    const std::pair<Canvas::Tool, PieceKind> tools[] = {
        {Canvas::Tool::Photo, PieceKind::PhotoSlot},
        {Canvas::Tool::Strip, PieceKind::Strip},
        {Canvas::Tool::Block, PieceKind::Block},
        {Canvas::Tool::Title, PieceKind::Title},
        {Canvas::Tool::Journaling, PieceKind::Journaling},
        {Canvas::Tool::Embellishment, PieceKind::Embellishment},
    };
    for (const auto& [tool, kind] : tools) {
        session.reset(blankSketch());
        QSignalSpy changes(canvas.get(), &Canvas::toolChanged);
        canvas->setTool(tool);
        drag(m_from, m_to + QPointF(0.3, -0.4));
        ASSERT_EQ(sketch().pieces.size(), 1u);
        const auto& [id, drawn] = *sketch().pieces.begin();
        EXPECT_EQ(drawn.kind, kind);
        EXPECT_EQ(trimBox(drawn), Rect::at({inches(3), inches(3)}, {inches(3), inches(2)}));
        EXPECT_EQ(session.onlySelected(), id);
        EXPECT_EQ(undoSteps(), 1);
        EXPECT_EQ(canvas->tool(), Canvas::Tool::Select);
        EXPECT_EQ(changes.count(), 2);
        session.undoStack().undo();
        EXPECT_TRUE(sketch().pieces.empty());
    }
}

TEST_F(CreateDragTest, ADrawnPhotoSlotGetsThePrintThatHoldsIt) {
    canvas->setTool(Canvas::Tool::Photo);
    drag(m_from, at({inches(6, 3, 4), inches(8, 3, 4)}));
    EXPECT_EQ(sketch().pieces.begin()->second.printSize, (Size{inches(4), inches(6)}));
}

TEST_F(CreateDragTest, ShiftDrawsASquareAndCtrlFromTheCentre) {
    setSnap(false);
    canvas->setTool(Canvas::Tool::Block);
    drag(m_from, m_to, Qt::ShiftModifier);
    EXPECT_EQ(sketch().pieces.begin()->second.size, (Size{inches(3), inches(3)}));
    session.reset(blankSketch());
    canvas->setTool(Canvas::Tool::Block);
    drag(at({inches(6), inches(6)}), at({inches(8), inches(7)}), Qt::ControlModifier);
    EXPECT_EQ(trimBox(sketch().pieces.begin()->second),
              Rect::at({inches(4), inches(5)}, {inches(4), inches(2)}));
}

TEST_F(CreateDragTest, TheFirstAndTheLastCornerSnap) {
    canvas->setTool(Canvas::Tool::Block);
    drag(at({inches(0, 1, 2), inches(0, 1, 2)}) + QPointF(3, -2),
         at({inches(11, 1, 2), inches(11, 1, 2)}) + QPointF(-3, 4));
    EXPECT_EQ(trimBox(sketch().pieces.begin()->second),
              Rect::at({inches(0, 1, 2), inches(0, 1, 2)}, {inches(11), inches(11)}));
}

TEST_F(CreateDragTest, EscDropsThePreviewAndThenTheTool) {
    canvas->setTool(Canvas::Tool::Photo);
    press(m_from);
    moveTo(m_to);
    EXPECT_EQ(page().preview().added.size(), 1u);
    key(Qt::Key_Escape);
    EXPECT_TRUE(page().preview().isEmpty());
    release(m_to);
    EXPECT_TRUE(sketch().pieces.empty());
    EXPECT_EQ(canvas->tool(), Canvas::Tool::Photo);
    key(Qt::Key_Escape);
    EXPECT_EQ(canvas->tool(), Canvas::Tool::Select);
    EXPECT_EQ(undoSteps(), 0);
}

TEST_F(CreateDragTest, AClickLaysOneOfTheUsualSize) {
    canvas->setTool(Canvas::Tool::Photo);
    click(at({inches(6), inches(6)}));
    ASSERT_EQ(sketch().pieces.size(), 1u);
    EXPECT_EQ(trimBox(sketch().pieces.begin()->second),
              Rect::at({inches(4), inches(3)}, {inches(4), inches(6)}));
    EXPECT_EQ(undoSteps(), 1);
    EXPECT_EQ(canvas->tool(), Canvas::Tool::Select);
}

TEST_F(CreateDragTest, EnterLaysOneWithoutTheMouse) {
    canvas->setTool(Canvas::Tool::Journaling);
    key(Qt::Key_Return);
    ASSERT_EQ(sketch().pieces.size(), 1u);
    EXPECT_EQ(sketch().pieces.begin()->second.kind, PieceKind::Journaling);
    EXPECT_EQ(canvas->tool(), Canvas::Tool::Select);
}

TEST_F(CreateDragTest, TheDrawShapeIsTakenAndScaled) {
    const PolygonShape triangle{
        {{inches(1), Length()}, {inches(2), inches(2)}, {Length(), inches(2)}}};
    canvas->setTool(Canvas::Tool::Block);
    canvas->setDrawShape(triangle);
    drag(m_from, m_to);
    const Piece& drawn = sketch().pieces.begin()->second;
    ASSERT_TRUE(std::holds_alternative<PolygonShape>(drawn.shape));
    EXPECT_EQ(std::get<PolygonShape>(drawn.shape).corners,
              (std::vector<Point>{
                  {inches(1, 1, 2), Length()}, {inches(3), inches(2)}, {Length(), inches(2)}}));
}

TEST(PrototypeTest, EveryKindAndShapeIsSound) {
    const Shape shapes[] = {
        RectangleShape{}, RoundedRectangleShape{inches(0, 1, 4)}, OvalShape{},
        PolygonShape{{{inches(1), Length()}, {inches(2), inches(2)}, {Length(), inches(2)}}}};
    for (const PieceKind kind : allPieceKinds) {
        for (const Shape& shape : shapes) {
            const Piece piece = prototypeOf(kind, shape);
            EXPECT_FALSE(findFault(piece)) << kindName(kind) << " " << shape.index();
        }
    }
}

}  // namespace
}  // namespace matwright::app
