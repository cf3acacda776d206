// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <expected>
#include <string>
#include <string_view>
#include <vector>

#include "core/measure/angle.h"
#include "core/measure/rect.h"

namespace matwright {

// Values as the sketch file spells them. Reading takes the whole text or nothing: no spaces around
// a number, no plus sign, no exponent, independent of the locale.

enum class NumberFault { NotANumber, OutOfRange };
template <typename T>
using FromText = std::expected<T, NumberFault>;

// A whole number within low..high, both included.
FromText<std::int64_t> wholeFromText(std::string_view text, std::int64_t low, std::int64_t high);

// Ticks within +-Length::coordinateLimit().
FromText<Length> lengthFromText(std::string_view text);
std::string lengthToText(Length length);

// Degrees from 0 to below 360 with at most three decimals: "90", "12.5", "359.999".
FromText<Angle> angleFromText(std::string_view text);
std::string angleToText(Angle angle);

// "x,y x,y …" in ticks, single spaces between; any number of corners, at least one.
FromText<std::vector<Point>> cornersFromText(std::string_view text);
std::string cornersToText(const std::vector<Point>& corners);

}  // namespace matwright
