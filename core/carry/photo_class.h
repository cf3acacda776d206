// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/carry/footprint.h"

namespace matwright::carry {

// Photos with the same print and trim; they get the same again.
struct PhotoClass {
    Size print;
    Size trim;
    std::vector<std::size_t> members;  // indices of footprints
};
std::vector<PhotoClass> photoClasses(const std::vector<Footprint>& pieces);

// The prints a class may get where lengths become about `scale` times as long: its own, and those
// of the catalogue that lie as it does and are not far too large or small; from the nearest on.
// Prints sold in whole centimetres only in place of such.
std::vector<Size> printChoices(const PhotoClass& photos, double scale);

// What a trim becomes that was cut from `photos.print` when it is cut from `print`: the whole
// print, or the same share of it on the step.
Size trimFrom(const PhotoClass& photos, Size print, Length step);

}  // namespace matwright::carry
