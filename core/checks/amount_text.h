// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/measure/length_text.h"

namespace matwright {

// An amount within a sentence: "1/8 in", "about 1/8 in" where rounded, "less than 1/16 in" where it
// would round to nothing. `amount` is positive.
std::string amountText(Length amount, Scale scale);

// A length that is not on a scale, as exactly as people read it: "89 mm", "3 7/64 in", "about
// 3.142 in".
std::string closeText(Length length);

// A multiple of `step` without rounding, in the unit of the step: "3 1/2 in", "254 mm".
std::string steppedText(Length length, Length step);

// "a", "a and b", "a, b and c"
std::string listText(const std::vector<std::string>& parts);

}  // namespace matwright
