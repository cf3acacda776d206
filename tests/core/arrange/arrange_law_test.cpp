// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

#include "core/arrange/arrange.h"
#include "tests/core/arrange/rows.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

using namespace test;
using Ids = std::vector<PieceId>;
using Command = std::function<Edit(const Sketch&, const Ids&)>;

// Every command that may not touch a locked piece.
std::vector<Command> movingCommands() {
    std::vector<Command> commands;
    for (const AlignTo to : {AlignTo::Left, AlignTo::CentreX, AlignTo::Right, AlignTo::Top,
                             AlignTo::CentreY, AlignTo::Bottom}) {
        commands.push_back([to](const Sketch& s, const Ids& ids) { return aligned(s, ids, to); });
    }
    for (const Direction d : {Direction::Across, Direction::Down}) {
        commands.push_back(
            [d](const Sketch& s, const Ids& ids) { return spreadEvenly(s, ids, d); });
        commands.push_back(
            [d](const Sketch& s, const Ids& ids) { return spreadByGutter(s, ids, d); });
        commands.push_back([d](const Sketch& s, const Ids& ids) { return mirrored(s, ids, d); });
    }
    commands.push_back([](const Sketch& s, const Ids& ids) { return quarterTurned(s, ids); });
    commands.push_back([](const Sketch& s, const Ids& ids) {
        return movedAll(s, ids, {ticks(12'345), ticks(-777)});
    });
    return commands;
}

std::vector<Command> allCommands() {
    std::vector<Command> commands = movingCommands();
    for (const OrderStep step :
         {OrderStep::ToFront, OrderStep::Forward, OrderStep::Backward, OrderStep::ToBack}) {
        commands.push_back(
            [step](const Sketch& s, const Ids& ids) { return reordered(s, ids, step); });
    }
    commands.push_back([](const Sketch& s, const Ids& ids) { return lockedSet(s, ids, true); });
    return commands;
}

// Some of the ids, one twice, and one that does not exist, in any order.
Ids someIds(Random& random, const Sketch& sketch) {
    Ids ids{PieceId{999'999}};
    for (const PieceId id : sketch.order) {
        if (below(random, 3) != 0) {
            ids.insert(ids.begin() + static_cast<std::ptrdiff_t>(below(random, ids.size() + 1)),
                       id);
        }
    }
    ids.push_back(ids.front());
    return ids;
}

TEST(ArrangeLaws, everyCommandIsUndoneByItsInverse) {
    Random random(51);
    for (int i = 0; i < 300; ++i) {
        const Sketch start = randomSketch(random, 8);
        const Ids ids = someIds(random, start);
        for (const Command& command : allCommands()) {
            const Edit edit = command(start, ids);
            Sketch sketch = start;
            const auto inverse = apply(sketch, edit);
            ASSERT_TRUE(inverse) << inverse.error().text() << " seed 51, sketch " << i;
            EXPECT_EQ(sketch == start, edit.isEmpty()) << "seed 51, sketch " << i;
            ASSERT_TRUE(apply(sketch, *inverse));
            ASSERT_EQ(sketch, start) << "seed 51, sketch " << i;
        }
    }
}

TEST(ArrangeLaws, noCommandTouchesALockedPieceOrOneThatIsNotChosen) {
    Random random(52);
    for (int i = 0; i < 300; ++i) {
        const Sketch start = randomSketch(random, 8);
        const Ids ids = someIds(random, start);
        for (const Command& command : movingCommands()) {
            for (const auto& [id, piece] : command(start, ids).pieces) {
                EXPECT_FALSE(start.pieces.at(id).locked) << "seed 52, sketch " << i;
                EXPECT_TRUE(std::ranges::find(ids, id) != ids.end());
            }
        }
    }
}

TEST(ArrangeLaws, theOrderInWhichIdsAreGivenDoesNotMatter) {
    Random random(53);
    for (int i = 0; i < 200; ++i) {
        const Sketch start = randomSketch(random, 8);
        const Ids ids = someIds(random, start);
        const Ids backwards(ids.rbegin(), ids.rend());
        for (const Command& command : allCommands()) {
            EXPECT_EQ(command(start, ids), command(start, backwards)) << "seed 53, sketch " << i;
        }
    }
}

TEST(ArrangeLaws, spreadGapsDifferByATickAtMostAndAddUp) {
    Random random(54);
    for (int i = 0; i < 500; ++i) {
        std::vector<Rect> boxes;
        for (std::uint64_t n = 3 + below(random, 6); n > 0; --n) {
            const auto left = static_cast<std::int64_t>(below(random, 9'000'000));
            boxes.push_back(
                tickBox(left, left + 20'000 + static_cast<std::int64_t>(below(random, 900'000))));
        }
        const Sketch start = sketchOf(boxes);
        const Sketch done = after(start, spreadEvenly(start, allIds(start), Direction::Across));
        std::vector<std::uint32_t> ids;
        for (const auto& [id, piece] : start.pieces) {
            ids.push_back(id.value);
        }
        std::ranges::sort(ids, {}, [&](std::uint32_t id) {
            return std::pair(boxOf(start, id).left(), boxOf(start, id).right());
        });
        EXPECT_EQ(boxOf(done, ids.front()), boxOf(start, ids.front()));
        EXPECT_EQ(boxOf(done, ids.back()), boxOf(start, ids.back()));
        std::vector<Length> gaps;
        for (std::size_t k = 1; k < ids.size(); ++k) {
            gaps.push_back(boxOf(done, ids[k]).left() - boxOf(done, ids[k - 1]).right());
        }
        EXPECT_TRUE(std::ranges::is_sorted(gaps)) << "seed 54, row " << i;
        EXPECT_LE(gaps.back() - gaps.front(), ticks(1)) << "seed 54, row " << i;
    }
}

}  // namespace
}  // namespace matwright
