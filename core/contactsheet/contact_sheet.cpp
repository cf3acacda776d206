// SPDX-License-Identifier: MIT
#include "core/contactsheet/contact_sheet.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/contactsheet/scaled_picture.h"
#include "core/contactsheet/words.h"
#include "core/measure/length_text.h"

namespace matwright {

namespace {

constexpr Colour strongInk{30, 30, 30};
constexpr Colour quietInk{80, 80, 80};
constexpr const char* ellipsis = "\u2026";

// One line, whatever stands in a name.
std::string onOneLine(std::string text) {
    std::ranges::replace_if(text, [](char c) { return c >= 0 && c < ' '; }, ' ');
    return text;
}

std::vector<std::string> factsOfEntry(const Sketch& sketch, int lines) {
    const auto photos = std::ranges::count_if(
        sketch.pieces, [](const auto& entry) { return entry.second.kind == PieceKind::PhotoSlot; });
    const std::string count = fmt::format("{} {}", photos, photos == 1 ? "photo" : "photos");
    const std::string page =
        naturalSizeText(sketch.page.size) + (sketch.page.doublePage ? " double" : "");
    return lines == 1 ? std::vector{count + " \u00B7 " + page} : std::vector{count, page};
}

TextItem line(Point at, const std::string& text, Length height, bool bold, Colour colour) {
    TextItem item;
    item.at = vertexAt(at);
    item.text = text;
    item.height = height;
    item.bold = bold;
    item.colour = colour;
    return item;
}

void addLine(Layer& layer, const Rect& words, Length baseline, const std::string& text,
             Length height, bool bold) {
    const std::string shown = fitted(onOneLine(text), words.size().width, height, bold);
    if (!shown.empty()) {
        layer.items.emplace_back(line({words.left(), words.top() + baseline}, shown, height, bold,
                                      bold ? strongInk : quietInk));
    }
}

void addEntry(Layer& layer, const Rect& cell, const ContactEntry& entry, int columns) {
    const Length border = cell.bottom() - wordsRoom(columns);
    const Rect picture{cell.x, {cell.top(), border}};
    for (DrawingItem& item : pictureIn(picture, entry.sketch)) {
        layer.items.push_back(std::move(item));
    }
    const Rect words{cell.x, {border, cell.bottom()}};
    Length baseline = nameBaseline;
    addLine(layer, words, baseline, entry.name, nameText, true);
    for (const std::string& facts : factsOfEntry(entry.sketch, factsLines(columns))) {
        baseline += factsPitch;
        addLine(layer, words, baseline, facts, factsText, false);
    }
}

Layer headingLayer(const ContactSheetOptions& options, const std::string& sheetText) {
    Layer layer{"heading", "Heading", {}};
    const Rect inside = Rect::at({}, options.sheet).expanded(-options.margin);
    TextItem number =
        line({inside.right(), inside.top() + headingText}, sheetText, nameText, false, quietInk);
    number.anchor = TextAnchor::End;
    const Length taken = textWidthBound(sheetText, nameText, false) + cellGap;
    const std::string title =
        fitted(onOneLine(options.title), inside.size().width - taken, headingText, true);
    if (!title.empty()) {
        layer.items.emplace_back(
            line({inside.left(), inside.top() + headingText}, title, headingText, true, strongInk));
    }
    layer.items.emplace_back(std::move(number));
    return layer;
}

}  // namespace

Drawing contactSheet(const ContactSheetOptions& options, std::span<const ContactEntry> entries,
                     std::size_t sheetNumber, std::size_t sheetCount) {
    const ContactGrid grid = contactGrid(options);
    const std::string sheetText = fmt::format("Sheet {} of {}", sheetNumber, sheetCount);
    Drawing drawing;
    drawing.size = options.sheet;
    drawing.title = options.title.empty() ? sheetText : options.title + ", " + sheetText;
    drawing.layers.push_back(headingLayer(options, sheetText));
    Layer sketches{"sketches", "Sketches", {}};
    for (std::size_t i = 0; i < std::min(entries.size(), grid.perSheet()); ++i) {
        addEntry(sketches, grid.cell(i), entries[i], grid.columns);
    }
    if (entries.empty()) {
        const std::string text = "There are no sketches to show.";
        const Rect inside = Rect::at({}, options.sheet).expanded(-options.margin);
        sketches.items.emplace_back(line({inside.left(), grid.first.top() + headingText},
                                         fitted(text, inside.size().width, nameText, false),
                                         nameText, false, quietInk));
    }
    drawing.layers.push_back(std::move(sketches));
    return drawing;
}

std::vector<Drawing> contactSheets(const ContactSheetOptions& options,
                                   std::span<const ContactEntry> entries) {
    const std::size_t perSheet = contactGrid(options).perSheet();
    const std::size_t count = contactSheetCount(options, entries.size());
    std::vector<Drawing> sheets;
    sheets.reserve(count);
    for (std::size_t number = 1; number <= count; ++number) {
        const std::size_t first = (number - 1) * perSheet;
        const auto on = entries.subspan(first, std::min(perSheet, entries.size() - first));
        sheets.push_back(contactSheet(options, on, number, count));
    }
    return sheets;
}

std::string fitted(const std::string& text, Length room, Length height, bool bold) {
    if (textWidthBound(text, height, bold) <= room) {
        return text;
    }
    // The longest beginning: its width grows with every character.
    std::string best;
    for (std::size_t end = 0; end < text.size(); ++end) {
        if ((static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) {
            continue;
        }
        std::string shown = text.substr(0, end);
        shown.erase(shown.find_last_not_of(' ') + 1);
        shown += ellipsis;
        if (textWidthBound(text.substr(0, end) + ellipsis, height, bold) > room) {
            break;
        }
        best = std::move(shown);
    }
    return best;
}

}  // namespace matwright
