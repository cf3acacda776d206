// SPDX-License-Identifier: MIT
#include "tests/core/sheets/random_job.h"

namespace matwright::test {

CutJob randomJob(std::uint64_t seed, const RandomJobOptions& options) {
    std::mt19937_64 random(seed);
    const auto number = [&](int below) {
        return static_cast<int>(random() % static_cast<std::uint64_t>(below));
    };
    const auto eighths = [&](int least, int most) {
        return Length::inches(0, least + number(most - least + 1), 8);
    };
    CutJob job;
    job.rules.kerf = options.kerf;
    job.rules.stages = options.stages;
    for (int kind = 0; kind < options.kinds; ++kind) {
        job.pieces.push_back(
            {{eighths(8, 60), eighths(8, 60)}, 1 + number(options.mostCopies), number(2) == 0, 0});
    }
    for (int sheet = 1 + number(2); sheet > 0; --sheet) {
        CutSheet made{{eighths(64, 96), eighths(64, 96)}, std::nullopt, 1 + number(3), {}, 0};
        if (options.limitedStock) {
            made.atHand = 1 + number(3);
        }
        if (options.margins) {
            made.margin = {eighths(0, 2), eighths(0, 2), eighths(0, 2), eighths(0, 2)};
        }
        job.sheets.push_back(made);
    }
    return job;
}

Size inchSize(std::int64_t w, std::int64_t h) {
    return {Length::inches(w), Length::inches(h)};
}

}  // namespace matwright::test
