// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>

#include "core/sketch/sketch.h"

namespace matwright::app {

// The smallest distance, straight across or straight down, from the outermost bounds of one of
// these pieces to those of another piece beside it; negative where two overlap. Papers do not
// count: they lie under things. Nothing where none has a piece beside it.
std::optional<Length> tightestGap(const Sketch& sketch, std::span<const PieceId> ids);

}  // namespace matwright::app
