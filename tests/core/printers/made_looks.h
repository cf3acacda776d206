// SPDX-License-Identifier: MIT
#pragma once

#include <random>

#include "core/printers/prints_on_hand.h"

namespace matwright::test {

// A 3x4 print of photo `number`.
inline PrintLook madeLook(int number) {
    PrintLook look;
    look.photo = contentKeyOf(std::to_string(number));
    look.paper = {Length::inches(3), Length::inches(4)};
    look.trim = Rect::at({}, look.paper);
    look.window = look.paper;
    return look;
}

inline MadePrint madePrint(int number, const std::string& page = "") {
    return {madeLook(number), "photo " + std::to_string(number) + ".jpg", page};
}

inline PrintLook randomLook(std::mt19937_64& random) {
    const auto below = [&](std::int64_t n) {
        return static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(n));
    };
    const auto small = [&](std::int64_t n) { return static_cast<std::int32_t>(below(n)); };
    const auto side = [&] { return Length::fromTicks(1 + below(30 * Length::ticksPerInch)); };
    PrintLook look = madeLook(static_cast<int>(below(1000)));
    look.paper = {side(), side()};
    look.trim = Rect::at({Length::fromTicks(below(1000)), Length::fromTicks(below(1000))},
                         {side(), side()});
    look.border = Length::fromTicks(below(100'000));
    look.bleed = Length::fromTicks(below(10'000));
    look.window = {side(), side()};
    look.crop = {small(Crop::one + 1), small(Crop::one + 1), Crop::one + small(Crop::one), small(4),
                 Angle::millidegrees(below(45'001))};
    look.to = 1 - static_cast<double>(below(1000)) / 3000;
    look.from = static_cast<double>(below(1000)) / 3001;
    look.tone = {below(2) == 1,    small(201) - 100, small(201) - 100,
                 small(201) - 100, small(201) - 100, small(101)};
    return look;
}

}  // namespace matwright::test
