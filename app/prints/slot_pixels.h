// SPDX-License-Identifier: MIT
#pragma once

#include <stop_token>

#include "core/making/making.h"
#include "core/prints/rendering.h"

namespace matwright::app {

// The print of a slot as it goes into the file, at 300 ppi; of a slot across the fold both parts,
// as they meet. Any thread.
Result<Raster> finalPixelsOf(const Making& making, PieceId slot, const std::stop_token& stop);

}  // namespace matwright::app
