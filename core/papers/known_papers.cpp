// SPDX-License-Identifier: MIT
#include "core/papers/known_papers.h"

#include <map>
#include <set>
#include <tuple>

namespace matwright {

namespace {

auto lookOf(const PaperOnHand& paper) {
    const Colour colour = paper.colour;
    return std::tuple(paperKey(paper.name), paper.size.width, paper.size.height, paper.kind,
                      paper.pattern, paper.sides, paper.thickness,
                      std::tuple(colour.red, colour.green, colour.blue), paper.picture,
                      paper.pictureWidth);
}

}  // namespace

KnownPapers knownPapers(std::span<const PaperOnHand> papers, std::span<const PaperOnHand> onHand) {
    std::map<decltype(lookOf(PaperOnHand())), std::multiset<int>> counts;
    for (const PaperOnHand& paper : onHand) {
        counts[lookOf(paper)].insert(paper.count);
    }
    // Those of one count find each other first.
    std::vector<bool> isKnown(papers.size());
    KnownPapers sorted;
    for (const bool anyCount : {false, true}) {
        for (std::size_t i = 0; i < papers.size(); ++i) {
            std::multiset<int>& there = counts[lookOf(papers[i])];
            const auto entry = anyCount ? there.begin() : there.find(papers[i].count);
            if (!isKnown[i] && entry != there.end()) {
                there.erase(entry);
                isKnown[i] = true;
                ++sorted.known;
                sorted.otherCount += anyCount ? 1 : 0;
            }
        }
    }
    for (std::size_t i = 0; i < papers.size(); ++i) {
        if (!isKnown[i]) {
            sorted.fresh.push_back(papers[i]);
        }
    }
    return sorted;
}

}  // namespace matwright
