// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/drawing/drawing.h"

namespace pugi {
class xml_node;
}

namespace matwright {

// The drawing as a whole SVG 1.1 document of true physical size: root width and height in mm,
// viewBox in mm, no unit inside, one <g id> with a <title> per layer. Only what librsvg, Qt SVG
// and browsers draw alike is used (no arcs, clips, patterns, opacity). Coordinates are decimal mm
// to 1/10,000 mm. Deterministic: equal drawings give equal bytes.
std::string svgText(const Drawing& drawing);

// The same, into an existing <svg> element: sets size, viewBox and appends the layers.
void appendSvg(pugi::xml_node& svgElement, const Drawing& drawing);

// Items into an existing <g> that states the font.
void appendSvgItems(pugi::xml_node& group, const std::vector<DrawingItem>& items);

// Decimal millimetres to 1/10,000 mm, shortest form ("304.8", "-0.0254"), independent of locale.
std::string svgNumber(double ticks);
// The d attribute of a path.
std::string svgPathData(const std::vector<Path>& paths);

}  // namespace matwright
