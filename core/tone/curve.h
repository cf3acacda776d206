// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

namespace matwright {

// Curves over 0 .. fullTone in whole numbers only, so that they come out the same on every machine.
// All of them are monotone and keep both ends.
inline constexpr std::int64_t fullTone = 65'535;
// Bends are counted in thousandths: 0 is straight, positive darkens the middle, negative brightens
// it; above -1000.
inline constexpr std::int64_t oneBend = 1'000;

// t / (k (1 - t) + 1) for t and k as shares: the bias curve of C. Schlick (Graphics Gems IV, 1994;
// from memory) with k = 1 / b - 2.
std::int64_t bent(std::int64_t tone, std::int64_t bend);
// The bend that undoes `bend`, to a thousandth.
std::int64_t oppositeBend(std::int64_t bend);
// The bend that brings `from` to `to`; both strictly between the ends.
std::int64_t bendBetween(std::int64_t from, std::int64_t to);
// The lower half bent by `bend` and the upper half by as much the other way about the middle:
// positive gives more contrast.
std::int64_t contrasted(std::int64_t tone, std::int64_t bend);

}  // namespace matwright
