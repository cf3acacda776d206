// SPDX-License-Identifier: MIT
#pragma once

#include "core/drawing/drawing.h"
#include "core/measure/length_text.h"
#include "core/sketch/sketch.h"

namespace matwright {

struct TemplateOptions {
    Scale scale = Scale::SixteenthInch;
    bool labels = true;
    bool dimensions = true;
    bool guides = true;        // margins, fold gap, centre ticks
    bool checkSquares = true;  // 1 in and 50 mm
    std::string note;          // extra line under the title; may be empty
};

// Layer ids of a template, back to front.
inline constexpr const char* layerPage = "page";
inline constexpr const char* layerGuides = "guides";
inline constexpr const char* layerMats = "mats";
inline constexpr const char* layerTrim = "trim";
inline constexpr const char* layerHidden = "hidden";
inline constexpr const char* layerDimensions = "dimensions";
inline constexpr const char* layerLabels = "labels";
inline constexpr const char* layerCheckSquares = "check-squares";
inline constexpr const char* layerTitle = "title";

// The measured drawing of a sketch, true to size: as large as its surface, everything inside it.
Drawing templateDrawing(const Sketch& sketch, const TemplateOptions& options);

}  // namespace matwright
