// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/making/making.h"
#include "core/printers/prints_on_hand.h"
#include "core/prints/print_job.h"

namespace matwright {

// What a plan of sheets of photo paper is made from: a value, so that the same input gives the same
// plan.

struct PlanPage {
    std::string name;  // not empty for pages whose prints are made
    Making making;
    friend bool operator==(const PlanPage&, const PlanPage&) = default;
};

// Where a person wants the prints of a slot to come out: by this printer, or on this paper of it.
struct PrintWish {
    std::size_t page = 0;  // index of PlanInput::pages
    PieceId slot;
    PrinterId printer;
    std::optional<PrinterPaperId> paper;
    friend bool operator==(const PrintWish&, const PrintWish&) = default;
};

// A print made ahead, because a sheet has room for it: it is kept on hand.
struct AheadPrint {
    Photo photo;
    Print print;
    std::string why;  // "favourite", or the name of the page that waits for it
    friend bool operator==(const AheadPrint&, const AheadPrint&) = default;
};

struct PlanInput {
    std::vector<PlanPage> pages;    // whose prints are made
    std::vector<PlanPage> waiting;  // whose photos may fill what room is left
    std::vector<PrintWish> wishes;
    std::vector<AheadPrint> ahead;    // put into the room that is left; never a reason for a sheet
    std::vector<Printer> printers;    // those to print with; printers without papers are fine
    std::vector<PrintOnHand> onHand;  // of state OnHand; others are passed over
    // Prints of state Used: what a page of the same name has already (equal to the last value) is
    // not printed again. To have it anew, waste the print.
    std::vector<PrintOnHand> used;
    std::set<ContentKey> printedPhotos;  // are no longer offered as favourites
    std::vector<Size> usedSizes;         // print sizes the person likes, besides those of `pages`
    Length bleed;                        // of printsOf()
    friend bool operator==(const PlanInput&, const PlanInput&) = default;
};

// What decides what a print of this photo shows. `bleed` is the one that printsOf() and the
// printing were given; it counts as far as it is seen: where the paper goes on beyond the trim and
// there is no white border.
PrintLook lookOf(const Print& print, const Photo& photo, Length bleed = {});

}  // namespace matwright
