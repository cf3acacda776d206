// SPDX-License-Identifier: MIT
#include "tests/app/window/undoable.h"

namespace matwright::app {
namespace {

class ArrangeActionsTest : public UndoableTest {
  protected:
    Length left(std::size_t i) const { return trimBounds(piece(i)).left(); }
    Length right(std::size_t i) const { return trimBounds(piece(i)).right(); }
    Length top(std::size_t i) const { return trimBounds(piece(i)).top(); }
    Length bottom(std::size_t i) const { return trimBounds(piece(i)).bottom(); }
};

TEST_F(ArrangeActionsTest, AlignsOnAllSixLines) {
    add({block(1, 1, 2, 1), block(4, 5, 3, 2)});
    expectUndoable("Left edges", [&] { return left(0) == left(1); });
    expectUndoable("Right edges", [&] { return right(0) == right(1); });
    expectUndoable("Centres across", [&] { return left(0) + right(0) == left(1) + right(1); });
    expectUndoable("Top edges", [&] { return top(0) == top(1); });
    expectUndoable("Bottom edges", [&] { return bottom(0) == bottom(1); });
    expectUndoable("Centres down", [&] { return top(0) + bottom(0) == top(1) + bottom(1); });
}

TEST_F(ArrangeActionsTest, SpreadsEvenlyAndByTheGutter) {
    add({block(0, 0, 1, 1), block(2, 3, 1, 1), block(8, 9, 1, 1)});
    expectUndoable("Evenly across", [&] { return left(1) - right(0) == left(2) - right(1); });
    expectUndoable("Evenly down", [&] { return top(1) - bottom(0) == top(2) - bottom(1); });
    const Length gutter = sketch().page.gutter;
    expectUndoable("By the gutter across", [&] { return left(1) - right(0) == gutter; });
    expectUndoable("By the gutter down", [&] { return top(2) - bottom(1) == gutter; });
}

TEST_F(ArrangeActionsTest, NeedAsManyPiecesAsTheyWorkOn) {
    EXPECT_FALSE(action("Left edges").isEnabled());
    add({block(0, 0)});
    EXPECT_TRUE(action("Left edges").isEnabled());
    EXPECT_FALSE(action("By the gutter across").isEnabled());
    add({block(3, 3)});
    session().selectAll();
    EXPECT_TRUE(action("By the gutter across").isEnabled());
    EXPECT_FALSE(action("Evenly across").isEnabled());
}

TEST_F(ArrangeActionsTest, MirrorsAndTurns) {
    add({block(1, 1, 2, 1), block(4, 5, 3, 2)});
    const Length first = left(0);
    expectUndoable("Mirror left to right", [&] { return right(1) - left(1) + first == right(1); });
    expectUndoable("Mirror top to bottom", [&] { return top(1) == Length::inches(1); });
    expectUndoable("Quarter turn", [&] {
        return trimBounds(piece(0)).size() == Size{Length::inches(1), Length::inches(2)};
    });
}

TEST_F(ArrangeActionsTest, ChangesTheOrder) {
    add({block(1, 1), block(2, 2), block(3, 3)});
    const auto order = sketch().order;
    session().select({order[0]});
    expectUndoable("To the front", [&] { return sketch().order.back() == order[0]; });
    expectUndoable("Forward", [&] { return sketch().order[1] == order[0]; });
    session().select({order[2]});
    expectUndoable("Backward", [&] { return sketch().order[1] == order[2]; });
    expectUndoable("To the back", [&] { return sketch().order.front() == order[2]; });
}

TEST_F(ArrangeActionsTest, LocksAndUnlocks) {
    add({block(1, 1)});
    expectUndoable("Lock", [&] { return piece(0).locked; });
    trigger("Lock");
    trigger("Lock");
    EXPECT_TRUE(says().contains(QStringLiteral("Nothing to change")));
    expectUndoable("Unlock", [&] { return !piece(0).locked; });
}

}  // namespace
}  // namespace matwright::app
