// SPDX-License-Identifier: MIT
#include "app/canvas/accessible_page.h"

#include <QAccessible>

#include "tests/app/canvas/canvas_fixture.h"

namespace matwright::app {
namespace {

class AccessiblePageTest : public CanvasFixture {
  protected:
    AccessiblePageTest() {
        laySlot({inches(1, 1, 2), inches(2)}, {inches(4), inches(6)}, 2);
        Piece title;
        title.kind = PieceKind::Title;
        title.place = {inches(6), inches(2)};
        title.size = {inches(5), inches(1)};
        title.name = "Summer";
        title.rotation = Angle::degrees(15);
        title.locked = true;
        lay(title);
        m_page = QAccessible::queryAccessibleInterface(&page());
    }
    QAccessibleInterface* m_page = nullptr;
};

TEST_F(AccessiblePageTest, EachPieceIsAChildWithNumberKindSizesAndPlace) {
    ASSERT_TRUE(m_page);
    EXPECT_FALSE(m_page->text(QAccessible::Name).isEmpty());
    ASSERT_EQ(m_page->childCount(), 2);
    EXPECT_EQ(
        m_page->child(0)->text(QAccessible::Name),
        QString::fromUtf8("Piece 1 of 2, photo slot 4 × 6 in, left 1 1/2 in, top 2 in, two mats"));
    const QString name = m_page->child(1)->text(QAccessible::Name);
    EXPECT_TRUE(name.startsWith(QString::fromUtf8("Piece 2 of 2, Summer, title 5 × 1 in")));
    EXPECT_TRUE(name.endsWith(QString::fromUtf8("turned 15° to the right, locked")));
    EXPECT_EQ(m_page->child(2), nullptr);
    EXPECT_EQ(m_page->indexOfChild(m_page->child(1)), 1);
    EXPECT_EQ(m_page->child(1)->parent(), m_page);
}

TEST_F(AccessiblePageTest, StatesFollowTheSelection) {
    QAccessibleInterface* slot = m_page->child(0);
    EXPECT_FALSE(slot->state().selected);
    session.select({PieceId{1}});
    EXPECT_TRUE(slot->state().selected);
    EXPECT_TRUE(slot->state().focused);
    EXPECT_TRUE(slot->state().movable);
    EXPECT_FALSE(m_page->child(1)->state().movable);
    EXPECT_EQ(m_page->focusChild(), slot);
    session.clearSelection();
    EXPECT_EQ(m_page->focusChild(), nullptr);
}

TEST_F(AccessiblePageTest, PressingAPieceSelectsIt) {
    m_page->child(1)->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    EXPECT_EQ(session.onlySelected(), PieceId{2});
}

TEST_F(AccessiblePageTest, APieceIsWhereItIsOnTheScreen) {
    const QRect rect = m_page->child(0)->rect();
    const QPoint middle = page().mapToGlobal(middleOf(PieceId{1}).toPoint());
    EXPECT_TRUE(rect.contains(middle));
    EXPECT_EQ(m_page->childAt(middle.x(), middle.y()), m_page->child(0));
}

TEST_F(AccessiblePageTest, ARemovedPieceIsNoLongerValid) {
    QAccessibleInterface* slot = m_page->child(0);
    session.select({PieceId{1}});
    key(Qt::Key_Delete);
    EXPECT_FALSE(slot->isValid());
    EXPECT_TRUE(slot->text(QAccessible::Name).isEmpty());
    EXPECT_EQ(m_page->childCount(), 1);
}

TEST_F(AccessiblePageTest, OnADoublePageDistancesCountFromThePageThePieceLiesOn) {
    Sketch spread = blankSketch();
    spread.page.doublePage = true;
    spread.page.foldGap = inches(0, 1, 2);
    Piece block;
    block.size = {inches(2), inches(1)};
    std::vector<Piece> blocks{block, block};
    blocks[0].place = {inches(3), inches(2)};
    blocks[1].place = {inches(13), inches(2)};
    ASSERT_TRUE(apply(spread, addPieces(spread, blocks)));
    EXPECT_EQ(spokenName(spread, PieceId{1}, Scale::SixteenthInch),
              QString::fromUtf8("Piece 1 of 2, block 2 × 1 in, left page, left 3 in, top 2 in"));
    EXPECT_EQ(spokenName(spread, PieceId{2}, Scale::SixteenthInch),
              QString::fromUtf8("Piece 2 of 2, block 2 × 1 in, right page, left 1/2 in, top 2 in"));
}

}  // namespace
}  // namespace matwright::app
