// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>

#include "core/family/family.h"

namespace matwright {

namespace {

class Sets {
  public:
    explicit Sets(std::size_t count) : m_parent(count) {
        for (std::size_t i = 0; i < count; ++i) {
            m_parent[i] = i;
        }
    }
    std::size_t of(std::size_t i) {
        while (m_parent[i] != i) {
            m_parent[i] = m_parent[m_parent[i]];
            i = m_parent[i];
        }
        return i;
    }
    // The smaller index becomes the set's name.
    void join(std::size_t a, std::size_t b) {
        const auto [low, high] = std::minmax({of(a), of(b)});
        m_parent[high] = low;
    }

  private:
    std::vector<std::size_t> m_parent;
};

// Sums that no turn changes and that tiny shifts change by little, so that most pairs need no
// closer look.
struct Sums {
    std::size_t index;
    std::int64_t sides = 0;
    std::int64_t distances = 0;
};

Sums sumsOf(const FamilyTraits& traits, std::size_t index) {
    Sums sums{index};
    for (const FamilyPiece& piece : traits.pieces) {
        sums.sides += (piece.size.width + piece.size.height).ticks();
        sums.distances += (abs(piece.middle.x) + abs(piece.middle.y)).ticks();
    }
    return sums;
}

void joinSameKey(std::span<const FamilyTraits> sketches, const std::vector<std::size_t>& members,
                 Sets& sets) {
    std::vector<Sums> sums;
    sums.reserve(members.size());
    for (const std::size_t i : members) {
        sums.push_back(sumsOf(sketches[i], i));
    }
    std::ranges::sort(sums, {}, &Sums::sides);
    // Equal keys: as many pieces.
    const auto pieces = static_cast<std::int64_t>(sketches[members.front()].pieces.size());
    const std::int64_t sidesApart = pieces * 2 * familySizeTolerance.ticks();
    const std::int64_t distancesApart = pieces * 4 * familyPlaceTolerance.ticks();
    for (auto a = sums.begin(); a != sums.end(); ++a) {
        for (auto b = a + 1; b != sums.end() && b->sides - a->sides <= sidesApart; ++b) {
            if (std::abs(b->distances - a->distances) <= distancesApart &&
                sets.of(a->index) != sets.of(b->index) &&
                isSameFamily(sketches[a->index], sketches[b->index])) {
                sets.join(a->index, b->index);
            }
        }
    }
}

}  // namespace

std::vector<int> familiesOf(std::span<const FamilyTraits> sketches) {
    std::map<std::uint64_t, std::vector<std::size_t>> byKey;
    for (std::size_t i = 0; i < sketches.size(); ++i) {
        byKey[sketches[i].key()].push_back(i);
    }
    Sets sets(sketches.size());
    for (const auto& [key, members] : byKey) {
        joinSameKey(sketches, members, sets);
    }
    std::vector<std::size_t> count(sketches.size());
    for (std::size_t i = 0; i < sketches.size(); ++i) {
        ++count[sets.of(i)];
    }
    std::vector<int> families(sketches.size());
    int last = 0;
    for (std::size_t i = 0; i < sketches.size(); ++i) {
        const std::size_t first = sets.of(i);
        families[i] = count[first] < 2 ? 0 : first == i ? ++last : families[first];
    }
    return families;
}

}  // namespace matwright
