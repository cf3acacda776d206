// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "core/carry/relation.h"
#include "core/carry/springs.h"

namespace matwright::carry {

// How a piece would like to be along one axis.
struct Wish {
    enum class Firmness {
        Fixed,  // has to be exactly so long: turned, both axes hang together
        Firm,   // unless a relation says otherwise: round things, ornaments
        Photo,  // a print's side: the same, and if it has to give, then little
        Free,   // stretches like the gaps do
    };
    Firmness firmness = Firmness::Free;
    Length length;  // of the trim
    // From the trim to the outermost edge.
    Length lowBorder;
    Length highBorder;
    std::optional<Length> longest;  // what its print holds
    Length least;
    double weight = 1;  // how much it resists stretching, against an open gap
};

// Carries all trims along one axis.
struct AxisTask {
    Axis axis = Axis::X;
    const std::vector<Footprint>& before;
    const std::vector<Relation>& relations;  // of both axes
    const PageSetup& from;
    const PageSetup& to;
    std::vector<Wish> wishes;  // one a footprint
    Length step;               // of the trimmer
    Springs::Shares shares = Springs::Shares::InProportion;
    // Of gaps and margins, where they are measured in other units than the step.
    Length mayBeShort;
};

// The new trims. Relations are taken in the order of their kinds, each if it does not contradict
// the earlier ones; what is left free settles like springs (springs.h) and is rounded to the step,
// or finer where that would break a bound, by more than what may be short.
std::vector<Interval> settled(const AxisTask& task);

}  // namespace matwright::carry
