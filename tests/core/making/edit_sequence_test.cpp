// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <iostream>

#include "tests/core/making/random_making.h"

namespace matwright::test {
namespace {

constexpr std::uint64_t seed = 20'261'131;

Making startOf(Random& random) {
    return randomMaking(random, within(random, 0, 6), within(random, 0, 4));
}

TEST(PageEditSequence, TenThousandRandomSequencesAreUndoneToEquality) {
    constexpr int sequences = 10'000;
    Random random(seed);
    std::size_t edits = 0;
    for (int run = 0; run < sequences; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", sequence " << run);
        const Making before = startOf(random);
        Making making = before;
        std::vector<PageEdit> undo;
        for (auto n = 1 + below(random, 8); n > 0; --n) {
            const auto inverse = apply(making, randomPageEdit(random, making));
            ASSERT_TRUE(inverse) << inverse.error().text();
            undo.push_back(*inverse);
        }
        edits += undo.size();
        const Making after = making;
        std::vector<PageEdit> redo;
        while (!undo.empty()) {
            const auto forward = apply(making, undo.back());
            ASSERT_TRUE(forward) << forward.error().text();
            undo.pop_back();
            redo.push_back(*forward);
        }
        ASSERT_EQ(making, before);
        while (!redo.empty()) {
            ASSERT_TRUE(apply(making, redo.back()));
            redo.pop_back();
        }
        ASSERT_EQ(making, after) << "redo";
    }
    std::cout << sequences << " random edit sequences (" << edits << " edits, seed " << seed
              << ") undone and redone to equality\n";
}

TEST(PageEditSequence, InversesMergedIntoOneUndoTheWholeSequence) {
    Random random(seed);
    for (int run = 0; run < 2'000; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", sequence " << run);
        const Making before = startOf(random);
        Making making = before;
        PageEdit undoAll;
        for (auto n = 1 + below(random, 8); n > 0; --n) {
            const auto inverse = apply(making, randomPageEdit(random, making));
            ASSERT_TRUE(inverse);
            undoAll = merged(*inverse, undoAll);
        }
        const auto forward = apply(making, undoAll);
        ASSERT_TRUE(forward) << forward.error().text();
        ASSERT_EQ(making, before);
    }
}

TEST(PageEditSequence, EveryPageOnTheWayIsSound) {
    Random random(seed);
    Making making = randomMaking(random, 6, 4);
    for (int step = 0; step < 500; ++step) {
        ASSERT_TRUE(apply(making, randomPageEdit(random, making)));
        const auto fault = findFault(making);
        ASSERT_FALSE(fault) << "seed " << seed << ", step " << step << ": " << fault->text();
    }
}

}  // namespace
}  // namespace matwright::test
