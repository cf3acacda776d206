// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/paperplan/paper_job.h"

namespace matwright {

// What is said of one piece beside its cuts; `hasUp`: its paper has an up direction.
std::vector<std::string> pieceSentences(const PaperPiece& piece, bool hasUp);
// Why a piece is not cut, with what to do. `endedEarly`: the search was not at its end, so that
// looking longer may find room for it.
std::string whyNotCut(const PaperPiece& piece, const PaperJob& job, Scale scale,
                      bool endedEarly = false);
// boundText() of a plan of papers, whose prices are made up and so say nothing to the person:
// "6 sheets, 1 to buy; not proved cheapest".
std::string paperBound(const CutAnswer& answer, const CutJob& job,
                       std::span<const PaperSheet> sheets);
// "1 sheet of kraft cardstock, 12 × 12 in"; equal sheets in one line.
std::vector<std::string> buyingLines(std::span<const PaperSheet> sheets, Scale scale);
// About the whole: papers of which nothing is on hand, and leftovers whose paper's name is too long
// for the list.
std::vector<std::string> planRemarks(const PaperJob& job, std::span<const PaperSheet> sheets);

}  // namespace matwright
