// SPDX-License-Identifier: MIT
#include "app/editing/command_words.h"

#include <gtest/gtest.h>

namespace matwright::app {
namespace {

TEST(CommandLabel, NamesALonePieceAndCountsSeveral) {
    const QString one = QStringLiteral("Move %1");
    const QString many = QStringLiteral("Move %1 pieces");
    EXPECT_EQ(commandLabel(one, many, PieceKind::PhotoSlot, 1), QStringLiteral("Move photo slot"));
    EXPECT_EQ(commandLabel(one, many, PieceKind::PhotoSlot, 3), QStringLiteral("Move 3 pieces"));
}

class RemovalTest : public testing::Test {
  protected:
    // Three strips, the last one locked.
    RemovalTest() {
        Piece strip;
        strip.kind = PieceKind::Strip;
        strip.size = {Length::inches(6), Length::inches(1)};
        std::vector<Piece> strips(3, strip);
        strips.back().locked = true;
        Sketch sketch = blankSketch();
        EXPECT_TRUE(apply(sketch, addPieces(sketch, strips)));
        session.reset(sketch);
    }
    Session session;
};

TEST_F(RemovalTest, TakesWhatIsNotLockedAndCountsWhatIs) {
    session.selectAll();
    const Removal removal = removalOfSelection(session);
    EXPECT_EQ(removal.label, QStringLiteral("Delete 2 pieces"));
    EXPECT_EQ(removal.locked, 1U);
    ASSERT_TRUE(session.perform(removal.edit, removal.label));
    EXPECT_EQ(session.sketch().order, std::vector{PieceId{3}});
}

TEST_F(RemovalTest, NamesALonePiece) {
    session.select({PieceId{2}});
    EXPECT_EQ(removalOfSelection(session).label, QStringLiteral("Delete strip"));
}

TEST_F(RemovalTest, IsEmptyWhereNothingMayGo) {
    EXPECT_TRUE(removalOfSelection(session).edit.isEmpty());
    session.select({PieceId{3}});
    const Removal removal = removalOfSelection(session);
    EXPECT_TRUE(removal.edit.isEmpty());
    EXPECT_EQ(removal.locked, 1U);
}

}  // namespace
}  // namespace matwright::app
