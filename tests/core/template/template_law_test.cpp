// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/template/template.h"
#include "core/template/tiling.h"
#include "tests/core/template/drawing_probe.h"
#include "tests/support/example_sketches.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

using test::InkBox;
using test::InkLine;

constexpr double nearEnough = 1'800;  // ticks: 0.05 mm, what an oval of curves may stray

struct Case {
    std::string name;
    Sketch sketch;
    Scale scale = Scale::SixteenthInch;
    std::vector<Rect> parts = {};
};

double ticksOf(Length length) {
    return static_cast<double>(length.ticks());
}

// Every kind of page: the examples, wild sketches, and grids where everything lines up.
std::vector<Case> cases() {
    std::vector<Case> out;
    for (const auto& example : test::exampleSketches()) {
        out.push_back({example.file, example.sketch,
                       example.metric ? Scale::HalfMillimetre : Scale::SixteenthInch});
    }
    test::Random random(20261);
    for (int i = 0; i < 30; ++i) {
        out.push_back({"random " + std::to_string(i), test::randomSketch(random, i % 9),
                       i % 2 == 0 ? Scale::EighthInch : Scale::WholeMillimetre});
    }
    for (int columns = 2; columns <= 6; ++columns) {
        Sketch grid = blankSketch();
        std::vector<Piece> pieces;
        for (int i = 0; i < columns * columns; ++i) {
            Piece piece;
            piece.place = {Length::inches(1) + (i % columns) * Length::inches(1, 3, 4),
                           Length::inches(1) + (i / columns) * Length::inches(1, 3, 4)};
            piece.size = {Length::inches(1, 1, 2), Length::inches(1, 1, 2)};
            pieces.push_back(piece);
        }
        EXPECT_TRUE(apply(grid, addPieces(grid, pieces)));
        out.push_back({"grid " + std::to_string(columns), grid});
    }
    const std::size_t whole = out.size();
    for (std::size_t i = 0; i < whole; ++i) {
        const auto plan = planTiles(out[i].sketch.page, {});
        if (plan && plan->tiles.size() > 1) {
            out.push_back(out[i]);
            out.back().name += " in parts";
            out.back().parts = plan->parts();
        }
    }
    return out;
}

template <typename T>
void append(std::vector<T>& to, std::vector<T> from) {
    to.insert(to.end(), from.begin(), from.end());
}

struct Written {
    std::vector<InkBox> texts;
    std::vector<InkLine> dimensionLines;
    std::vector<InkLine> leaders;
};

Written written(const Drawing& drawing) {
    Written out;
    for (const char* id : {layerDimensions, layerLabels, layerCheckSquares, layerTitle, layerKey}) {
        if (const Layer* layer = test::findLayer(drawing, id)) {
            append(out.texts, test::textBoxes(*layer));
        }
    }
    if (const Layer* layer = test::findLayer(drawing, layerDimensions)) {
        out.dimensionLines = test::strokedLines(*layer);
    }
    if (const Layer* layer = test::findLayer(drawing, layerLabels)) {
        out.leaders = test::strokedLines(*layer);
    }
    return out;
}

const std::vector<std::pair<Case, Drawing>>& templates() {
    static const std::vector<std::pair<Case, Drawing>> drawn = [] {
        std::vector<std::pair<Case, Drawing>> out;
        for (Case& it : cases()) {
            TemplateOptions options;
            options.scale = it.scale;
            options.parts = it.parts;
            Drawing drawing = templateDrawing(it.sketch, options);
            out.emplace_back(std::move(it), std::move(drawing));
        }
        return out;
    }();
    return drawn;
}

template <typename Check>
void forEveryTemplate(Check check) {
    for (const auto& [it, drawing] : templates()) {
        SCOPED_TRACE(it.name);
        check(it, drawing);
    }
}

TEST(TemplateLaw, NoTextLiesOnAnother) {
    forEveryTemplate([](const Case&, const Drawing& drawing) {
        const Written ink = written(drawing);
        for (std::size_t i = 0; i < ink.texts.size(); ++i) {
            for (std::size_t j = i + 1; j < ink.texts.size(); ++j) {
                EXPECT_FALSE(test::overlap(ink.texts[i], ink.texts[j]))
                    << ink.texts[i].text << " / " << ink.texts[j].text;
            }
        }
    });
}

