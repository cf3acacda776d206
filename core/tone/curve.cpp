// SPDX-License-Identifier: MIT
#include "core/tone/curve.h"

namespace matwright {

namespace {

// Of a positive divisor and a number that is not negative.
std::int64_t dividedRounded(std::int64_t number, std::int64_t divisor) {
    return (number + divisor / 2) / divisor;
}

}  // namespace

std::int64_t bent(std::int64_t tone, std::int64_t bend) {
    const std::int64_t divisor = bend * (fullTone - tone) + oneBend * fullTone;
    return dividedRounded(tone * oneBend * fullTone, divisor);
}

std::int64_t oppositeBend(std::int64_t bend) {
    return -bend * oneBend / (oneBend + bend);
}

std::int64_t bendBetween(std::int64_t from, std::int64_t to) {
    return (from - to) * oneBend * fullTone / (to * (fullTone - from));
}

std::int64_t contrasted(std::int64_t tone, std::int64_t bend) {
    const bool isUpper = 2 * tone > fullTone;
    const std::int64_t below = isUpper ? fullTone - tone : tone;
    // Rounded down, so that the halves do not cross in the middle.
    const std::int64_t half = bent(2 * below, bend) / 2;
    return isUpper ? fullTone - half : half;
}

}  // namespace matwright
