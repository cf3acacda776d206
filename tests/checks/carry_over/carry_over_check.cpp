// SPDX-License-Identifier: MIT
// Carries every starter and example sketch to every page size, and 5,000 seeded random ones to one
// each, and looks at the promises of carrying over with a checker of its own. Prints how many, how
// many gave way in what, and how many came back equal. Ends with 1 where a promise was broken.
#include <cstdio>
#include <string>

#include "core/measure/catalogue.h"
#include "tests/support/carry_laws.h"
#include "tests/support/example_sketches.h"
#include "tests/support/plausible_sketch.h"
#include "tests/support/starters/starters.h"

namespace {

using namespace matwright;
using namespace matwright::test;

struct Tally {
    std::string name;
    std::size_t samePage = 0;
    std::size_t carried = 0;
    std::size_t relations = 0;
    std::size_t lost = 0;  // and told
    std::size_t nothingGave = 0;
    std::size_t cameBack = 0;
    std::size_t onlyWayBack = 0;  // nothing gave but the way back
    std::size_t broken = 0;

    void carry(const Sketch& sketch, const PageSetup& target, const std::string& which) {
        const CarriedOver there = carriedOver(sketch, target);
        if (sketch.page == target) {
            ++samePage;
            if (there.sketch != sketch || !there.gaveWay.empty()) {
                tell(which, "its own page changed it");
            }
            return;
        }
        ++carried;
        relations += countedRelations(sketch);
        for (const std::string& sentence : there.gaveWay) {
            lost += sentence.contains("no longer") ? 1 : 0;
        }
        onlyWayBack += there.gaveWay.size() == 1 && there.gaveWay[0].starts_with("Carried back");
        for (const std::string& sentence : brokenCarryLaws(sketch, target, there)) {
            tell(which, sentence);
        }
        if (there.gaveWay.empty()) {
            ++nothingGave;
            if (carriedOver(there.sketch, sketch.page).sketch == sketch) {
                ++cameBack;
            } else {
                tell(which, "nothing gave way, but it did not come back equal");
            }
        }
    }

    void tell(const std::string& which, const std::string& sentence) {
        if (++broken <= 20) {
            std::printf("BROKEN %s: %s\n", which.c_str(), sentence.c_str());
        }
    }

    void print() const {
        std::printf(
            "%-18s %4zu to their own page equal; %5zu carried, %6zu relations of which %5zu told "
            "as lost; nothing gave in %4zu, "
            "of those came back equal %4zu (in %zu more only the way back gave); violations %zu\n",
            name.c_str(), samePage, carried, relations, lost, nothingGave, cameBack, onlyWayBack,
            broken);
    }
};

// Another page size than the sketch has.
PageSetup otherPage(Random& random, const Sketch& sketch) {
    const auto sizes = pageSizes();
    PageSetup target = sketch.page;
    while (target == sketch.page) {
        target = onPageSize(sketch.page, sizes[below(random, sizes.size())].size);
    }
    return target;
}

}  // namespace

int main(int argc, char** argv) {
    const int randoms = argc > 1 ? std::stoi(argv[1]) : 2'500;
    Tally ready{"starters, examples"};
    std::vector<std::pair<std::string, Sketch>> all;
    for (const Starter& starter : starters()) {
        all.emplace_back(starter.file, starter.sketch);
    }
    for (const ExampleSketch& example : exampleSketches()) {
        all.emplace_back(example.file, example.sketch);
    }
    const auto sizes = pageSizes();
    for (const auto& [file, sketch] : all) {
        for (const NamedSize& size : sizes) {
            ready.carry(sketch, onPageSize(sketch.page, size.size),
                        file + " to " + std::string(size.id));
        }
    }
    ready.print();
    Tally plausible{"plausible, seed 31"};
    Tally wild{"wild, seed 32"};
    Random random(31);
    Random wildRandom(32);
    for (int i = 0; i < randoms; ++i) {
        const Sketch sketch = plausibleSketch(random);
        PageSetup target = otherPage(random, sketch);
        if (below(random, 8) == 0) {
            target.doublePage = !target.doublePage;
            target.foldGap = Length();
        }
        plausible.carry(sketch, target, "plausible " + std::to_string(i));
        const Sketch any = randomSketch(wildRandom, 1 + i % 12);
        wild.carry(any, otherPage(wildRandom, any), "wild " + std::to_string(i));
    }
    plausible.print();
    wild.print();
    return ready.broken + plausible.broken + wild.broken == 0 ? 0 : 1;
}
