// SPDX-License-Identifier: MIT
#include "tests/support/generated_library.h"

#include <gtest/gtest.h>

#include <set>

#include "core/library/facts.h"
#include "core/sketch/soundness.h"

namespace matwright {
namespace {

constexpr std::uint64_t seed = 20;

TEST(GeneratedLibrary, HasSoundSketchesWithPhotosUnderDifferentPaths) {
    std::set<std::string> paths;
    for (std::size_t i = 0; i < 500; ++i) {
        const Sketch sketch = test::generatedSketch(seed, i);
        EXPECT_FALSE(findFault(sketch)) << i;
        EXPECT_GE(factsOf(sketch).photos, 1) << i;
        EXPECT_TRUE(paths.insert(test::generatedPath(seed, i)).second);
    }
}

TEST(GeneratedLibrary, IsTheSameForTheSameSeedHoweverLarge) {
    const auto small = test::generatedEntries(seed, 10);
    const auto large = test::generatedEntries(seed, 20);
    EXPECT_TRUE(std::equal(small.begin(), small.end(), large.begin()));
    EXPECT_NE(test::generatedEntries(seed + 1, 10), small);
}

}  // namespace
}  // namespace matwright
