// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/library/bits.h"
#include "core/library/holdings.h"
#include "core/library/search.h"

namespace matwright {

// One filter in use, and the entries that pass it.
struct SearchCondition {
    Filter filter;
    Bits passing;
};

// One for each filter the query uses, in the order of Filter.
std::vector<SearchCondition> searchConditions(const Holdings::Inside& inside, const Query& query);

// What passes all conditions, or all but that of `except`.
Bits passingAll(const Holdings::Inside& inside, const std::vector<SearchCondition>& conditions);
Bits passingAllBut(const Holdings::Inside& inside, const std::vector<SearchCondition>& conditions,
                   Filter except);

}  // namespace matwright
