// SPDX-License-Identifier: MIT
#pragma once

#include "core/drawing/drawing.h"
#include "core/template/line_key.h"
#include "core/template/occupancy.h"
#include "core/template/scene.h"
#include "core/template/template.h"

namespace matwright {

struct TitleLayers {
    Layer title;
    Layer key;
};

// The sketch's name, the page, the units, how to print, the word on blades and the note, in small
// print, and under it the key to the lines: set wide or narrow, whichever finds bare paper, else
// over pieces but clear of everything placed. Where there is no such place for both, the key goes
// to one of its own. Either is left out on a page with no such room, the key also where lines
// would run through it. What is drawn is marked in `occupancy`.
TitleLayers titleLayers(const Sketch& sketch, const TemplateOptions& options, const Scene& scene,
                        std::span<const LineMeaning> meanings, Occupancy& occupancy);

// "12 × 12 in page", "double page, each 12 × 12 in, fold gap 1/2 in".
std::string pageText(const PageSetup& setup, Scale scale);

}  // namespace matwright
