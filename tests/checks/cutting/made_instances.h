// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/sheets/cut_job.h"

namespace matwright::test {

// Instances of the published bin packing classes that are made here: the same rules, other numbers.
// Nobody's values are known for them, so nothing can be fitted to them. Classes 1-6: Berkey & Wang,
// JORS 38 (1987) 423-429; 7-10: Martello & Vigo, Management Science 44 (1998) 388-399; the rules
// from memory, compared with the ranges and shares of the published instances. One unit is one
// tick.
struct MadeInstance {
    std::string name;  // "class 5, 60 pieces, seed 2"
    CutJob job;        // one sheet size, unlimited, price 1
};

inline constexpr int madeClasses = 10;

MadeInstance madeInstance(int number, int pieces, std::uint64_t seed, bool mayTurn);

}  // namespace matwright::test
