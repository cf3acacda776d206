// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/measure/length_text.h"
#include "core/sketch/sketch.h"

namespace matwright {

enum class CheckKind {
    OffPage,        // some of the piece lies outside the page
    OverMargin,     // photo, title or journaling past the margin (papers may run to the page edge)
    AcrossFold,     // across the fold of a double page
    PhotosOverlap,  // two photo slots (mats included) overlap, or a photo lies under another piece
    Hidden,         // more than a quarter of the trim is under other pieces
    OffScale,       // a size that the trimmer's 1/16 in (or mm) scale does not have: trim or mat
    NoSuchPrintSize,  // the print is not in the catalogue
    TrimOverPrint,    // the trim does not fit in the print, as it lies
};

struct CheckSettings {
    Length trimmerStep = Length::inches(0, 1, 16);
    Scale scale = Scale::SixteenthInch;
    friend bool operator==(const CheckSettings&, const CheckSettings&) = default;
};

// Something a person may want to mend; never an error. `sentence` names the piece, says what is
// wrong by how much and what to do.
struct CheckFinding {
    CheckKind kind;
    std::vector<PieceId> pieces;  // the first is the one to select
    std::string sentence;
};

// The findings in order of the pieces from bottom to top, then of CheckKind. Empty is good.
std::vector<CheckFinding> checkSketch(const Sketch& sketch, const CheckSettings& settings);

// A stable word for scripts: "off-page", "over-margin", …
std::string_view checkWord(CheckKind kind);

}  // namespace matwright
