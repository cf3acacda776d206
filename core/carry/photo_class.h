// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "core/carry/footprint.h"

namespace matwright::carry {

// Photos with the same print and trim; they get the same again.
struct PhotoClass {
    Size print;
    Size trim;
    Size keptTrim;                     // what it is with the same print again
    std::vector<std::size_t> members;  // indices of footprints
};
// Trims are kept; where `newStep` is given, their cut sides go onto that.
std::vector<PhotoClass> photoClasses(const std::vector<Footprint>& pieces,
                                     std::optional<Length> newStep);

struct PhotoChoice {
    Size print;
    Size trim;
    friend bool operator==(const PhotoChoice&, const PhotoChoice&) = default;
};

// What a class may get where lengths become about `scale` times as long; from the nearest on. Its
// own print, those of the catalogue that lie as it does and are not far too large or small, each
// with the same share cut away; and the trim at scale, or a little smaller, from the smallest print
// that holds it. Prints sold in whole centimetres only in place of such.
std::vector<PhotoChoice> photoChoices(const PhotoClass& photos, double scale, Length step);

// What a trim becomes that was cut from `photos.print` when it is cut from `print`: the kept one,
// the whole print, or the same share of it on the step.
Size trimFrom(const PhotoClass& photos, Size print, Length step);

}  // namespace matwright::carry
