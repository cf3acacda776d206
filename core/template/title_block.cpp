// SPDX-License-Identifier: MIT
#include "core/template/title_block.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/template/free_place.h"
#include "core/template/pen.h"

namespace matwright {

namespace {

constexpr std::size_t widths[] = {130, 95, 75, 56, 44, 34, 26, 20};  // in characters
constexpr std::int64_t titlePoints[] = {8, 7, 6};
constexpr std::size_t longestName = 60;
constexpr Length aboveKey = Length::hundredthMillimetres(60);
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

bool saysDistancesToMats(const TemplateOptions& options, const Scene& scene) {
    return (options.dimensions || options.labels) &&
           std::ranges::any_of(scene.pieces(),
                               [](const ScenePiece& piece) { return !piece.mats.empty(); });
}

std::vector<std::string> sentences(const TemplateOptions& options, const Scene& scene) {
    std::vector<std::string> out{options.checkSquares
                                     ? "Print at actual size (100 %), then measure 1 in and 50 mm."
                                     : "Print at actual size (100 %).",
                                 scaleText(options.scale) + ", \u2248 rounded.",
                                 "Cut with a sharp blade, away from your hand."};
    if (saysDistancesToMats(options, scene)) {
        out.emplace_back("Distances of matted photos go to the edge of the mat.");
    }
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

// The title, the key below it, or both; either may be empty.
struct PlacedBlock {
    TextBlock words;
    LineKey key;
    Point at;

    Length keyDown() const {
        return words.lines.empty() ? Length() : roomOf(words).height + aboveKey;
    }
    Size room() const {
        const Size text = words.lines.empty() ? Size() : roomOf(words);
        return {std::max(text.width, key.room().width),
                std::max(text.height, keyDown() + key.room().height)};
    }
    Length bottom() const { return at.y + room().height; }
};

// What there is to set.
struct Contents {
    std::string heading;
    std::vector<std::string> sentences;
    std::vector<LineMeaning> meanings;
};

PlacedBlock blockOf(const Contents& contents, Length height, std::size_t width) {
    TextBlock words{{}, height, true, false, false, pen::ink};
    if (!contents.heading.empty()) {
        words.lines = composed(contents.heading, contents.sentences, width);
    }
    const Length room = words.lines.empty()
                            ? height.scaledRounded(static_cast<std::int64_t>(width), 2)
                            : roomOf(words).width;
    return {words, LineKey(contents.meanings, height, room), {}};
}

// Of all ways to set them the one that lies lowest, larger print first.
std::optional<PlacedBlock> lowestPlace(const Scene& scene, const Occupancy& occupancy,
                                       const Contents& contents, Freedom freedom) {
    std::optional<PlacedBlock> lowest;
    for (const std::int64_t points : titlePoints) {
        for (const std::size_t width : widths) {
            PlacedBlock it = blockOf(contents, Length::points(points), width);
            const auto at = placeOnSheet(scene, occupancy, it.room(), freedom, Corner::BottomLeft);
            if (at) {
                it.at = *at;
                if (!lowest || it.bottom() > lowest->bottom() + worthMoving) {
                    lowest = std::move(it);
                }
            }
        }
    }
    return lowest;
}

class TitlePlacer {
  public:
    TitlePlacer(const Scene& scene, Occupancy& occupancy)
        : m_scene(scene), m_occupancy(occupancy) {}

    bool place(const Contents& contents, Freedom freedom) {
        const auto found = lowestPlace(m_scene, m_occupancy, contents, freedom);
        if (!found) {
            return false;
        }
        if (!found->words.lines.empty()) {
            std::ranges::move(itemsAt(found->words, found->at),
                              std::back_inserter(layers.title.items));
        }
        std::ranges::move(found->key.itemsAt(found->at + Point{Length(), found->keyDown()}),
                          std::back_inserter(layers.key.items));
        m_occupancy.addBox(Rect::at(found->at, found->room()), Occupancy::Mark);
        return true;
    }

    TitleLayers layers{{layerTitle, "Title", {}}, {layerKey, "Key to the lines", {}}};

  private:
    const Scene& m_scene;
    Occupancy& m_occupancy;
};

}  // namespace

std::string pageText(const PageSetup& setup, Scale scale) {
    const std::string size = sizeText(setup.size, scale);
    if (!setup.doublePage) {
        return size + " page";
    }
    return fmt::format("double page, each {}, fold gap {}", size, lengthText(setup.foldGap, scale));
}

TitleLayers titleLayers(const Sketch& sketch, const TemplateOptions& options, const Scene& scene,
                        std::span<const LineMeaning> meanings, Occupancy& occupancy) {
    const Contents title{heading(sketch, options.scale), sentences(options, scene), {}};
    const Contents key{"", {}, {meanings.begin(), meanings.end()}};
    const Contents both{title.heading, title.sentences, key.meanings};
    TitlePlacer placer(scene, occupancy);
    for (const Freedom freedom : {Freedom::BarePaper, Freedom::NoLines, Freedom::NothingElse}) {
        // A line across the key would look like one of its samples.
        if (freedom != Freedom::NothingElse && placer.place(both, freedom)) {
            break;
        }
        if (placer.place(title, freedom)) {
            (void)(placer.place(key, Freedom::BarePaper) || placer.place(key, Freedom::NoLines));
            break;
        }
    }
    return std::move(placer.layers);
}

}  // namespace matwright