TEST(TemplateLaw, NoDimensionLineRunsThroughAText) {
    forEveryTemplate([](const Case&, const Drawing& drawing) {
        const Written ink = written(drawing);
        for (const InkLine& line : ink.dimensionLines) {
            for (const InkBox& text : ink.texts) {
                EXPECT_FALSE(test::crosses(line, text)) << text.text;
            }
        }
    });
}

TEST(TemplateLaw, NoDimensionLineRunsThroughAnother) {
    forEveryTemplate([](const Case&, const Drawing& drawing) {
        const Written ink = written(drawing);
        for (const InkLine& a : ink.dimensionLines) {
            for (const InkLine& b : ink.dimensionLines) {
                EXPECT_FALSE(a.item < b.item && test::crosses(a, b))
                    << a.from.x << "," << a.from.y << " / " << b.from.x << "," << b.from.y;
            }
        }
    });
}

TEST(TemplateLaw, NoLeaderRunsThroughATextOrADimensionLine) {
    forEveryTemplate([](const Case&, const Drawing& drawing) {
        const Written ink = written(drawing);
        for (const InkLine& leader : ink.leaders) {
            for (const InkBox& text : ink.texts) {
                EXPECT_FALSE(test::crosses(leader, text)) << text.text;
            }
            for (const InkLine& line : ink.dimensionLines) {
                EXPECT_FALSE(test::crosses(leader, line));
            }
        }
    });
}

// A line of the drawing across the key would look like one of its samples.
TEST(TemplateLaw, NoOtherLineRunsThroughTheKey) {
    forEveryTemplate([](const Case&, const Drawing& drawing) {
        const Layer* key = test::findLayer(drawing, layerKey);
        if (key == nullptr) {
            return;
        }
        for (const InkLine& sample : test::strokedLines(*key)) {
            const InkBox box{sample.from.x, sample.from.y - 1, sample.to.x, sample.to.y + 1, ""};
            for (const char* id : {layerGuides, layerMats, layerTrim, layerHidden, layerDimensions,
                                   layerLabels, layerCheckSquares}) {
                if (const Layer* layer = test::findLayer(drawing, id)) {
                    for (const InkLine& line : test::strokedLines(*layer)) {
                        EXPECT_FALSE(test::crosses(line, box)) << id;
                    }
                }
            }
        }
    });
}

TEST(TemplateLaw, NoSeamCutsATextOrACheckSquare) {
    int inParts = 0;
    forEveryTemplate([&](const Case& it, const Drawing& drawing) {
        const auto isCut = [&](const InkBox& box) {
            return std::ranges::none_of(it.parts, [&](const Rect& part) {
                return ticksOf(part.left()) <= box.left && box.right <= ticksOf(part.right()) &&
                       ticksOf(part.top()) <= box.top && box.bottom <= ticksOf(part.bottom());
            });
        };
        if (it.parts.empty()) {
            return;
        }
        ++inParts;
        for (const InkBox& text : written(drawing).texts) {
            EXPECT_FALSE(isCut(text)) << text.text;
        }
        if (const Layer* squares = test::findLayer(drawing, layerCheckSquares)) {
            for (const InkLine& side : test::strokedLines(*squares)) {
                EXPECT_FALSE(isCut(
                    {std::min(side.from.x, side.to.x), std::min(side.from.y, side.to.y),
                     std::max(side.from.x, side.to.x), std::max(side.from.y, side.to.y), ""}));
            }
        }
    });
    EXPECT_GT(inParts, 10);
}

TEST(TemplateLaw, EveryTextLiesInsideThePage) {
    forEveryTemplate([](const Case&, const Drawing& drawing) {
        for (const InkBox& text : written(drawing).texts) {
            EXPECT_GE(text.left, 0) << text.text;
            EXPECT_GE(text.top, 0) << text.text;
            EXPECT_LE(text.right, ticksOf(drawing.size.width)) << text.text;
            EXPECT_LE(text.bottom, ticksOf(drawing.size.height)) << text.text;
        }
    });
}

