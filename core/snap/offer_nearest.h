// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "core/snap/index.h"

namespace matwright::snapping {

// Offers to bring the box's line at `from`, which spans `boxAcross`, onto the nearest of the
// neighbours' lines on each side, if within reach; `words` come before the neighbour's label.
void offerNearest(std::vector<SnapCandidate>& out, const SnapContext::Index& index,
                  const EdgeList& lines, Axis axis, Length from, Interval boxAcross,
                  const SnapSettings& settings, std::string_view words, int rank);

}  // namespace matwright::snapping
