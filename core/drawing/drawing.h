// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/measure/angle.h"
#include "core/outline/path.h"

namespace matwright {

// An opaque sRGB colour.
struct Colour {
    std::uint8_t red = 0;
    std::uint8_t green = 0;
    std::uint8_t blue = 0;
    friend constexpr bool operator==(Colour, Colour) = default;
};

struct Stroke {
    Length width;  // positive
    Colour colour;
    std::vector<Length> dash;  // on, off, …; empty is solid
    friend bool operator==(const Stroke&, const Stroke&) = default;
};

struct PathItem {
    std::vector<Path> paths;  // filled together, even-odd
    std::optional<Stroke> stroke;
    std::optional<Colour> fill;
};

enum class TextAnchor { Start, Middle, End };

// One line of text on a baseline that starts, is centred or ends at `at`. Sans serif.
struct TextItem {
    Vertex at;
    Length height;  // font size (em)
    std::string text;
    TextAnchor anchor = TextAnchor::Start;
    Angle rotation;  // about `at`
    bool bold = false;
    Colour colour;
};

using DrawingItem = std::variant<PathItem, TextItem>;

// A named group: `id` is safe as an XML id, `label` is for people.
struct Layer {
    std::string id;
    std::string label;
    std::vector<DrawingItem> items;
};

// What to draw, in page units, back to front; every output (SVG, PDF, printer, screen) draws this.
struct Drawing {
    Size size;  // the visible area is {0,0}..size
    std::string title;
    std::string description;
    std::vector<Layer> layers;
};

// The font every output asks for, first choice first; all are sans serif with equal metrics enough
// for the width bound below.
inline constexpr const char* drawingFontFamily = "DejaVu Sans";

// An upper bound of the width of `text` set in drawingFontFamily at this height: the sum of
// DejaVu Sans advances (ASCII, the fractions and signs this program writes) and 1 em for any other
// character.
Length textWidthBound(const std::string& text, Length height, bool bold);

}  // namespace matwright
