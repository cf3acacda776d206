// SPDX-License-Identifier: MIT
#include "core/measure/catalogue.h"

namespace matwright {

namespace {

std::int64_t area(Size size) {
    return size.width.ticks() * size.height.ticks();
}

bool isIn(Length step, Size size) {
    return size.width.isMultipleOf(step) && size.height.isMultipleOf(step);
}

// The way up of `print` that holds the trim, preferring the way the trim lies.
std::optional<Size> holding(Size print, Size trim) {
    const Size asTheTrimLies = trim.width > trim.height ? print.turned() : print;
    if (asTheTrimLies.contains(trim)) {
        return asTheTrimLies;
    }
    return std::nullopt;
}

}  // namespace

std::optional<Size> smallestPrintFor(Size trim) {
    std::optional<Size> best;
    for (const NamedSize& print : printSizes()) {
        if (isIn(Length::millimetres(10), print.size) && !isIn(Length::millimetres(1), trim)) {
            continue;
        }
        const auto held = holding(print.size, trim);
        if (held && (!best || area(*held) < area(*best))) {
            best = held;
        }
    }
    return best;
}

Size printSizeFor(Size trim) {
    return smallestPrintFor(trim).value_or(trim);
}

}  // namespace matwright
