// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/sheets/search/layout.h"
#include "core/sheets/search/sheet_packer.h"

namespace matwright::sheets {

// The largest strip, from edge to edge of the sheet, that stays in one piece; 0 where none is wide
// enough to be useful. In square units.
std::int64_t leftoverOf(const Layout& layout, const Stock& stock, const Reduced& reduced);

// The second goal. Each sheet's pieces are laid into the box that leaves the largest strip (all
// boxes are looked at up to SheetPacker::exactPieces pieces, above that strips are narrowed by
// halving); then pieces go over from the sheet that could keep the most to sheets with room for
// them, as long as its leftover grows. The sheets stay the same. Not proved best.
std::vector<FilledSheet> withGatheredLeftover(const Reduced& reduced, SheetPacker& packer,
                                              std::vector<FilledSheet> filled, Work& work);

}  // namespace matwright::sheets
