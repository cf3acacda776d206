// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <limits>
#include <string>

#include "core/photo/photo_source.h"
#include "core/prints/print_job.h"
#include "tests/support/temporary_folder.h"

// What the tests of finished prints share.

namespace matwright::test {

inline Print plainPrint(Size paper) {
    Print print;
    print.name = "1 A print";
    print.paper = paper;
    print.trim = Rect::at({}, paper);
    print.window = paper;
    return print;
}

// In dB, of two rasters of one size; infinite where they are equal.
inline double psnr(const Raster& one, const Raster& other) {
    if (one.size != other.size) {
        return 0;
    }
    double sum = 0;
    for (std::size_t i = 0; i < one.pixels.size(); ++i) {
        const double difference = one.pixels[i] - other.pixels[i];
        sum += difference * difference;
    }
    return sum > 0 ? 10 * std::log10(255.0 * 255.0 * static_cast<double>(one.pixels.size()) / sum)
                   : std::numeric_limits<double>::infinity();
}

}  // namespace matwright::test
