// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/sheets/cut_planner.h"

namespace matwright {

// The least side of a leftover worth keeping: the smallest catalogue print.
inline constexpr Length usefulPrintSide = Length::inches(2);

// All these prints on one sheet, by a cutting plan: pieces are indexes of `prints`. Nothing where
// none was found within `steps`, or once `stop` is asked for.
std::optional<SheetPlan> packed(const CutSheet& sheet, const std::vector<Size>& prints,
                                std::uint64_t steps, const std::stop_token& stop = {});

}  // namespace matwright
