// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstdio>
#include <functional>
#include <limits>

namespace matwright::test {

// What a bar check that prints timings returns where they would mean nothing: told to ctest as
// SKIP_RETURN_CODE.
inline constexpr int skippedBar = 77;

// Timings mean something only in an optimised build without sanitizers. Says so where this is none.
inline bool timingsMeanNothing() {
#if !defined(NDEBUG) || defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
    std::puts("SKIPPED: timings mean something only in a release build without sanitizers");
    return true;
#else
    return false;
#endif
}

// The lowest of up to three measured ratios; the first within the bar is enough. What else the
// machine does can only add to a ratio's noise, not make slow code fast three medians long.
inline double bestRatio(double bar, const std::function<double()>& measured) {
    double best = std::numeric_limits<double>::infinity();
    for (int attempt = 0; attempt < 3 && best > bar; ++attempt) {
        best = std::min(best, measured());
    }
    return best;
}

}  // namespace matwright::test
