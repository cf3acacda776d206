// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/sheets/cut_steps.h"

namespace matwright {

// The middle of a piece, cut out by hand after the trimmer's cuts.
struct KnifeCut {
    int part = 0;      // the piece: index of the sheet's parts
    Rect area;         // what is cut out, on the sheet
    std::string what;  // what becomes of it: "it is sheet 3"
    friend bool operator==(const KnifeCut&, const KnifeCut&) = default;
};

// One planned sheet with all that is said of it: what the pictures and the pages of a plan are made
// of, for craft paper and for prints alike. The plan is sound (faultsOf() is empty).
struct PlannedSheet {
    std::string heading;  // "Sheet 1: kraft cardstock, 12 × 12 in, a scrap"
    Size size;
    SheetPlan plan;
    SheetSteps steps;  // of that plan, in the scale below
    Scale scale = Scale::SixteenthInch;
    std::map<int, std::string> names;  // by the plan's pieces; one without is "piece 2"
    std::vector<KnifeCut> knifeCuts;
    std::vector<std::string> notes;  // sentences said under the steps
    Colour colour{236, 228, 214};    // of the paper
    bool hasUp = false;              // its pattern has an up direction, shown by an arrow
};

// What the parts of a sheet are called in pictures and sentences, by part: pieces are "A", "B", …
// "Z", "AA", … in the order in which they lie in the tree of cuts, so that the pieces in any part
// are neighbours: "A–C". Empty where no piece is in the part.
std::vector<std::string> partLetters(const SheetPlan& plan);

// By the plan's piece; "piece 2" where it has no name.
std::string pieceName(const PlannedSheet& sheet, int piece);

// "A: mat under Beach, 4 1/4 × 6 1/4 in", by letter.
std::vector<std::string> pieceLines(const PlannedSheet& sheet);

// "Lay the sheet 8 1/2 in wide and 11 in high. Set the trimmer to 4 1/4 in and cut the sheet: A and
// the part with B–D." "At the same setting cut the part with B–D, turned with its top edge to the
// left: …". Every sentence says itself how its part lies where that may not be as it came off;
// edges are those of the sheet's picture, and the trimmer measures from the left. After the cut
// that finishes a piece the sentence says by how much it comes out too long or short where settings
// are not on the scale, its own or those of the cuts before: "… B comes out 1/32 in too short from
// top to bottom."
std::vector<std::string> stepSentences(const PlannedSheet& sheet);
// One of them, counted from 0.
std::string stepSentence(const PlannedSheet& sheet, std::size_t step);

// "With a knife cut the middle out of A, 1/2 in inside its edges on the left, …: it is sheet 3.",
// with the caution.
std::string knifeSentence(const PlannedSheet& sheet, const KnifeCut& cut);

// Of trimmers and knives, one sentence each; care as the README has it.
inline constexpr const char* bladeCaution =
    "Cut away from your hand with a fresh blade, on a cutting mat; keep children away and store "
    "blades closed.";
inline constexpr const char* knifeCaution =
    "Cut away from your hand, along a metal rule, on a cutting mat.";

}  // namespace matwright
