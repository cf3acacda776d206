// SPDX-License-Identifier: MIT
#include "tests/support/random_sketch.h"

#include <algorithm>
#include <string_view>
#include <utility>

#include "core/measure/catalogue.h"

namespace matwright::test {

namespace {

bool oneIn(Random& random, std::uint64_t n) {
    return below(random, n) == 0;
}

// Half the time on the 1/16 in grid, otherwise on any tick.
Length between(Random& random, Length low, Length high) {
    const auto span = static_cast<std::uint64_t>((high - low).ticks());
    const Length any = low + Length::fromTicks(static_cast<std::int64_t>(below(random, span + 1)));
    if (oneIn(random, 2)) {
        return any;
    }
    return std::clamp(any.roundedTo(Length::inches(0, 1, 16)), low, high);
}

std::string randomText(Random& random, bool lineBreaks) {
    static constexpr std::string_view words[] = {
        "",     "mat", "sea & sand", "<b>",   "\"quoted\"", "it's", "Grüße",
        "写真", "🙂",  "]]>",        "&amp;", "  two  ",    "a",    "\u00A0",
    };
    std::string text;
    for (auto n = below(random, 4); n > 0; --n) {
        text += words[below(random, std::size(words))];
        text += lineBreaks && oneIn(random, 3) ? "\n" : " ";
    }
    return text;
}

Shape randomShape(Random& random, Size size) {
    switch (below(random, 4)) {
        case 0:
            return RoundedRectangleShape{between(random, Length::fromTicks(1), Length::inches(2))};
        case 1:
            return OvalShape{};
        case 2: {
            // A convex quadrilateral with one corner on each side of the box.
            const Length w = size.width;
            const Length h = size.height;
            const Length one = Length::fromTicks(1);
            return PolygonShape{{{between(random, one, w - one), Length()},
                                 {w, between(random, one, h - one)},
                                 {between(random, one, w - one), h},
                                 {Length(), between(random, one, h - one)}}};
        }
        default:
            return RectangleShape{};
    }
}

}  // namespace

std::uint64_t below(Random& random, std::uint64_t count) {
    return random() % count;
}

Piece randomPiece(Random& random) {
    Piece piece;
    piece.kind = allPieceKinds[below(random, std::size(allPieceKinds))];
    piece.place = {between(random, Length::inches(-2), Length::inches(14)),
                   between(random, Length::inches(-2), Length::inches(14))};
    piece.size = {between(random, Length::inches(0, 1, 4), Length::inches(9)),
                  between(random, Length::inches(0, 1, 4), Length::inches(9))};
    if (oneIn(random, 3)) {
        piece.rotation = Angle::millidegrees(static_cast<std::int64_t>(below(random, 360'000)));
    }
    piece.shape = randomShape(random, piece.size);
    if (piece.kind == PieceKind::PhotoSlot) {
        const auto prints = printSizes();
        piece.printSize = oneIn(random, 4) ? piece.size : prints[below(random, prints.size())].size;
        for (auto mats = below(random, maxMats + 1); mats > 0; --mats) {
            Mat mat{between(random, Length::inches(0, 1, 16), Length::inches(1)), {}, ""};
            if (oneIn(random, 3)) {
                mat.bottomBorder = between(random, Length::inches(0, 1, 16), Length::inches(2));
            }
            mat.paper = randomText(random, false);
            mat.gutted = mat.border.ticks() % 2 == 0;
            piece.mats.push_back(mat);
        }
    }
    piece.paper = randomText(random, false);
    piece.name = randomText(random, false);
    piece.note = randomText(random, true);
    piece.locked = oneIn(random, 5);
    return piece;
}

Sketch randomSketch(Random& random, int pieces) {
    Sketch sketch;
    sketch.name = randomText(random, false);
    sketch.note = randomText(random, true);
    const auto sizes = pageSizes();
    sketch.page.size = sizes[below(random, sizes.size())].size;
    sketch.page.doublePage = oneIn(random, 3);
    if (sketch.page.doublePage) {
        sketch.page.foldGap = between(random, Length(), Length::inches(1));
    }
    sketch.page.margins = {
        between(random, Length(), Length::inches(2)), between(random, Length(), Length::inches(2)),
        between(random, Length(), Length::inches(2)), between(random, Length(), Length::inches(2))};
    sketch.page.gutter = between(random, Length(), Length::inches(1));
    for (int i = 0; i < pieces; ++i) {
        const PieceId id{nextId(sketch).value + static_cast<std::uint32_t>(below(random, 3))};
        sketch.pieces.emplace(id, randomPiece(random));
        sketch.order.insert(sketch.order.begin() +
                                static_cast<std::ptrdiff_t>(below(random, sketch.order.size() + 1)),
                            id);
    }
    return sketch;
}

Edit randomEdit(Random& random, const Sketch& sketch) {
    Edit edit;
    switch (below(random, 6)) {
        case 0: {
            const std::vector<Piece> added{randomPiece(random), randomPiece(random)};
            return addPieces(sketch, added);
        }
        case 1:
            edit.page = randomSketch(random, 0).page;
            return edit;
        case 2:
            edit.texts = SketchTexts{randomText(random, false), randomText(random, true)};
            return edit;
        case 3: {
            std::vector<PieceId> order = sketch.order;
            for (std::size_t i = order.size(); i > 1; --i) {
                std::swap(order[i - 1], order[below(random, i)]);
            }
            edit.order = std::move(order);
            return edit;
        }
        default:
            break;
    }
    for (const auto& [id, piece] : sketch.pieces) {
        if (oneIn(random, 3)) {
            edit.pieces.emplace(id, randomPiece(random));
        } else if (oneIn(random, 4)) {
            edit.pieces.emplace(id, std::nullopt);
        }
    }
    return edit;
}

}  // namespace matwright::test
