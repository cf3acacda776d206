// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/paperplan/paper_job.h"

namespace matwright {

// The engine's plan of kinds with every piece and every sheet told apart.
struct ToldApart {
    CutJob job;
    CutPlan plan;                        // of that job; a middle after the sheet of its mat
    std::vector<std::size_t> jobPieces;  // by the job's pieces: index of the plan's pieces
    std::vector<PaperSource> sources;    // by the plan's sheets
    std::vector<std::size_t> uncut;      // indexes of the plan's pieces
};
ToldApart toldApart(const PaperJob& job, const CutPlan& plan, const CutRules& rules,
                    std::span<const PaperPiece> pieces);

// The finished sheets in their order, with headings, names, notes and knife cuts.
std::vector<PaperSheet> paperSheets(const ToldApart& told, const PaperJob& job,
                                    std::span<const PaperPiece> pieces,
                                    std::span<const PaperOnHand> onHand,
                                    const PaperPlanOptions& options);

}  // namespace matwright
