// SPDX-License-Identifier: MIT
#include "core/template/text_block.h"

#include <algorithm>

namespace matwright {

namespace {

// Where the baseline lies in its line, in font sizes from the line's top: DejaVu's capitals are
// 0.73 high and its descenders 0.24 deep.
constexpr double baseline = 0.9;

bool isBold(const TextBlock& block, std::size_t line) {
    return line == 0 && block.firstBold;
}

// Of the block as it is read, before it is turned.
Size lyingRoom(const TextBlock& block) {
    Length width;
    for (std::size_t i = 0; i < block.lines.size(); ++i) {
        width = std::max(width, textWidthBound(block.lines[i], block.height, isBold(block, i)));
    }
    return {
        width,
        (block.height * static_cast<std::int64_t>(block.lines.size())).scaledRounded(linePitch)};
}

}  // namespace

Size roomOf(const TextBlock& block) {
    const Size lying = lyingRoom(block);
    return block.upright ? lying.turned() : lying;
}

std::vector<DrawingItem> itemsAt(const TextBlock& block, Point at) {
    std::vector<DrawingItem> items;
    const Size room = lyingRoom(block);
    for (std::size_t i = 0; i < block.lines.size(); ++i) {
        const Length along = block.centred ? room.width.halfRoundedDown() : Length();
        const Length down =
            block.height.scaledRounded(static_cast<double>(i) * linePitch + baseline);
        TextItem item;
        item.at = vertexAt(block.upright ? Point{at.x + down, at.y + room.width - along}
                                         : Point{at.x + along, at.y + down});
        item.height = block.height;
        item.text = block.lines[i];
        item.anchor = block.centred ? TextAnchor::Middle : TextAnchor::Start;
        item.rotation = block.upright ? Angle::degrees(270) : Angle();
        item.bold = isBold(block, i);
        item.colour = block.colour;
        items.emplace_back(std::move(item));
    }
    return items;
}

std::string shortened(const std::string& text, std::size_t count) {
    std::size_t characters = 0;
    std::size_t cut = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if ((static_cast<unsigned char>(text[i]) & 0xC0U) == 0x80U) {
            continue;
        }
        if (characters + 1 == count) {
            cut = i;
        }
        if (characters == count) {
            return text.substr(0, cut) + "\u2026";
        }
        ++characters;
    }
    return text;
}

}  // namespace matwright
