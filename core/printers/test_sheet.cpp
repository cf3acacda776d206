// SPDX-License-Identifier: MIT
#include "core/printers/test_sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <sstream>

#include "core/printers/test_ruler.h"

namespace matwright {

namespace {

constexpr Length textHeight = Length::points(7);
constexpr Length lineHeight = Length::points(10);

bool isMetric(Size paper) {
    constexpr Length eighth = Length::inches(0, 1, 8);
    constexpr Length millimetre = Length::millimetres(1);
    const bool isInches = paper.width.isMultipleOf(eighth) && paper.height.isMultipleOf(eighth);
    return !isInches && paper.width.isMultipleOf(millimetre) &&
           paper.height.isMultipleOf(millimetre);
}

SheetMargin edgesOf(const PrinterPaper& paper, Borders borders) {
    if (borders == Borders::With) {
        return paper.margin;
    }
    constexpr Length edge = Length::inches(0, 1, 8);
    return {edge, edge, edge, edge};
}

// 5 % of enlargement takes 1/40 of a side off at each end.
Length markDistance(Length side, Length low, Length high, Length step) {
    constexpr Length letters = Length::inches(0, 1, 4);
    const Length edge = std::max(std::max(low, high), side.scaledRounded(3, 100)) + letters;
    const Length room = side - 2 * edge;
    const std::int64_t steps = room.ticks() / step.ticks();
    return steps > 0 ? steps * step : Length::inches(0, 1, 2);
}

std::string distanceText(Length distance, bool metric) {
    return metric ? fmt::format("{} mm", distance.ticks() / Length::ticksPerMillimetre)
                  : lengthText(distance, Scale::SixteenthInch);
}

std::vector<std::string> wordsOf(const Printer& printer, const PrinterPaper& paper, Borders borders,
                                 const Size& marks, bool isCorrected) {
    const bool metric = isMetric(paper.size);
    return {
        fmt::format("Test sheet: {}", printer.name),
        fmt::format("{}, {} borders", paper.name, borders == Borders::With ? "with" : "without"),
        isCorrected ? "Corrected: the marks should be true now."
                    : "As the printer does it, without correction.",
        "Print it at actual size (100 %). Let it dry.",
        fmt::format("Measure from mark A to mark B: should be {}.",
                    distanceText(marks.width, metric)),
        "Across: ____________",
        fmt::format("Measure from mark C to mark D: should be {}.",
                    distanceText(marks.height, metric)),
        "Down: ____________"};
}

// Between words where a line would be too long.
std::vector<std::string> broken(const std::string& text, Length width) {
    std::vector<std::string> lines{""};
    std::istringstream words(text);
    for (std::string word; words >> word;) {
        const std::string longer = lines.back().empty() ? word : lines.back() + ' ' + word;
        if (lines.back().empty() || textWidthBound(longer, textHeight, false) <= width) {
            lines.back() = longer;
        } else {
            lines.push_back(word);
        }
    }
    return lines;
}

// As many lines as there is room for.
Layer wordsLayer(const std::vector<std::string>& words, const Rect& room) {
    Layer layer{"words", "What to do", {}};
    Length y = room.top() + textHeight;
    bool isTitle = true;
    for (const std::string& sentence : words) {
        for (const std::string& line : broken(sentence, room.size().width)) {
            if (y > room.bottom() ||
                textWidthBound(line, textHeight, isTitle) > room.size().width) {
                continue;
            }
            layer.items.emplace_back(TextItem{vertexAt({room.left(), y}),
                                              textHeight,
                                              line,
                                              TextAnchor::Start,
                                              {},
                                              isTitle,
                                              testInk});
            y += lineHeight;
        }
        isTitle = false;
        y += Length::points(3);
    }
    return layer;
}

Vertex correctedVertex(Vertex place, Size paper, const Correction& correction) {
    const auto about = [](double at, Length side, double factor) {
        const double middle = static_cast<double>(side.ticks()) / 2;
        return middle + (at - middle) * factor;
    };
    return {about(place.x, paper.width, correction.across.factor()),
            about(place.y, paper.height, correction.down.factor())};
}

void correct(Drawing& drawing, const Correction& correction) {
    const auto apply = [&](Vertex& place) {
        place = correctedVertex(place, drawing.size, correction);
    };
    for (Layer& layer : drawing.layers) {
        for (DrawingItem& item : layer.items) {
            if (auto* text = std::get_if<TextItem>(&item)) {
                apply(text->at);
                continue;
            }
            for (Path& path : std::get<PathItem>(item).paths) {
                apply(path.start);
                for (PathSegment& segment : path.segments) {
                    apply(segment.end);
                }
            }
        }
    }
}

struct SheetPlaces {
    Length acrossY;
    Length downX;
    Rect words;
};

// The rulers cross near the top left corner; the words have the rest.
SheetPlaces placesOn(const TestSheet& sheet, const SheetMargin& edges, Size paper) {
    const Length shorter = std::min(paper.width, paper.height);
    const Length in = std::min(Length::inches(0, 3, 4), shorter.scaledRounded(1, 5));
    const Length left = (paper.width - sheet.marks.width).halfRoundedDown();
    const Length top = (paper.height - sheet.marks.height).halfRoundedDown();
    const SheetPlaces places{top + in, left + in, {}};
    constexpr Length away = Length::inches(0, 7, 20);
    const Point corner{places.downX + away, places.acrossY + away};
    const Point end{std::max(corner.x, paper.width - edges.right - Length::inches(0, 1, 8)),
                    std::max(corner.y, paper.height - edges.bottom - Length::inches(0, 1, 8))};
    return {places.acrossY, places.downX, Rect::spanning(corner, end)};
}

}  // namespace

Size testMarks(const PrinterPaper& paper, Borders borders) {
    const SheetMargin edges = edgesOf(paper, borders);
    const Length step = isMetric(paper.size) ? Length::millimetres(10) : Length::inches(1);
    return {markDistance(paper.size.width, edges.left, edges.right, step),
            markDistance(paper.size.height, edges.top, edges.bottom, step)};
}

TestSheet testSheet(const Printer& printer, const PrinterPaper& paper, Borders borders,
                    const std::optional<Correction>& correction) {
    TestSheet sheet;
    sheet.marks = testMarks(paper, borders);
    const SheetPlaces places = placesOn(sheet, edgesOf(paper, borders), paper.size);
    sheet.a = {(paper.size.width - sheet.marks.width).halfRoundedDown(), places.acrossY};
    sheet.b = {sheet.a.x + sheet.marks.width, places.acrossY};
    sheet.c = {places.downX, (paper.size.height - sheet.marks.height).halfRoundedDown()};
    sheet.d = {places.downX, sheet.c.y + sheet.marks.height};
    const auto crossing = [](Length at) {
        return Interval{at, at}.expanded(Length::inches(0, 1, 4));
    };
    const TestRuler across{sheet.a, sheet.marks.width, false, crossing(sheet.c.x - sheet.a.x), "A",
                           "B"};
    const TestRuler down{sheet.c, sheet.marks.height, true, crossing(sheet.a.y - sheet.c.y), "C",
                         "D"};
    sheet.drawing = {
        paper.size,
        "Test sheet",
        fmt::format("{}, {}", printer.name, paperText(paper)),
        {{"across", "Ruler across", rulerItems(across)},
         {"down", "Ruler down", rulerItems(down)},
         wordsLayer(wordsOf(printer, paper, borders, sheet.marks, correction.has_value()),
                    places.words)}};
    if (correction) {
        correct(sheet.drawing, *correction);
        for (Point* mark : {&sheet.a, &sheet.b, &sheet.c, &sheet.d}) {
            *mark = corrected(*mark, paper.size, *correction);
        }
        sheet.marks = {correction->across.applied(sheet.marks.width),
                       correction->down.applied(sheet.marks.height)};
    }
    return sheet;
}

}  // namespace matwright
