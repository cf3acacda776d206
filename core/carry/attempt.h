// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "core/carry/photo_class.h"
#include "core/carry/relation.h"
#include "core/carry/springs.h"

namespace matwright::carry {

// What is carried, worked out once.
struct Source {
    Source(const Sketch& carried, const PageSetup& target, std::optional<Length> trimmerStep);

    const Sketch& sketch;
    const PageSetup& to;
    std::vector<Footprint> pieces;
    std::vector<Relation> relations;
    // How much longer things become, judged by the areas inside the margins; 1 where that is nearly
    // so, because a design need not change for a sliver.
    double scale = 1;
    Length step;                // that sides go onto: see carriedOver()
    bool isNewMeasure = false;  // the sketch is measured in another step
    std::vector<PhotoClass> photos;
};

// The sketch carried with one choice of prints, and how good that is.
struct Attempt {
    Sketch sketch;
    std::vector<std::size_t> lost;  // indices of relations
    double cost = 0;                // 0 would be perfect
};
// `choices` are one a class of photos.
Attempt attempt(const Source& source, const std::vector<PhotoChoice>& choices,
                Springs::Shares shares = Springs::Shares::InProportion);

// Above this many pieces relations are not looked for, and scaledAttempt() has to do.
inline constexpr std::size_t mostRelatedPieces = 60;

// Every piece by itself at scale about its middle: what is done for crowds. Cost and losses are not
// worked out.
Attempt scaledAttempt(const Source& source);

// The attempt with the least cost that a search from the nearest choices finds, a class at a time;
// of many pieces only the nearest prints and those they have are tried.
Attempt bestAttempt(const Source& source);

}  // namespace matwright::carry
