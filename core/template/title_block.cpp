// SPDX-License-Identifier: MIT
#include "core/template/title_block.h"

#include <fmt/format.h>

#include "core/template/free_place.h"
#include "core/template/pen.h"

namespace matwright {

namespace {

constexpr std::size_t widths[] = {130, 95, 75, 56, 44, 34, 26, 20};  // in characters
constexpr std::int64_t titlePoints[] = {8, 7, 6};
constexpr std::size_t longestName = 60;
// Smaller print must bring the title this much lower.
constexpr Length worthMoving = Length::inches(0, 1, 4);

std::string scaleText(Scale scale) {
    switch (scale) {
        case Scale::EighthInch:
            return "Figures in inches to 1/8";
        case Scale::SixteenthInch:
            return "Figures in inches to 1/16";
        case Scale::ThirtySecondInch:
            return "Figures in inches to 1/32";
        case Scale::WholeMillimetre:
            return "Figures in millimetres";
        case Scale::HalfMillimetre:
            return "Figures in millimetres to 0.5";
    }
    return "";
}

std::vector<std::string> sentences(const TemplateOptions& options) {
    std::vector<std::string> out{options.checkSquares
                                     ? "Print at actual size (100 %), then measure 1 in and 50 mm."
                                     : "Print at actual size (100 %).",
                                 scaleText(options.scale) + ", \u2248 rounded.",
                                 "Cut with a sharp blade, away from your hand."};
    if (!options.note.empty()) {
        out.push_back(options.note);
    }
    return out;
}

std::string heading(const Sketch& sketch, Scale scale) {
    const std::string name = sketch.name.empty() ? "Untitled sketch" : sketch.name;
    return shortened(name, longestName) + " \u00B7 " + pageText(sketch.page, scale);
}

// Appends the words of a sentence to the lines, none longer than `width` where words allow it.
void wrap(std::vector<std::string>& lines, std::string_view sentence, std::size_t width) {
    lines.emplace_back();
    while (!sentence.empty()) {
        const std::size_t end = std::min(sentence.find(' '), sentence.size());
        const std::string_view word = sentence.substr(0, end);
        if (!lines.back().empty() && lines.back().size() + 1 + word.size() > width) {
            lines.emplace_back();
        }
        lines.back() += lines.back().empty() ? "" : " ";
        lines.back() += word;
        sentence.remove_prefix(std::min(end + 1, sentence.size()));
    }
}

// The sentences on as few lines as the width allows, whole ones side by side.
std::vector<std::string> composed(const std::string& name, const std::vector<std::string>& parts,
                                  std::size_t width) {
    std::vector<std::string> lines;
    wrap(lines, name, width);
    std::string row;
    const auto flush = [&] {
        if (!row.empty()) {
            wrap(lines, row, width);
        }
        row.clear();
    };
    for (const std::string& part : parts) {
        if (!row.empty() && row.size() + part.size() + 4 > width) {
            flush();
        }
        row += (row.empty() ? "" : " \u00B7 ") + part;
    }
    flush();
    return lines;
}

struct PlacedBlock {
    TextBlock block;
    Point at;
};

// Of all ways to set the title the one that lies lowest, larger print first.
std::optional<PlacedBlock> lowestPlace(const Scene& scene, const Occupancy& occupancy,
                                       const std::string& head,
                                       const std::vector<std::string>& parts, Freedom freedom) {
    std::optional<PlacedBlock> lowest;
    const auto bottom = [](const PlacedBlock& it) { return it.at.y + roomOf(it.block).height; };
    for (const std::int64_t points : titlePoints) {
        for (const std::size_t width : widths) {
            PlacedBlock it{{composed(head, parts, width), Length::points(points), true, false,
                            false, pen::ink},
                           {}};
            const auto at =
                placeOnSheet(scene, occupancy, roomOf(it.block), freedom, Corner::BottomLeft);
            if (at) {
                it.at = *at;
                if (!lowest || bottom(it) > bottom(*lowest) + worthMoving) {
                    lowest = std::move(it);
                }
            }
        }
    }
    return lowest;
}

}  // namespace

std::string pageText(const PageSetup& setup, Scale scale) {
    const std::string size = sizeText(setup.size, scale);
    if (!setup.doublePage) {
        return size + " page";
    }
    return fmt::format("double page, each {}, fold gap {}", size, lengthText(setup.foldGap, scale));
}

Layer titleLayer(const Sketch& sketch, const TemplateOptions& options, const Scene& scene,
                 Occupancy& occupancy) {
    Layer layer{layerTitle, "Title", {}};
    const std::vector<std::string> parts = sentences(options);
    const std::string head = heading(sketch, options.scale);
    for (const Freedom freedom : {Freedom::BarePaper, Freedom::NoLines, Freedom::NothingElse}) {
        if (const auto lowest = lowestPlace(scene, occupancy, head, parts, freedom)) {
            layer.items = itemsAt(lowest->block, lowest->at);
            occupancy.addBox(Rect::at(lowest->at, roomOf(lowest->block)), Occupancy::Mark);
            return layer;
        }
    }
    return layer;
}

}  // namespace matwright
