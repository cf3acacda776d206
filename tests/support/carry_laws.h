// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/carry/carry_over.h"

namespace matwright::test {

// What carrying over promises, measured anew from the two sketches: knows nothing of how it was
// done. A sentence for each promise that was broken; empty is good.
std::vector<std::string> brokenCarryLaws(const Sketch& before, const PageSetup& target,
                                         const CarriedOver& carried);

// The relations of a sketch that are looked for, for figures.
std::size_t countedRelations(const Sketch& sketch);

}  // namespace matwright::test
