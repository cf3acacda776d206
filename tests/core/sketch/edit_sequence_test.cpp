// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <iostream>
#include <vector>

#include "core/sketch/edit.h"
#include "core/sketch/soundness.h"
#include "tests/support/random_sketch.h"

namespace matwright::test {
namespace {

constexpr std::uint64_t seed = 20'260'424;

TEST(EditSequence, TenThousandRandomSequencesAreUndoneToEquality) {
    constexpr int sequences = 10'000;
    Random random(seed);
    std::size_t edits = 0;
    for (int run = 0; run < sequences; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", sequence " << run);
        const Sketch before = randomSketch(random, static_cast<int>(below(random, 6)));
        Sketch sketch = before;
        std::vector<Edit> undo;
        for (auto n = 1 + below(random, 8); n > 0; --n) {
            const Result<Edit> inverse = apply(sketch, randomEdit(random, sketch));
            ASSERT_TRUE(inverse) << inverse.error().text();
            undo.push_back(*inverse);
        }
        edits += undo.size();
        const Sketch after = sketch;
        std::vector<Edit> redo;
        while (!undo.empty()) {
            const Result<Edit> forward = apply(sketch, undo.back());
            ASSERT_TRUE(forward) << forward.error().text();
            undo.pop_back();
            redo.push_back(*forward);
        }
        ASSERT_EQ(sketch, before);
        while (!redo.empty()) {
            ASSERT_TRUE(apply(sketch, redo.back()));
            redo.pop_back();
        }
        ASSERT_EQ(sketch, after) << "redo";
    }
    std::cout << sequences << " random edit sequences (" << edits << " edits, seed " << seed
              << ") undone and redone to equality\n";
}

TEST(EditSequence, InversesMergedIntoOneUndoTheWholeSequence) {
    constexpr int sequences = 1'000;
    Random random(seed);
    for (int run = 0; run < sequences; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", sequence " << run);
        const Sketch before = randomSketch(random, static_cast<int>(below(random, 6)));
        Sketch sketch = before;
        Edit undoAll;
        for (auto n = 1 + below(random, 8); n > 0; --n) {
            const Result<Edit> inverse = apply(sketch, randomEdit(random, sketch));
            ASSERT_TRUE(inverse);
            undoAll = merged(*inverse, undoAll);
        }
        const Result<Edit> forward = apply(sketch, undoAll);
        ASSERT_TRUE(forward) << forward.error().text();
        ASSERT_EQ(sketch, before);
    }
}

TEST(EditSequence, EverySketchOnTheWayIsSound) {
    Random random(seed);
    Sketch sketch = randomSketch(random, 5);
    for (int step = 0; step < 500; ++step) {
        ASSERT_TRUE(apply(sketch, randomEdit(random, sketch)));
        const auto fault = findFault(sketch);
        ASSERT_FALSE(fault) << "seed " << seed << ", step " << step << ": " << fault->text();
    }
}

}  // namespace
}  // namespace matwright::test
