// SPDX-License-Identifier: MIT
#include "core/tone/tone.h"

namespace matwright {

Histogram histogramOf(const Raster& sample) {
    Histogram histogram;
    auto& [red, green, blue] = histogram.counts;
    for (std::size_t i = 0; i + 2 < sample.pixels.size(); i += 3) {
        ++red[sample.pixels[i]];
        ++green[sample.pixels[i + 1]];
        ++blue[sample.pixels[i + 2]];
    }
    return histogram;
}

}  // namespace matwright
