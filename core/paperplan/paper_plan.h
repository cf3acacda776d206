// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <variant>
#include <vector>

#include "core/cutpicture/planned_sheet.h"
#include "core/paperplan/paper_pieces.h"
#include "core/paperplan/paper_progress.h"
#include "core/papers/papers_store.h"

namespace matwright {

struct PaperPlanOptions {
    // Sizes every paper can be bought in, as many as are needed; empty: only what is on hand.
    std::vector<Size> toBuy = std::vector<Size>(1, Size{Length::inches(12), Length::inches(12)});
    // What stays of a gutted mat under the edges of the layer above, on each side; 0 or more.
    Length glueEdge = Length::inches(0, 1, 2);
    Scale scale = Scale::SixteenthInch;  // of the trimmer
    CutRules rules;                      // its usefulSide says what goes back as a scrap
    CutLimits limits;
};

// Where a sheet comes from.
struct FromHand {
    PaperId id;
    friend bool operator==(FromHand, FromHand) = default;
};
struct ToBuy {
    friend bool operator==(ToBuy, ToBuy) = default;
};
struct FromMiddle {
    std::size_t piece = 0;  // the mat it is the middle of: index of the plan's pieces
    friend bool operator==(FromMiddle, FromMiddle) = default;
};
using PaperSource = std::variant<FromHand, ToBuy, FromMiddle>;

struct PaperSheet {
    PaperSource source;
    std::string paper;            // in the words of the papers on hand, else of the page
    PlannedSheet planned;         // its pieces are indexes of the plan's pieces
    std::vector<Size> leftovers;  // that go back as scraps, as they lie on the sheet
};

struct PaperNotCut {
    std::size_t piece = 0;  // index of the plan's pieces
    std::string why;        // a sentence with what to do
    friend bool operator==(const PaperNotCut&, const PaperNotCut&) = default;
};

// How the papers of some pages are cut from what is on hand.
//
// Prices: buying a sheet is dearest, then whole sheets on hand by their area; a scrap or the middle
// of a mat costs next to nothing, but not nothing, so that they are used where they save a sheet
// and left alone where they save none. A middle counts as a sheet of its mat's paper; it is used
// only when its mat is cut. (A piece cut from a mat's middle is smaller than the mat, so no two
// mats can each wait for the other.)
//
// A paper with an up direction (where any entry of that name has one) is never turned: pieces
// stand on it as they stand on the page. So the middle of a mat of such a paper has its up
// direction where the mat has it.
struct PaperPlan {
    std::vector<PaperPiece> pieces;
    // In the order of cutting: a middle comes after the sheet its mat is cut from.
    std::vector<PaperSheet> sheets;
    std::vector<std::string> toBuy;  // "1 sheet of kraft cardstock, 12 × 12 in"
    std::vector<PaperNotCut> notCut;
    std::vector<std::size_t> needPaper;  // pieces that name no paper: indexes
    std::vector<std::string> remarks;    // sentences about the whole
    // "3 sheets, proved cheapest", "6 sheets, 1 to buy; not proved cheapest". Empty where nothing
    // that names a paper is to be cut.
    std::string bound;
    std::string key;  // planKey(): what is cut
    bool provedCheapest = false;
    bool endedByClock = false;
    bool cancelled = false;
    // The same for the independent checker: one entry a piece that names a paper and is to be cut
    // (jobPieces: its index in `pieces`), one a sheet.
    CutJob job;
    CutPlan plan;
    std::vector<std::size_t> jobPieces;

    // "To buy: 1 sheet of kraft cardstock, 12 × 12 in".
    std::vector<std::string> buyLines() const;
    // "Not cut: …" with what to do, "Needs a paper: …".
    std::vector<std::string> missingLines() const;
    // All of it as lines: the bound, what to buy, what is missing, the remarks.
    std::vector<std::string> summary() const;
    std::vector<PlannedSheet> plannedSheets() const;
};

// A whole plan at once, made better until it is proved or a limit is reached; `progress` and `stop`
// as planCuts() has them; progress goes back where the search begins anew. Safe off the window's
// thread. Errors: OutOfRange for what findFault(CutJob) refuses (more than maxPiecesOfJob pieces),
// a glue edge below 0 or above 10 in, sizes to buy out of a paper's bounds.
Result<PaperPlan> planPapers(std::span<const PaperPage> pages, std::span<const PaperOnHand> onHand,
                             const PaperPlanOptions& options, const std::stop_token& stop = {},
                             const std::function<void(const PaperProgress&)>& progress = {});

// What "cut this plan" does to the papers on hand; `onHand` is what the plan was made with. Bought
// sheets are cut as soon as they are bought: only their leftovers come into the list, and those of
// a middle look like the sheet of its mat. Leftovers of a paper whose name is too long for the list
// are left out. `once` is cutName() of the plan's key, so that it is cut once by whichever window
// or program.
PapersCut papersCut(const PaperPlan& plan, std::span<const PaperOnHand> onHand,
                    std::string_view label, std::string_view once = {});

}  // namespace matwright
