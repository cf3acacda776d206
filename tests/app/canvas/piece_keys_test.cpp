// SPDX-License-Identifier: MIT
#include "app/canvas/piece_keys.h"

#include <QApplication>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>

#include "tests/app/canvas/canvas_fixture.h"

namespace matwright::app {
namespace {

class PieceKeysTest : public CanvasFixture {
  protected:
    PieceId m_id = layBlock({inches(4), inches(4)}, {inches(2), inches(3)});
    PieceKeysTest() { session.select({m_id}); }
};

TEST_F(PieceKeysTest, ArrowsMoveByAStepOfTheScale) {
    key(Qt::Key_Right);
    key(Qt::Key_Down);
    key(Qt::Key_Down);
    EXPECT_EQ(piece(m_id).place, (Point{inches(4, 1, 16), inches(4, 1, 8)}));
    key(Qt::Key_Left);
    key(Qt::Key_Up);
    EXPECT_EQ(piece(m_id).place, (Point{inches(4), inches(4, 1, 16)}));
}

TEST_F(PieceKeysTest, ShiftGoesFarAndCtrlFine) {
    key(Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_EQ(piece(m_id).place.x, inches(4, 1, 4));
    key(Qt::Key_Left, Qt::ControlModifier);
    EXPECT_EQ(piece(m_id).place.x, inches(4, 15, 64));
}

TEST(NudgeByTest, StepsInBothUnits) {
    const Length at = Length::inches(3);
    EXPECT_EQ(nudgeBy(at, 1, Scale::EighthInch, {}), Length::inches(0, 1, 8));
    EXPECT_EQ(nudgeBy(at, -1, Scale::EighthInch, Qt::ShiftModifier), -Length::inches(0, 1, 4));
    EXPECT_EQ(nudgeBy(at, 1, Scale::WholeMillimetre, {}), Length::millimetres(1));
    EXPECT_EQ(nudgeBy(at, 1, Scale::WholeMillimetre, Qt::ShiftModifier), Length::millimetres(5));
    EXPECT_EQ(nudgeBy(at, -1, Scale::HalfMillimetre, Qt::ControlModifier),
              -Length::hundredthMillimetres(10));
    EXPECT_TRUE(nudgeBy(at, 0, Scale::EighthInch, {}).isZero());
}

TEST(NudgeByTest, FourFineStepsAreExactlyASixteenthEitherWayAndAroundZero) {
    for (const int direction : {1, -1}) {
        for (const Length start : {Length::inches(3), Length::inches(0, 1, 32), Length()}) {
            Length at = start;
            for (int i = 0; i < 4; ++i) {
                at += nudgeBy(at, direction, Scale::SixteenthInch, Qt::ControlModifier);
            }
            EXPECT_EQ(at, start + Length::inches(0, 1, 16) * direction);
        }
    }
}

TEST_F(PieceKeysTest, ABurstOfNudgesIsOneUndoStep) {
    const Sketch before = sketch();
    for (int i = 0; i < 5; ++i) {
        key(Qt::Key_Right);
    }
    key(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(undoSteps(), 1);
    session.undoStack().undo();
    EXPECT_EQ(sketch(), before);
}

TEST_F(PieceKeysTest, AnotherSelectionOrAnotherKindOfChangeStartsAnotherStep) {
    const PieceId other = layBlock({inches(8), inches(8)}, {inches(1), inches(1)});
    session.select({m_id});
    key(Qt::Key_Right);
    session.select({other});
    key(Qt::Key_Right);
    EXPECT_EQ(undoSteps(), 2);
    key(Qt::Key_Right, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(undoSteps(), 3);
    key(Qt::Key_BracketRight);
    EXPECT_EQ(undoSteps(), 4);
}

TEST_F(PieceKeysTest, NudgingBackToTheStartLeavesNoStep) {
    key(Qt::Key_Right);
    key(Qt::Key_Left);
    EXPECT_EQ(undoSteps(), 0);
}

TEST_F(PieceKeysTest, CtrlShiftArrowsResizeAndKeepThePlace) {
    key(Qt::Key_Right, Qt::ControlModifier | Qt::ShiftModifier);
    key(Qt::Key_Down, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(piece(m_id).size, (Size{inches(2, 1, 16), inches(3, 1, 16)}));
    key(Qt::Key_Left, Qt::ControlModifier | Qt::ShiftModifier);
    key(Qt::Key_Left, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(piece(m_id).size.width, inches(1, 15, 16));
    EXPECT_EQ(piece(m_id).place, (Point{inches(4), inches(4)}));
    EXPECT_EQ(undoSteps(), 1);
}

TEST_F(PieceKeysTest, BracketsTurnByOneDegreeAndBracesBy15) {
    key(Qt::Key_BracketRight);
    EXPECT_EQ(piece(m_id).rotation, Angle::degrees(1));
    key(Qt::Key_BracketLeft);
    key(Qt::Key_BracketLeft);
    EXPECT_EQ(piece(m_id).rotation, Angle::degrees(359));
    key(Qt::Key_BraceRight, Qt::ShiftModifier);
    EXPECT_EQ(piece(m_id).rotation, Angle::degrees(14));
    EXPECT_EQ(undoSteps(), 1);
}

TEST_F(PieceKeysTest, DeleteRemovesTheSelectionButNotWhatIsLocked) {
    Piece fixed;
    fixed.place = {inches(1), inches(1)};
    fixed.size = {inches(1), inches(1)};
    fixed.locked = true;
    const PieceId locked = lay(fixed);
    session.selectAll();
    QSignalSpy hints(canvas.get(), &Canvas::hint);
    key(Qt::Key_Delete);
    ASSERT_FALSE(hints.isEmpty());
    EXPECT_EQ(sketch().order, std::vector{locked});
    EXPECT_EQ(session.undoStack().undoText(), QStringLiteral("Delete block"));
    EXPECT_TRUE(hints.back().front().toString().startsWith(QStringLiteral("Locked pieces stay.")));
    EXPECT_EQ(undoSteps(), 1);
    key(Qt::Key_Right);  // only the locked one is left selected: nothing to move
    EXPECT_EQ(undoSteps(), 1);
}

TEST_F(PieceKeysTest, ArrowsScrollWhereNothingIsSelectedAndAlwaysWithAlt) {
    canvas->setZoom(4);
    session.clearSelection();
    const QPointF start = page().viewport().origin();
    key(Qt::Key_Right);
    EXPECT_LT(page().viewport().origin().x(), start.x());
    key(Qt::Key_Left);
    EXPECT_EQ(page().viewport().origin(), start);
    session.select({m_id});
    key(Qt::Key_Down, Qt::AltModifier);
    EXPECT_LT(page().viewport().origin().y(), start.y());
    EXPECT_EQ(undoSteps(), 0);
}

TEST_F(PieceKeysTest, ThePageKeysScrollByAWindowsHeight) {
    canvas->setZoom(4);
    const double start = page().viewport().origin().y();
    key(Qt::Key_PageDown);
    EXPECT_LT(page().viewport().origin().y(), start - page().height() / 2.0);
    key(Qt::Key_PageUp);
    EXPECT_EQ(page().viewport().origin().y(), start);
}

TEST_F(PieceKeysTest, KeysWithNothingSelectedChangeNothing) {
    session.clearSelection();
    key(Qt::Key_Right);
    key(Qt::Key_BracketLeft);
    key(Qt::Key_Delete);
    EXPECT_EQ(undoSteps(), 0);
}

class TabTest : public CanvasFixture {
  protected:
    PieceId m_a = layBlock({inches(1), inches(1)}, {inches(1), inches(1)});
    PieceId m_b = layBlock({inches(3), inches(1)}, {inches(1), inches(1)});
    PieceId m_c = layBlock({inches(5), inches(1)}, {inches(1), inches(1)});
};

TEST_F(TabTest, TabGoesThroughThePiecesInOrderAndBack) {
    for (const PieceId id : {m_a, m_b, m_c}) {
        key(Qt::Key_Tab);
        EXPECT_EQ(session.onlySelected(), id);
    }
    key(Qt::Key_Backtab, Qt::ShiftModifier);
    EXPECT_EQ(session.onlySelected(), m_b);
}

TEST_F(TabTest, PastTheLastPieceTheFocusMovesOn) {
    QWidget window;
    auto* layout = new QVBoxLayout(&window);
    auto* inside = new Canvas(session, *settings);
    auto* next = new QLineEdit;
    layout->addWidget(inside);
    layout->addWidget(next);
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    window.activateWindow();
    inside->setFocus();
    session.select({m_c});
    QTest::keyClick(&inside->page(), Qt::Key_Tab);
    EXPECT_FALSE(inside->page().hasFocus());
    inside->setFocus();
    session.select({m_a});
    QTest::keyClick(&inside->page(), Qt::Key_Backtab, Qt::ShiftModifier);
    EXPECT_FALSE(inside->page().hasFocus());
}

TEST_F(TabTest, CtrlTabAddsTheNextPiece) {
    session.select({m_a});
    key(Qt::Key_Tab, Qt::ControlModifier);
    EXPECT_EQ(session.selection(), (Session::Selection{m_a, m_b}));
    key(Qt::Key_Tab, Qt::ControlModifier);
    EXPECT_EQ(session.selection(), (Session::Selection{m_a, m_b, m_c}));
}

TEST_F(TabTest, CtrlSpaceLetsGoOfThePieceCtrlTabCameToAndGoesOnFromThere) {
    session.select({m_a});
    key(Qt::Key_Tab, Qt::ControlModifier);
    key(Qt::Key_Space, Qt::ControlModifier);
    EXPECT_EQ(session.selection(), Session::Selection{m_a});
    key(Qt::Key_Tab, Qt::ControlModifier);
    EXPECT_EQ(session.selection(), (Session::Selection{m_a, m_c})) << "the middle one left out";
    key(Qt::Key_Space, Qt::ControlModifier);
    key(Qt::Key_Space, Qt::ControlModifier);
    EXPECT_EQ(session.selection(), (Session::Selection{m_a, m_c}));
}

TEST_F(TabTest, AfterAnotherSelectionCtrlTabGoesOnFromThatOne) {
    session.select({m_a});
    key(Qt::Key_Tab, Qt::ControlModifier);
    session.select({m_b});
    key(Qt::Key_Tab, Qt::ControlModifier);
    EXPECT_EQ(session.selection(), (Session::Selection{m_b, m_c}));
}

}  // namespace
}  // namespace matwright::app
