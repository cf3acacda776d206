// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>

#include "core/family/family.h"

namespace matwright {

namespace {

// What of a piece is exact and stays under every turn.
using Facts = std::array<std::int64_t, 6>;

Facts factsOfPiece(const FamilyPiece& piece) {
    // A list, because of two numbers std::minmax would return references.
    const auto [shorter, longer] =
        std::minmax({piece.print.width.ticks(), piece.print.height.ticks()});
    return {
        static_cast<std::int64_t>(piece.kind),          piece.shape, piece.mats, shorter, longer,
        static_cast<std::int64_t>(piece.corners.size())};
}

// FNV-1a, 64 bits (draft-eastlake-fnv; constants from memory), a value as eight bytes.
class Fnv {
  public:
    void add(std::int64_t value) {
        auto bits = static_cast<std::uint64_t>(value);
        for (int i = 0; i < 8; ++i, bits >>= 8) {
            m_hash = (m_hash ^ (bits & 0xFF)) * 0x100000001B3U;
        }
    }
    std::uint64_t value() const { return m_hash; }

  private:
    std::uint64_t m_hash = 0xCBF29CE484222325U;
};

}  // namespace

std::uint64_t FamilyTraits::key() const {
    std::vector<Facts> facts;
    facts.reserve(pieces.size());
    for (const FamilyPiece& piece : pieces) {
        facts.push_back(factsOfPiece(piece));
    }
    std::ranges::sort(facts);
    Fnv fnv;
    // A double page has no quarter turns, so for it the sides of a page keep their order.
    const bool swapped = !doublePage && page.width > page.height;
    fnv.add((swapped ? page.height : page.width).ticks());
    fnv.add((swapped ? page.width : page.height).ticks());
    fnv.add(doublePage ? 1 : 0);
    for (const Facts& piece : facts) {
        for (const std::int64_t fact : piece) {
            fnv.add(fact);
        }
    }
    return fnv.value();
}

}  // namespace matwright
