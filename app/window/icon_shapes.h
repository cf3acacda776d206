// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <span>
#include <string_view>

namespace matwright::app {

// One area of a drawing in one colour: a path to be filled by the winding rule, in a square of
// iconSide units.
struct IconShape {
    // As in QPainterPath: a move, a line, or the first of the three points of a curve.
    enum class Step : std::uint8_t { Move, Line, Curve, CurveData };
    struct Point {
        Step step;
        float x;
        float y;
    };

    std::uint32_t argb;  // black in the line drawings, which take the palette's colour
    std::span<const Point> path;
};
inline constexpr int iconSide = 24;

// The drawing resources/icons/NAME.svg; empty where there is none. Turned into shapes while the
// program is built, so that its start neither loads what reads SVG nor waits for strokes.
std::span<const IconShape> iconShapes(std::string_view name);

}  // namespace matwright::app
