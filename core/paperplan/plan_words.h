// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/paperplan/paper_job.h"

namespace matwright {

// What is said of one piece beside its cuts; `hasUp`: its paper has an up direction.
std::vector<std::string> pieceSentences(const PaperPiece& piece, bool hasUp);
// Why a piece is not cut, with what to do.
std::string whyNotCut(const PaperPiece& piece, const PaperJob& job, Scale scale);
// "1 sheet of kraft cardstock, 12 × 12 in"; equal sheets in one line.
std::vector<std::string> buyingLines(std::span<const PaperSheet> sheets, Scale scale);
// About the whole: papers of which nothing is on hand.
std::vector<std::string> planRemarks(const PaperJob& job);

}  // namespace matwright
