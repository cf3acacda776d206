// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "core/error/error.h"
#include "core/measure/rect.h"

namespace matwright {

// What one axis measured: `wished` apart on the sheet as it was sent to the printer, `measured`
// apart on the paper. What is to come out true is sent wished / measured times as large.
struct AxisMeasure {
    Length wished = Length::inches(1);
    Length measured = Length::inches(1);
    friend bool operator==(const AxisMeasure&, const AxisMeasure&) = default;

    // wished / measured, derived.
    double factor() const { return ratio(wished, measured); }
    // length * wished / measured to the nearest tick.
    Length applied(Length length) const;
};

// How a printer's sheets are to be sent so that they come out true: an exact ratio an axis.
struct Correction {
    AxisMeasure across;
    AxisMeasure down;
    std::string date;  // when it was measured, "2026-07-14"
    friend bool operator==(const Correction&, const Correction&) = default;
};

// A printer outside of this is set up wrongly (to fit the page, to another paper), and a correction
// would hide it. Enlargement for borderless printing is usually 1 to 4 % (common practice, no
// source).
inline constexpr double smallestCorrection = 0.8;
inline constexpr double largestCorrection = 1.25;

// What is wrong with it, or nothing: both measures positive and at most 60 in, the factors within
// the limits, the date "YYYY-MM-DD".
std::optional<Error> findFault(const Correction& correction);

// From what a person measured on a test sheet. Errors: OutOfRange with what to look at in the
// printer's settings.
Result<Correction> correctionOf(Size wished, Size measured, const std::string& date);

// Where a place on the paper is to be sent so that it comes out there: scaled about the paper's
// middle, because printers enlarge about it. May reach outside of the paper. Each edge is within
// half a tick; edges that touch go on touching.
Rect corrected(const Rect& place, Size paper, const Correction& correction);
Point corrected(Point place, Size paper, const Correction& correction);

// What happens at the paper's edge on each side: a printer that enlarges pushes a strip of what is
// sent over the edge, so that pictures up to the edge have to go on for `bleed` beyond what is
// corrected; of one that shrinks, `lost` of each side cannot be sent and comes out white.
struct EdgeEffect {
    Length bleedAcross;
    Length bleedDown;
    Length lostAcross;
    Length lostDown;
    friend bool operator==(const EdgeEffect&, const EdgeEffect&) = default;
};
EdgeEffect edgeEffect(Size paper, const Correction& correction);

// "Comes out 2.0 % too large across and 1.2 % too large down; it is sent so that this is made up
// for. Pictures up to the edge go on 1.0 mm beyond it, so that no white edge is left." The last
// sentence is said of paper without borders only.
std::string correctionText(Size paper, bool borderless, const Correction& correction);

}  // namespace matwright
