// SPDX-License-Identifier: MIT
#include "tests/app/canvas/canvas_fixture.h"

namespace matwright::app {
namespace {

using Selection = Session::Selection;

class BandDragTest : public CanvasFixture {
  protected:
    PieceId m_left = layBlock({inches(2), inches(2)}, {inches(2), inches(2)});
    PieceId m_right = layBlock({inches(6), inches(2)}, {inches(2), inches(2)});
    QPointF m_topLeft = at({inches(1), inches(1)});
};

TEST_F(BandDragTest, WhatLiesInsideIsSelectedWhileItIsDragged) {
    press(m_topLeft);
    moveTo(at({inches(5), inches(5)}));
    EXPECT_EQ(session.selection(), Selection{m_left});
    EXPECT_TRUE(page().preview().band);
    moveTo(at({inches(9), inches(5)}));
    EXPECT_EQ(session.selection(), (Selection{m_left, m_right}));
    moveTo(at({inches(7), inches(5)}));  // the right piece is only touched
    release(at({inches(7), inches(5)}));
    EXPECT_EQ(session.selection(), Selection{m_left});
    EXPECT_FALSE(page().preview().band);
    EXPECT_EQ(undoSteps(), 0);
}

TEST_F(BandDragTest, ItWorksFromAnyCorner) {
    drag(at({inches(5), inches(5)}), m_topLeft);
    EXPECT_EQ(session.selection(), Selection{m_left});
}

TEST_F(BandDragTest, ShiftAddsToWhatWasSelected) {
    session.select({m_right});
    drag(m_topLeft, at({inches(5), inches(5)}), Qt::ShiftModifier);
    EXPECT_EQ(session.selection(), (Selection{m_left, m_right}));
}

TEST_F(BandDragTest, EscGivesTheFormerSelectionBack) {
    session.select({m_right});
    press(m_topLeft);
    moveTo(at({inches(5), inches(5)}));
    key(Qt::Key_Escape);
    EXPECT_EQ(session.selection(), Selection{m_right});
    EXPECT_TRUE(page().preview().isEmpty());
    release(m_topLeft);
    EXPECT_EQ(session.selection(), Selection{m_right});
}

}  // namespace
}  // namespace matwright::app
