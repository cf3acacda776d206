// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "core/error/error.h"
#include "core/measure/length.h"
#include "core/measure/rect.h"

namespace matwright {

enum class Unit { Inch, Millimetre };

// How lengths are shown: the step a figure is rounded to.
enum class Scale {
    EighthInch,
    SixteenthInch,
    ThirtySecondInch,
    WholeMillimetre,
    HalfMillimetre,
};

constexpr Unit unitOf(Scale scale) {
    return scale == Scale::WholeMillimetre || scale == Scale::HalfMillimetre ? Unit::Millimetre
                                                                             : Unit::Inch;
}
Length stepOf(Scale scale);

// Reads what people write: "3", "3.5", "3,5", "3 1/2", "3-1/2", "3½", "1/8", "-1/4",
// each alone or with a unit: in, inch, inches, ", mm, cm. A number without a unit takes
// `bareUnit`. Decimal text is rounded to the nearest tick (exact wherever the grid is).
// Texts above 200 bytes are refused. Errors: BadText (with what was typed and an example to
// follow), OutOfRange beyond
// +-Length::coordinateLimit().
Result<Length> parseLength(std::string_view text, Unit bareUnit);

// The figure without a unit ("3 1/2", "89", "88.5"), to the nearest step of the scale. Starts with
// "\u2248" (almost equal) when the figure shown is not the exact one.
std::string figureText(Length length, Scale scale);
// figureText with the unit: "3 1/2 in", "89 mm".
std::string lengthText(Length length, Scale scale);
// "4 x 6 in" with a multiplication sign and one unit at the end: width first.
std::string sizeText(Size size, Scale scale);
// sizeText in the unit the size is exact in: inches to 1/32 where both sides are multiples of it,
// else millimetres to 1/2 where both are multiples of that, else inches to 1/16 with the mark.
std::string naturalSizeText(Size size);
// Text that parseLength(…, Unit::Inch) reads back to the same ticks, for lengths within
// +-Length::coordinateLimit(): a fraction where the length is a multiple of 1/32 in, mm where it is
// one of 1/100 mm (but "3.3 in": tenths of an inch before hundredths of a millimetre), a fraction
// again where it is one of 1/64 in to the nearest tick, else inches with as few decimals as do.
std::string exactText(Length length);

}  // namespace matwright
