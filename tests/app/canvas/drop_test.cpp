// SPDX-License-Identifier: MIT
#include <QApplication>
#include <QDropEvent>
#include <QMimeData>

#include "app/editing/piece_mime.h"
#include "tests/app/canvas/canvas_fixture.h"

namespace matwright::app {
namespace {

class DropTest : public CanvasFixture {
  protected:
    DropTest() {
        Piece slot;
        slot.kind = PieceKind::PhotoSlot;
        slot.size = {inches(4), inches(6)};
        slot.printSize = slot.size;
        m_mime.reset(toMime({slot}));
    }

    bool enter(QPointF at) {
        QDragEnterEvent event(at.toPoint(), Qt::CopyAction, m_mime.get(), Qt::LeftButton, {});
        event.ignore();
        QApplication::sendEvent(&page(), &event);
        return event.isAccepted();
    }
    void dragOver(QPointF at) {
        QDragMoveEvent event(at.toPoint(), Qt::CopyAction, m_mime.get(), Qt::LeftButton, {});
        QApplication::sendEvent(&page(), &event);
    }
    void drop(QPointF at) {
        QDropEvent event(at, Qt::CopyAction, m_mime.get(), Qt::LeftButton, {});
        QApplication::sendEvent(&page(), &event);
    }
    // The pointer's place that brings the slot's corner here.
    QPointF holding(Point corner) { return at(corner + Point{inches(2), inches(3)}); }

    std::unique_ptr<QMimeData> m_mime;
};

TEST_F(DropTest, ThePieceIsShownSnappedWhileItIsOverThePage) {
    ASSERT_TRUE(enter(holding({inches(3), inches(3)})));
    dragOver(holding({inches(0, 1, 2), inches(0, 1, 2)}) + QPointF(3, 2));
    ASSERT_EQ(page().preview().added.size(), 1u);
    EXPECT_EQ(page().preview().added.front().place, (Point{inches(0, 1, 2), inches(0, 1, 2)}));
    EXPECT_TRUE(sketch().pieces.empty());
}

TEST_F(DropTest, DroppingLaysItWhereItIsShownAsOneStepAndSelectsIt) {
    ASSERT_TRUE(enter(holding({inches(3), inches(3)})));
    drop(holding({inches(0, 1, 2), inches(0, 1, 2)}) + QPointF(3, 2));
    ASSERT_EQ(sketch().pieces.size(), 1u);
    EXPECT_EQ(sketch().pieces.begin()->second.place, (Point{inches(0, 1, 2), inches(0, 1, 2)}));
    EXPECT_EQ(session.onlySelected(), sketch().pieces.begin()->first);
    EXPECT_EQ(undoSteps(), 1);
    EXPECT_TRUE(page().preview().isEmpty());
}

TEST_F(DropTest, LeavingThePageLeavesNothing) {
    ASSERT_TRUE(enter(holding({inches(3), inches(3)})));
    dragOver(holding({inches(3), inches(3)}));
    QDragLeaveEvent event;
    QApplication::sendEvent(&page(), &event);
    EXPECT_TRUE(page().preview().isEmpty());
    EXPECT_EQ(undoSteps(), 0);
}

TEST_F(DropTest, SomethingElseIsNotTaken) {
    m_mime = std::make_unique<QMimeData>();
    m_mime->setText("hello");
    EXPECT_FALSE(enter({100, 100}));
    drop({100, 100});
    EXPECT_TRUE(sketch().pieces.empty());
}

}  // namespace
}  // namespace matwright::app
