// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/sketch/sketch.h"

namespace matwright::check {

// A place a line must pass, in mm from the sheet's top left corner, and the direction across it.
struct Sample {
    double x;
    double y;
    double nx;
    double ny;
    bool nearCorner = false;  // the line goes here, but another part of it is too near to measure
};

// One trim line or mat edge.
struct ExpectedLine {
    std::string name;
    std::vector<Sample> samples;
};

// Every trim line and mat edge of the sketch, every half millimetre, worked out here from the
// pieces' figures alone: nothing of the program's outline code takes part.
std::vector<ExpectedLine> expectedLines(const Sketch& sketch);

}  // namespace matwright::check
