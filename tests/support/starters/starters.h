// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/sketch/sketch.h"

namespace matwright::test {

// The sketches in resources/starters/, built in code: the files there are what saving these gives.
struct Starter {
    std::string file;  // inside resources/starters/
    Sketch sketch;
};
std::vector<Starter> starters();
// Whether it is measured for a millimetre trimmer.
bool isMetric(const Starter& starter);

// The parts of the set, one source file each.
using Starters = std::vector<Starter>;
Starters fewPhotosOn12x12();
Starters somePhotosOn12x12();
Starters manyPhotosOn12x12();
Starters airyOn12x12();
Starters onLetterUpright();
Starters onLetterLying();
Starters onOtherPages();
Starters onDoublePages();

}  // namespace matwright::test
