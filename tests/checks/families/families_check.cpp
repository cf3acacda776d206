// SPDX-License-Identifier: MIT
// The starter and example sketches, each mirrored, turned and nudged in many seeded ways, thrown
// together: every one has to be found in the family of its original, and no two originals may share
// one. Then 10,000 generated ones: how long that takes. Ends with 1 where that fails.
#include <algorithm>
#include <chrono>
#include <cstdio>

#include "core/carry/turned_sketch.h"
#include "core/family/family.h"
#include "tests/support/example_sketches.h"
#include "tests/support/plausible_sketch.h"
#include "tests/support/starters/starters.h"

namespace {

using namespace matwright;
using namespace matwright::test;

Length within(Random& random, Length tolerance) {
    const auto span = static_cast<std::uint64_t>(2 * tolerance.ticks() + 1);
    return Length::fromTicks(static_cast<std::int64_t>(below(random, span))) - tolerance;
}

// Every piece a little elsewhere and some a little larger, within the tolerances.
Sketch nudged(Sketch sketch, Random& random) {
    for (auto& [id, piece] : sketch.pieces) {
        const Length half = familyPlaceTolerance.halfRoundedDown();
        piece.place = piece.place + Point{within(random, half), within(random, half)};
        if (!piece.printSize && std::holds_alternative<RectangleShape>(piece.shape)) {
            piece.size.width += within(random, familySizeTolerance);
            piece.size.height += within(random, familySizeTolerance);
        }
        piece.name = "Piece";
    }
    sketch.name = "Another name";
    return sketch;
}

}  // namespace

int main() {
    std::vector<Sketch> originals;
    for (const Starter& starter : starters()) {
        originals.push_back(starter.sketch);
    }
    for (const ExampleSketch& example : exampleSketches()) {
        originals.push_back(example.sketch);
    }
    std::vector<FamilyTraits> all;
    std::vector<std::size_t> originalOf;
    const auto add = [&](const Sketch& sketch, std::size_t original) {
        // As an index keeps them.
        all.push_back(*FamilyTraits::fromBytes(familyTraits(sketch).toBytes()));
        originalOf.push_back(original);
    };
    Random random(51);
    for (std::size_t i = 0; i < originals.size(); ++i) {
        add(originals[i], i);
        for (const WholeTurn turn : allWholeTurns) {
            if (const auto other = turned(originals[i], turn)) {
                add(*other, i);
                const auto further = turned(*other, allWholeTurns[below(random, 5)]);
                add(nudged(further.value_or(*other), random), i);
            }
        }
        add(nudged(originals[i], random), i);
    }
    const std::vector<int> families = familiesOf(all);
    std::size_t missed = 0;
    std::size_t joined = 0;
    std::vector<int> ofOriginals;
    for (std::size_t k = 0; k < all.size(); ++k) {
        const auto first = std::ranges::find(originalOf, originalOf[k]) - originalOf.begin();
        missed += families[k] == 0 || families[k] != families[static_cast<std::size_t>(first)];
        if (static_cast<std::size_t>(first) == k) {
            joined += std::ranges::count(ofOriginals, families[k]) > 0;
            ofOriginals.push_back(families[k]);
        }
    }
    std::printf(
        "%zu sketches of %zu originals: %zu not found in their family, %zu originals "
        "joined with another\n",
        all.size(), originals.size(), missed, joined);

    constexpr std::size_t many = 10'000;
    while (all.size() < many) {
        const Sketch sketch = plausibleSketch(random);
        add(sketch, 0);
        add(nudged(sketch, random), 0);
    }
    const auto start = std::chrono::steady_clock::now();
    const std::vector<int> grouped = familiesOf(all);
    const double ms =
        std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
    std::size_t bytes = 0;
    for (const FamilyTraits& traits : all) {
        bytes += traits.toBytes().size();
    }
    std::printf("%zu sketches grouped in %.0f ms into %d families; traits take %zu bytes each\n",
                all.size(), ms, std::ranges::max(grouped), bytes / all.size());
    return missed + joined == 0 ? 0 : 1;
}
