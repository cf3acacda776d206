// SPDX-License-Identifier: MIT
#pragma once

#include "core/drawing/drawing.h"
#include "core/template/occupancy.h"
#include "core/template/scene.h"
#include "core/template/template.h"

namespace matwright {

// The sketch's name, the page, the units, how to print, the word on blades and the note, in small
// print: set wide or narrow, whichever finds bare paper, else over pieces but clear of everything
// placed. Left out on a page with no such room. What is drawn is marked in `occupancy`.
Layer titleLayer(const Sketch& sketch, const TemplateOptions& options, const Scene& scene,
                 Occupancy& occupancy);

// "12 × 12 in page", "double page, each 12 × 12 in, fold gap 1/2 in".
std::string pageText(const PageSetup& setup, Scale scale);

}  // namespace matwright
