// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/measure/length_text.h"
#include "core/template/scene.h"

namespace matwright {

// Which distances a label says in words, because no dimension line has room.
struct ToldDistances {
    bool left = false;
    bool top = false;
    bool any() const { return left || top; }
};

// "1 · lighthouse", "print 4 × 6 in", "trim …", "mat …", "turned 15°", "left 1 1/2, top 2" ("mat
// left …" where the distance goes to a mat's edge).
std::vector<std::string> labelLines(const ScenePiece& piece, Scale scale, ToldDistances told,
                                    std::size_t longestName);
// The same in one row.
std::string labelRow(const ScenePiece& piece, Scale scale, ToldDistances told);

}  // namespace matwright
