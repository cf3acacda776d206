// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "core/papers/paper_on_hand.h"

namespace matwright {

// Papers that were read from a table, against the list they are to come into.
struct KnownPapers {
    std::vector<PaperOnHand> fresh;  // in their order
    std::size_t known = 0;           // on the list already, whatever their count
    std::size_t otherCount = 0;      // those of them of which the list has more or fewer sheets
    friend bool operator==(const KnownPapers&, const KnownPapers&) = default;
};

// A paper is known where the list has an entry that is the same in everything but id and count,
// case and blanks of the name aside. Every entry stands for one paper only: of two equal lines of
// a table one is fresh where the list has one.
KnownPapers knownPapers(std::span<const PaperOnHand> papers, std::span<const PaperOnHand> onHand);

}  // namespace matwright
