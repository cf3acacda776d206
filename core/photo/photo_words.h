// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "core/measure/rect.h"
#include "core/raster/raster.h"

// Plain words about how large a photo may be printed. Pure arithmetic.

namespace matwright {

// Below this a print is warned about, and below the second nobody should pretend it will look good.
// Project choices; 300 is the usual wish (see the tests for sources).
inline constexpr int wishedPpi = 300;
inline constexpr int warnedPpi = 200;
inline constexpr int poorPpi = 100;

// The largest catalogue print, either way round, that the whole photo (cropped to its ratio) fills
// at `ppi`; nothing where it fills none.
std::optional<Size> largestPrint(PixelSize upright, int ppi);
// "up to 8 × 10 at 300 ppi", "too small for any print at 300 ppi; up to 4 × 6 at 200 ppi", …
std::string largestPrintText(PixelSize upright);

enum class Sharpness { Fine, Soft, Poor };  // from warnedPpi, below it, below poorPpi
Sharpness sharpnessAt(double ppi);
// "412 ppi", "about 160 ppi: this will look soft; …", "72 ppi: too coarse to print at this size; …"
std::string ppiText(double ppi);

// "4 × 6 takes off 1/9 of this photo" (the nearest simple fraction, "about" where it is not exact),
// "nothing is cut off". `print` lies as the photo does.
std::string lossText(PixelSize upright, Size print);

}  // namespace matwright