// The page a piece's distances are measured from: of a double page the right one from its left
// edge on.
double pageLeft(const Sketch& sketch, double left) {
    double found = 0;
    for (const Rect& page : pages(sketch.page)) {
        if (ticksOf(page.left()) <= left + 1) {
            found = ticksOf(page.left());
        }
    }
    return found;
}

bool endsAt(const InkLine& line, bool level, double from, double to) {
    const double a = level ? line.from.x : line.from.y;
    const double b = level ? line.to.x : line.to.y;
    const bool straight = level ? line.from.y == line.to.y : line.from.x == line.to.x;
    return straight && std::abs(a - from) < 1 && std::abs(b - to) < nearEnough;
}

// The figure that stands alongside a dimension line.
std::string figureAt(const InkLine& line, bool level, const std::vector<InkBox>& figures) {
    for (const InkBox& box : figures) {
        const double gap = level ? line.from.y - box.bottom : line.from.x - box.right;
        const bool alongside = level ? line.from.x <= box.left && box.right <= line.to.x
                                     : line.from.y <= box.top && box.bottom <= line.to.y;
        if (alongside && gap >= 0 && gap < ticksOf(Length::millimetres(1))) {
            return box.text;
        }
    }
    return "";
}

// Whether the figure says this distance, to the step it is shown in.
bool says(std::string figure, double ticks, Scale scale) {
    const bool rounded = figure.starts_with("\u2248");
    const auto read = parseLength(rounded ? figure.substr(3) : figure, unitOf(scale));
    const double allowed = rounded ? ticksOf(stepOf(scale)) / 2 : 0;
    return read && std::abs(ticksOf(*read) - ticks) <= allowed + nearEnough;
}

std::string wordAfter(const std::string& label, const std::string& key) {
    const std::size_t at = label.rfind(key);  // "turned 6° to the left" comes before
    if (at == std::string::npos) {
        return "";
    }
    const std::size_t start = at + key.size();
    std::size_t end = label.find_first_of(",\n", start);
    end = std::min(end, label.find(" \u00B7 ", start));
    return label.substr(start, end - start);
}

bool isTold(const Drawing& drawing, const Case& it, std::size_t number, bool level, double from,
            double to) {
    if (const Layer* labels = test::findLayer(drawing, layerLabels)) {
        const std::string label = test::labelOf(*labels, number);
        if (says(wordAfter(label, level ? "left " : "top "), to - from, it.scale)) {
            return true;
        }
    }
    const Layer* layer = test::findLayer(drawing, layerDimensions);
    if (layer == nullptr) {
        return false;
    }
    const std::vector<InkBox> figures = test::textBoxes(*layer);
    return std::ranges::any_of(test::strokedLines(*layer), [&](const InkLine& line) {
        return endsAt(line, level, from, to) &&
               says(figureAt(line, level, figures), to - from, it.scale);
    });
}

std::string labelsOf(const Drawing& drawing, std::size_t number) {
    const Layer* labels = test::findLayer(drawing, layerLabels);
    return "\n" + (labels == nullptr ? "" : test::labelOf(*labels, number));
}

// To the outermost mat's edge where there is one: that is what is laid on the page.
TEST(TemplateLaw, EveryPieceHasTheLeftAndTopDistanceOfItsOutermostEdgeSomewhere) {
    forEveryTemplate([](const Case& it, const Drawing& drawing) {
        for (std::size_t i = 0; i < it.sketch.order.size(); ++i) {
            const Piece& piece = it.sketch.pieces.at(it.sketch.order[i]);
            const test::Extremes at = test::outerExtremes(piece);
            const double left = pageLeft(it.sketch, test::trimExtremes(piece).left);
            EXPECT_TRUE(isTold(drawing, it, i + 1, true, left, at.left))
                << "left of " << i + 1 << ": " << at.left - left << labelsOf(drawing, i + 1);
            EXPECT_TRUE(isTold(drawing, it, i + 1, false, 0, at.top))
                << "top of " << i + 1 << ": " << at.top << labelsOf(drawing, i + 1);
        }
    });
}

}  // namespace
}  // namespace matwright
