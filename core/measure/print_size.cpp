// SPDX-License-Identifier: MIT
#include "core/measure/catalogue.h"

namespace matwright {

namespace {

std::int64_t area(Size size) {
    return size.width.ticks() * size.height.ticks();
}

bool isInWholeMillimetres(Size size) {
    const Length mm = Length::millimetres(1);
    return size.width.isMultipleOf(mm) && size.height.isMultipleOf(mm);
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
        if (isInWholeMillimetres(print.size) && !isInWholeMillimetres(trim)) {
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
