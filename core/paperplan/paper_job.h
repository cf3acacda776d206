// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <span>
#include <string>
#include <vector>

#include "core/paperplan/paper_plan.h"

namespace matwright {

// One paper of the job: everything of one name.
struct JobPaper {
    std::string name;  // of the papers on hand, else the page's words
    bool isOnHand = false;
    bool hasUp = false;
    Colour colour = PaperOnHand().colour;
};

// Pieces of one size and sheets of one size and price are one kind for the engine, which then has
// less to search; which piece and which sheet is which is settled afterwards.
struct PieceKindOfJob {
    CutPiece cut;                      // its count: how many there are
    std::vector<std::size_t> members;  // indexes of the plan's pieces
};
struct SheetKindOfJob {
    CutSheet cut;
    std::vector<PaperSource> members;  // one a sheet; of those to buy a single one for all
};

struct PaperJob {
    std::vector<JobPaper> papers;
    std::vector<PieceKindOfJob> pieces;
    std::vector<SheetKindOfJob> sheets;

    CutJob cutJob(const CutRules& rules) const;
};

// What an entry on hand costs and everything else; see PaperPlan.
std::int64_t sheetPrice(Size size, bool isBought);
inline constexpr std::int64_t scrapPrice = 1;
inline constexpr std::int64_t middlePrice = 2;

PaperJob paperJob(std::span<const PaperPiece> pieces, std::span<const PaperOnHand> onHand,
                  const PaperPlanOptions& options);

// Lessens the middles on offer to those whose mats the plan cuts; true where it used more of them,
// so that it has to be planned anew.
bool withdrawMiddles(PaperJob& job, const CutPlan& plan, std::span<const PaperPiece> pieces);

}  // namespace matwright
