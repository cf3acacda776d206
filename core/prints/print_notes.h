// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/prints/print_job.h"

namespace matwright {

// What a person should know of the prints of a page before they are made, a sentence each: a choice
// that changes nothing (`ganged` where no two prints share a sheet, cut marks where prints have no
// room for them), and turned slots across the fold, which give one print that has to be cut by
// hand. Empty where there is nothing to say, and for a page without prints.
std::vector<std::string> printNotes(const Making& making, const PrintOptions& options, bool ganged);

}  // namespace matwright
