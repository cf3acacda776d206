// SPDX-License-Identifier: MIT
#include "tests/support/starters/starters.h"

#include <iterator>

namespace matwright::test {

std::vector<Starter> starters() {
    std::vector<Starter> all;
    for (const auto part : {fewPhotosOn12x12, somePhotosOn12x12, manyPhotosOn12x12, airyOn12x12,
                            onLetterUpright, onLetterLying, onOtherPages, onDoublePages}) {
        Starters some = part();
        all.insert(all.end(), std::make_move_iterator(some.begin()),
                   std::make_move_iterator(some.end()));
    }
    return all;
}

bool isMetric(const Starter& starter) {
    const Length sixteenth = Length::inches(0, 1, 16);
    return !starter.sketch.page.size.width.isMultipleOf(sixteenth);
}

}  // namespace matwright::test
