// SPDX-License-Identifier: MIT
#pragma once

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <string>

namespace matwright::app {

// A number from `low` to `high`. Unlike CLI::Range, which looks for numbers outside, it refuses
// what is no number ("nan") too.
inline CLI::Validator numberWithin(double low, double high) {
    const auto check = [low, high](const std::string& text) {
        double number = 0;
        const bool isWithin =
            CLI::detail::lexical_cast(text, number) && number >= low && number <= high;
        return isWithin ? std::string() : fmt::format("It has to be from {} to {}.", low, high);
    };
    return {check, fmt::format("[{} - {}]", low, high)};
}

}  // namespace matwright::app
