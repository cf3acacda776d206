// SPDX-License-Identifier: MIT
#include "core/prints/double_check.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <sstream>
#include <tuple>
#include <utility>

#include "core/photo/photo_source.h"
#include "core/photo/photo_words.h"
#include "core/prints/on_all_cores.h"
#include "core/prints/rendering.h"

namespace matwright {

namespace {

constexpr Length margin = Length::inches(0, 1, 2);
constexpr Length headHeight = Length::inches(0, 1, 2);
constexpr Length pictureSide = Length::inches(1, 1, 2);
constexpr Length rowHeight = Length::inches(1, 7, 8);
constexpr Length gap = Length::inches(0, 1, 8);
constexpr Length textHeight = Length::points(9);
constexpr Length lineHeight = Length::points(13);
constexpr int columns = 2;
constexpr std::size_t mostLines = 10;  // what a row has room for
constexpr Colour ink{40, 40, 40};
constexpr Colour frameGrey{150, 150, 150};

struct Cell {
    Point corner;
    Length textWidth;
};

TextItem line(Point at, const std::string& text, bool bold) {
    return {vertexAt(at), textHeight, text, TextAnchor::Start, {}, bold, ink};
}

// Cut between characters until it fits.
std::string fitted(const std::string& text, Length width, bool bold) {
    if (textWidthBound(text, textHeight, bold) <= width) {
        return text;
    }
    std::string cut = text;
    while (!cut.empty() && textWidthBound(cut + "…", textHeight, bold) > width) {
        while (cut.size() > 1 && (static_cast<unsigned char>(cut.back()) & 0xC0U) == 0x80U) {
            cut.pop_back();
        }
        cut.pop_back();
    }
    return cut + "…";
}

// Broken between words where it is too long; a single word that is longer still is cut.
std::vector<std::string> wrapped(const std::string& text, Length width, bool bold) {
    std::vector<std::string> lines{""};
    std::istringstream words(text);
    for (std::string word; words >> word;) {
        const std::string longer = lines.back().empty() ? word : lines.back() + ' ' + word;
        if (lines.back().empty() || textWidthBound(longer, textHeight, bold) <= width) {
            lines.back() = longer;
        } else {
            lines.push_back(word);
        }
    }
    for (std::string& one : lines) {
        one = fitted(one, width, bold);
    }
    return lines;
}

// The print's paper as large as the picture's square allows, in its middle.
Rect pictureBox(const Print& print, Point corner) {
    const Length longer = std::max(print.paper.width, print.paper.height);
    const Size size{pictureSide.scaledRounded(print.paper.width.ticks(), longer.ticks()),
                    pictureSide.scaledRounded(print.paper.height.ticks(), longer.ticks())};
    return Rect::at({corner.x + (pictureSide - size.width).halfRoundedDown(),
                     corner.y + (pictureSide - size.height).halfRoundedDown()},
                    size);
}

PathItem frame(const Rect& box) {
    return {{rectPath(box)}, Stroke{Length::points(1), frameGrey, {}}, std::nullopt};
}

std::string smallJpegOf(const Print& print, const Photo& photo) {
    PrintOptions small;
    small.ppi = smallestPpi;
    const Result<Raster> raster = renderPrint(print, photo, small);
    constexpr int quality = 85;
    return raster ? smallJpeg(*raster, quality) : "";
}

// Names are cut to the column, so that what warns keeps its room.
std::vector<std::string> wordsOf(const Print& print, const Photo& photo, bool isThere, Scale scale,
                                 Length width) {
    const double ppi = effectivePpi(print.crop, photo.upright, print.window);
    const double loss = lossOf(print.crop, photo.upright, print.window);
    return {
        fitted(print.name, width, true),
        "print " + sizeText(print.paper, scale),
        print.trim.size() == print.paper ? "" : "cut to " + sizeText(print.trim.size(), scale),
        fitted(std::filesystem::path(photo.path).filename().string(), width, false),
        isThere ? ppiText(ppi) : "The photo is out of reach.",
        fmt::format("{:.0f} % of the photo is cut off", 100 * loss),
        print.crop.straighten.isZero() ? "" : "straightened " + turnText(print.crop.straighten)};
}

Cell cellAt(std::size_t index, Size sheet) {
    const Length columnWidth = (sheet.width - 2 * margin).scaledRounded(1, columns);
    const auto column = static_cast<std::int64_t>(index % columns);
    const auto row = static_cast<std::int64_t>(index / columns);
    return {{margin + columnWidth * column, margin + headHeight + rowHeight * row},
            columnWidth - pictureSide - 2 * gap};
}

DoubleCheckSheet emptySheet(const Sketch& sketch, Size sheet, std::size_t number,
                            std::size_t count) {
    DoubleCheckSheet result;
    result.drawing.size = sheet;
    result.drawing.title = sketch.name.empty() ? "Prints" : sketch.name;
    result.drawing.layers = {{"prints", "Prints", {}}};
    const std::string head =
        fmt::format("{}: prints to look over, sheet {} of {}", result.drawing.title, number, count);
    result.drawing.layers.front().items.emplace_back(
        line({margin, margin + textHeight}, fitted(head, sheet.width - 2 * margin, true), true));
    return result;
}

void addPrint(DoubleCheckSheet& sheet, const Print& print, const Photo& photo, std::string jpeg,
              const Cell& cell, Scale scale) {
    auto& items = sheet.drawing.layers.front().items;
    const Rect box = pictureBox(print, cell.corner);
    items.emplace_back(frame(box));
    Point at{cell.corner.x + pictureSide + gap, cell.corner.y + lineHeight};
    std::size_t lines = 0;
    for (const std::string& words : wordsOf(print, photo, !jpeg.empty(), scale, cell.textWidth)) {
        const bool isName = lines == 0;
        for (const std::string& part : wrapped(words, cell.textWidth, isName)) {
            if (!part.empty() && lines++ < mostLines) {
                items.emplace_back(line(at, part, isName));
                at.y += lineHeight;
            }
        }
    }
    if (!jpeg.empty()) {
        sheet.pictures.push_back({box, std::move(jpeg)});
    }
}

}  // namespace

std::vector<DoubleCheckSheet> doubleCheckSheets(const Making& making,
                                                const std::vector<Print>& prints, Size sheet,
                                                Scale scale) {
    std::vector<std::string> pictures(prints.size());
    // A picture that cannot be made stays empty.
    std::ignore = onAllCores(prints.size(), [&](std::size_t i) {
        pictures[i] = smallJpegOf(prints[i], making.work.photos.at(prints[i].photo));
    });
    const Length room = sheet.height - 2 * margin - headHeight;
    const auto rows =
        static_cast<std::size_t>(std::max<std::int64_t>(1, room.ticks() / rowHeight.ticks()));
    const std::size_t perSheet = rows * columns;
    const std::size_t count = (prints.size() + perSheet - 1) / perSheet;
    std::vector<DoubleCheckSheet> sheets;
    for (std::size_t i = 0; i < prints.size(); ++i) {
        if (i % perSheet == 0) {
            sheets.push_back(emptySheet(making.sketch, sheet, sheets.size() + 1, count));
        }
        addPrint(sheets.back(), prints[i], making.work.photos.at(prints[i].photo),
                 std::move(pictures[i]), cellAt(i % perSheet, sheet), scale);
    }
    return sheets;
}

}  // namespace matwright
