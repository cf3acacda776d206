// SPDX-License-Identifier: MIT
#pragma once

#include <stop_token>
#include <string>
#include <string_view>
#include <vector>

#include "core/measure/length_text.h"
#include "core/sketch/sketch.h"

namespace matwright {

// "Paper" below is a strip or a block. Turned pieces are forgiven 1 tick of rounding everywhere.
enum class CheckKind {
    OffPage,     // some of the piece, mats included, lies outside the page
    OverMargin,  // a photo slot with its mats, a title or journaling past the margin of its page,
                 // on sides where it is not off the page already (paper and embellishments may run
                 // to the page edge)
    AcrossFold,  // a photo slot with its mats, or journaling, across the fold of a double page
    PhotosOverlap,  // two photo slots, mats included, overlap, or a photo's trim lies under paper;
                    // told once, for the lower piece
    Hidden,         // more than a quarter of a photo's trim, a title or journaling is under other
                    // pieces; paper or an embellishment only when nothing of it can be seen
    OffScale,       // a side that the trimmer's scale does not have: of the trim, else of the
                    // innermost mat that has one; photo slots and paper only
    NoSuchPrintSize,  // the print is not in the catalogue
    TrimOverPrint,    // the trim does not fit in the print, as it lies
    CoarsePrint,      // a photo has too few pixels for its print; only a page in the making has it
};

struct CheckSettings {
    Length trimmerStep = Length::inches(0, 1, 16);  // positive
    Scale scale = Scale::SixteenthInch;             // of the figures in the sentences
    friend bool operator==(const CheckSettings&, const CheckSettings&) = default;
};

// Something a person may want to mend; never an error. `sentence` names the piece, says what is
// wrong by how much and what to do: "3 · photo slot 4 × 6 in runs 1/8 in over the left margin; move
// it right or make it smaller." The number is the piece's pieceNumber().
struct CheckFinding {
    CheckKind kind;
    std::vector<PieceId> pieces;  // the first is the one to select
    std::string sentence;
    friend bool operator==(const CheckFinding&, const CheckFinding&) = default;
};

// The findings in order of the pieces from bottom to top, then of CheckKind. Empty is good. The
// same sketch and settings always give the same findings. Once a stop is requested it returns soon,
// with what it found until then.
std::vector<CheckFinding> checkSketch(const Sketch& sketch, const CheckSettings& settings,
                                      const std::stop_token& stop = {});

// A stable word for scripts: "off-page", "over-margin", …
std::string_view checkWord(CheckKind kind);

}  // namespace matwright
