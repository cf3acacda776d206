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
    // The parts of the drawing that are printed on sheets of their own (TilePlan::parts), in page
    // units. Empty: it stays in one piece.
    std::vector<Rect> parts;
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
inline constexpr const char* layerKey = "key";

// The measured drawing of a sketch, true to size: as large as its surface, everything inside it
// (what lies off the sheet is left out).
//
// - Labels say number (order of laying down), name, print, trim and mat sizes. Each stands in the
//   visible part of its piece, else beside it with a leader, else as a row of a list.
// - Every piece has its distances from the left and top edge of the page its left edge lies on,
//   measured to the edge that is laid on the page: the outermost mat's, else the trim line (its
//   outline's bounds where it is turned or round). Said as a dimension line, by a thin tie to a
//   piece with the same distance, or in the words of its label.
// - No text, dimension line or leader touches another; lines may pass over pieces.
// - Every text, the key and each check square lie whole in one of the parts, so that no seam cuts
//   them; lines may run on from part to part.
// - A key under the title shows what each kind of line in it means.
// - What a tiny or overfull page has no room for is left out: squares, title and key where the page
// is
//   smaller than they are, labels with a line that says how many are missing.
// Equal sketches and options give equal drawings.
Drawing templateDrawing(const Sketch& sketch, const TemplateOptions& options);

}  // namespace matwright
