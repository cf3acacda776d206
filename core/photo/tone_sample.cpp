// SPDX-License-Identifier: MIT
#include "core/photo/photo_source.h"

namespace matwright {

Result<Histogram> toneSample(const std::filesystem::path& file, const std::stop_token& stop) {
    const auto sample = decodePhoto(file, toneSampleSide, stop);
    if (!sample) {
        return std::unexpected(sample.error());
    }
    return histogramOf(*sample);
}

}  // namespace matwright
