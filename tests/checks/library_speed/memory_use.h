// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace matwright::test {

// Of this program, in bytes.
double residentBytes();
double peakBytes();

struct MemoryUse {
    double warm = 0;
    double peak = 0;
};
// Starts this program again with `arguments` (joined by "' '") and reads the two numbers it prints.
MemoryUse memoryUse(const std::string& arguments);

}  // namespace matwright::test
