// SPDX-License-Identifier: MIT
#include "core/template/line_key.h"

#include <algorithm>

#include "core/template/pen.h"
#include "core/template/text_block.h"

namespace matwright {

namespace {

constexpr Length sample = Length::millimetres(10);  // two dashes and more of every pen
constexpr Length beforeWords = Length::hundredthMillimetres(120);
constexpr Length between = Length::millimetres(4);
// Where the sample lies in its row, in font sizes from the row's top: half way up small letters.
constexpr double sampleDown = 0.63;

TextBlock wordsOf(const LineMeaning& meaning, Length height) {
    return {{meaning.words}, height, false, false, false, pen::ink};
}

bool isDrawn(std::span<const Layer> layers, const Stroke& stroke) {
    return std::ranges::any_of(layers, [&](const Layer& layer) {
        return std::ranges::any_of(layer.items, [&](const DrawingItem& item) {
            const auto* path = std::get_if<PathItem>(&item);
            return path != nullptr && path->stroke == stroke;
        });
    });
}

}  // namespace

std::vector<LineMeaning> lineMeanings(std::span<const Layer> outlines, const PageSetup& page,
                                      bool withGuides) {
    std::vector<LineMeaning> found;
    for (const LineMeaning& meaning :
         {LineMeaning{pen::trim(), "trim line"}, LineMeaning{pen::mat(), "edge of a mat"},
          LineMeaning{pen::hiddenTrim(), "trim line, hidden"},
          LineMeaning{pen::hiddenMat(), "edge of a mat, hidden"}}) {
        if (isDrawn(outlines, meaning.stroke)) {
            found.push_back(meaning);
        }
    }
    if (withGuides) {
        found.push_back({pen::guide(), "margin"});
        if (page.doublePage) {
            found.push_back({pen::fold(), "fold"});
        }
    }
    return found;
}

LineKey::LineKey(std::span<const LineMeaning> meanings, Length height, Length width)
    : m_height(height) {
    Point at;
    for (const LineMeaning& meaning : meanings) {
        const Size words = roomOf(wordsOf(meaning, height));
        const Length reach = sample + beforeWords + words.width;
        if (!at.x.isZero() && at.x + reach > width) {
            at = {Length(), at.y + words.height};
        }
        m_entries.push_back({meaning, at});
        m_room = {std::max(m_room.width, at.x + reach), at.y + words.height};
        at.x += reach + between;
    }
}

std::vector<DrawingItem> LineKey::itemsAt(Point at) const {
    std::vector<DrawingItem> items;
    for (const Entry& entry : m_entries) {
        const Point start = at + entry.at;
        const Point line = start + Point{Length(), m_height.scaledRounded(sampleDown)};
        items.emplace_back(PathItem{{linePath(vertexAt(line), vertexAt({line.x + sample, line.y}))},
                                    entry.meaning.stroke,
                                    std::nullopt});
        std::ranges::move(matwright::itemsAt(wordsOf(entry.meaning, m_height),
                                             start + Point{sample + beforeWords, Length()}),
                          std::back_inserter(items));
    }
    return items;
}

}  // namespace matwright
