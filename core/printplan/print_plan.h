// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/printplan/plan_input.h"
#include "core/sheets/cut_planner.h"
#include "core/sheets/cut_steps.h"

namespace matwright {

// Which prints come out on which sheets of which printer, and how the sheets are cut.

struct PlannedPrint {
    std::optional<std::size_t> page;   // index of the input's pages
    std::optional<std::size_t> ahead;  // or of its prints ahead
    Print print;
    Photo photo;
    std::optional<PrinterId> printer;     // wished
    std::optional<PrinterPaperId> paper;  // wished
    friend bool operator==(const PlannedPrint&, const PlannedPrint&) = default;
};

// A print on hand that a page takes instead of a new one: the same to the last value.
struct TakenPrint {
    std::size_t page = 0;
    Print print;
    PrintOnHandId onHand;
    friend bool operator==(const TakenPrint&, const TakenPrint&) = default;
};

// A print that was made for this page before, and is used there: nothing is to be done.
struct TherePrint {
    std::size_t page = 0;
    Print print;
    PrintOnHandId used;
    friend bool operator==(const TherePrint&, const TherePrint&) = default;
};

// The same photo in the same size is on hand, but shows something else. Only told; a new one is
// planned.
struct AlikePrint {
    std::size_t print = 0;  // index of PrintPlan::prints
    PrintOnHandId onHand;
    friend bool operator==(const AlikePrint&, const AlikePrint&) = default;
};

// A print that no paper takes.
struct LeftOutPrint {
    std::size_t print = 0;  // index of PrintPlan::prints
    std::string sentence;   // why, and what to do
    friend bool operator==(const LeftOutPrint&, const LeftOutPrint&) = default;
};

// What more fits on a sheet: `count` prints of this size, besides all that is there.
struct RoomFor {
    Size size;  // upright
    int count = 1;
    friend bool operator==(const RoomFor&, const RoomFor&) = default;
};

struct PrintSheet {
    PrinterId printer;
    PrinterPaperId paper;
    Size size;       // of the paper, as it is drawn
    SheetPlan cuts;  // pieces are indexes of PrintPlan::job's pieces, which are the prints
    Gang gang;       // the same places, for rendering; prints are indexes of PrintPlan::prints
    // Largest first: sizes the person uses, then the catalogue's. Each by itself; checked by
    // packing the whole sheet. At most mostRoomsFor.
    std::vector<RoomFor> room;
    bool borderless = true;  // whether the paper was printed up to its edges when it was planned
    friend bool operator==(const PrintSheet&, const PrintSheet&) = default;
};
inline constexpr std::size_t mostRoomsFor = 6;

struct PrintPlan {
    std::vector<PlannedPrint> prints;  // to be printed; each on one sheet, or left out
    std::vector<PrintSheet> sheets;
    std::vector<TakenPrint> taken;
    std::vector<TherePrint> there;
    std::vector<AlikePrint> alike;
    std::vector<LeftOutPrint> leftOut;
    // The same as a cutting job, a piece a print: faultsOf(cutPlanOf(plan), job) is empty.
    CutJob job;
    // "2 sheets, proved fewest", "2 sheets, proved fewest, 1 print not printed"; "nothing to print"
    // where there are no prints at all.
    std::string bound;
    bool provedCheapest = false;  // of the sheets for the prints that are not left out
    bool cancelled = false;
    Length bleed;  // of the input
    friend bool operator==(const PrintPlan&, const PrintPlan&) = default;
};

struct PrintPlanLimits {
    CutLimits cuts;
    std::uint64_t roomSteps = 200'000;  // for each question what more fits
};

// Takes what is on hand, then plans all the rest over all papers of all printers: fewest sheets
// where papers cost the same, else cheapest. Prints with a wish are planned on what is wished
// first, narrow wishes before wide ones, and others that may come out there fill the room beside
// them where that is cheaper. Prints ahead go where room
// is left, those without room are left out. A plan is whole whenever it ends; papers that cannot be
// used (findFault()) are an error with the paper's name.
//
// Errors: OutOfRange for more than maxPiecesOfJob prints, a wish for a page that is not there, and
// unsound printers; BadText or OutOfRange for pages and prints that could not be recorded once they
// are printed (pageNameFault(), findFault(MadePrint)).
Result<PrintPlan> planPrints(const PlanInput& input, const PrintPlanLimits& limits = {},
                             const std::stop_token& stop = {});

CutPlan cutPlanOf(const PrintPlan& plan);

// What is wrong with a plan, looked at anew: the cuts (faultsOf), every print of the pages once (on
// a sheet, taken, there or left out), wishes kept, places equal to the pieces of the cuts and
// inside what the printer reaches, papers at hand. Empty: sound.
std::vector<std::string> faultsOf(const PrintPlan& plan, const PlanInput& input);

// "room for one more 3 × 4 in", "room for 2 more 2 × 2 in"
std::string roomText(const RoomFor& room);
// How the sheet is cut, in the order it is done; see core/sheets/cut_steps.h.
SheetSteps stepsOf(const PrintSheet& sheet, Scale scale);

}  // namespace matwright
