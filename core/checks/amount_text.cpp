// SPDX-License-Identifier: MIT
#include "core/checks/amount_text.h"

#include <fmt/format.h>

namespace matwright {

std::string amountText(Length amount, Scale scale) {
    const Length step = stepOf(scale);
    const Length shown = amount.roundedTo(step);
    if (shown.isZero()) {
        return "less than " + lengthText(step, scale);
    }
    return (shown == amount ? "" : "about ") + lengthText(shown, scale);
}

std::string closeText(Length length) {
    // 1/64 in is half a tick off the grid, so sums of them drift by a tick or two.
    const Length sixtyFourths =
        Length::inches(0, length.scaledRounded(64, Length::ticksPerInch).ticks(), 64);
    if (abs(length - sixtyFourths) <= Length::fromTicks(2)) {
        return exactText(sixtyFourths);
    }
    const std::string exact = exactText(length);
    return exact.contains('.') && exact.ends_with(" in")
               ? fmt::format("about {:.3f} in", length.toInches())
               : exact;
}

std::string steppedText(Length length, Length step) {
    if (step.isMultipleOf(Length::inches(0, 1, 32))) {
        return lengthText(length, Scale::ThirtySecondInch);
    }
    if (step.isMultipleOf(Length::hundredthMillimetres(50))) {
        return lengthText(length, Scale::HalfMillimetre);
    }
    return exactText(length);
}

std::string listText(const std::vector<std::string>& parts) {
    std::string out;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        out += i == 0 ? "" : i + 1 == parts.size() ? " and " : ", ";
        out += parts[i];
    }
    return out;
}

}  // namespace matwright
