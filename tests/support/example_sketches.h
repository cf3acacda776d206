// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/sketch/sketch.h"

namespace matwright::test {

// The sketches in examples/, built in code: the files there are what saving these gives.
struct ExampleSketch {
    std::string file;  // inside examples/
    Sketch sketch;
    bool metric = false;  // measured for a millimetre trimmer
};
std::vector<ExampleSketch> exampleSketches();

}  // namespace matwright::test
