// SPDX-License-Identifier: MIT
#include "core/cutpicture/text_lines.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/contactsheet/contact_sheet.h"

namespace matwright {

std::vector<std::string> brokenLines(const std::string& text, Length room, Length height,
                                     bool bold) {
    std::vector<std::string> lines;
    std::string line;
    std::size_t begin = 0;
    while (begin <= text.size()) {
        const std::size_t end = std::min(text.find(' ', begin), text.size());
        const std::string word = text.substr(begin, end - begin);
        begin = end + 1;
        std::string longer = line;
        longer.append(line.empty() ? "" : " ").append(word);
        if (line.empty() || textWidthBound(longer, height, bold) <= room) {
            line = std::move(longer);
            continue;
        }
        lines.push_back(fitted(line, room, height, bold));
        line = word;
    }
    lines.push_back(fitted(line, room, height, bold));
    return lines;
}

TextItem textAt(Point at, const std::string& text, Length height, Colour colour, bool bold,
                TextAnchor anchor) {
    TextItem item;
    item.at = vertexAt(at);
    item.height = height;
    item.text = text;
    item.anchor = anchor;
    item.bold = bold;
    item.colour = colour;
    return item;
}

PathItem filledBox(const Rect& box, std::optional<Colour> fill, std::optional<Stroke> stroke) {
    return {{rectPath(box)}, std::move(stroke), fill};
}

PathItem strokedLine(Point from, Point to, Stroke stroke) {
    return {{linePath(vertexAt(from), vertexAt(to))}, std::move(stroke), std::nullopt};
}

std::vector<DrawingItem> hatchedBox(const Rect& box, Length pitch) {
    std::vector<DrawingItem> items{filledBox(box, Colour{248, 248, 248}, std::nullopt)};
    PathItem lines{{}, Stroke{Length::hundredthMillimetres(12), cutink::hatch, {}}, std::nullopt};
    const Size size = box.size();
    const Length end = size.width + size.height;
    for (Length along = pitch; along < end; along += pitch) {
        // x + y is the same all along the line.
        const Length fromX = std::min(along, size.width);
        const Length toX = std::max(along - size.height, Length());
        const Point from{box.left() + fromX, box.top() + (along - fromX)};
        const Point to{box.left() + toX, box.top() + (along - toX)};
        lines.paths.push_back(linePath(vertexAt(from), vertexAt(to)));
    }
    if (!lines.paths.empty()) {
        items.emplace_back(std::move(lines));
    }
    return items;
}

Colour paler(Colour colour, double by) {
    const auto mix = [by](std::uint8_t channel) {
        return static_cast<std::uint8_t>(std::lround(channel + (255 - channel) * by));
    };
    return {mix(colour.red), mix(colour.green), mix(colour.blue)};
}

}  // namespace matwright
