// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

namespace matwright::test {

struct Lab {
    double l = 0;
    double a = 0;
    double b = 0;
};

// Of an sRGB colour, 0 .. 255 a channel, against the white of D65 (IEC 61966-2-1, CIE 15).
Lab labOfSrgb(double red, double green, double blue);

// The colour difference of CIE 142-2001 with all weights 1, as written out in G. Sharma, W. Wu,
// E. N. Dalal, "The CIEDE2000 color-difference formula", Color Res. Appl. 30 (2005).
double ciede2000(const Lab& one, const Lab& other);

}  // namespace matwright::test
