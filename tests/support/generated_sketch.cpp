// SPDX-License-Identifier: MIT
#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "core/measure/catalogue.h"
#include "tests/support/generated_library.h"

namespace matwright::test {

namespace {

constexpr std::string_view moods[] = {
    "Quiet",  "Sunny", "Winter",  "Little", "Old",   "Bright", "Windy",  "First", "Last",
    "Lazy",   "Merry", "Golden",  "Rainy",  "Early", "Late",   "Summer", "Paper", "Spring",
    "Autumn", "Small", "Evening", "Loud",   "Blue",  "Green",  "Café",   "Süße",  "Été"};
constexpr std::string_view things[] = {
    "beach",    "garden",  "picnic",  "birthday", "holiday", "market", "river",   "harbour",
    "school",   "kitchen", "meadow",  "orchard",  "train",   "island", "cousins", "grandma",
    "puppy",    "kittens", "snowman", "pumpkin",  "wedding", "baby",   "bicycle", "camping",
    "museum",   "concert", "bakery",  "library",  "swing",   "attic",  "balcony", "forest",
    "mountain", "lake",    "bridge",  "fair"};
constexpr std::string_view remarks[] = {"Leave room for tickets.",
                                        "Works with lying photos.",
                                        "Ribbon along the strip.",
                                        "Good for holidays by the sea.",
                                        "The focal photo goes first.",
                                        "Cut the strip from a scrap.",
                                        "Three small ones in a row.",
                                        "Journaling on a tag.",
                                        "Two mats look best.",
                                        "For many photos of one day.",
                                        "Button or brads in the corner.",
                                        "Use the quiet paper below."};

template <typename T, std::size_t n>
const T& oneOf(Random& random, const T (&list)[n]) {
    return list[below(random, n)];
}

bool chance(Random& random, std::uint64_t percent) {
    return below(random, 100) < percent;
}

// Often used pages and prints stand here more than once.
constexpr std::string_view pages[] = {"12x12", "12x12", "12x12", "12x12",  "8.5x11", "8.5x11",
                                      "a4",    "8x8",   "6x8",   "11x8.5", "9x12"};
constexpr std::string_view prints[] = {"4x6", "4x6", "4x6",   "3x4", "3x4",
                                       "3x3", "2x2", "3.5x5", "4x4", "5x7"};

void addPiece(Sketch& sketch, Piece piece) {
    const PieceId id = nextId(sketch);
    sketch.pieces.emplace(id, std::move(piece));
    sketch.order.push_back(id);
}

Piece photoAt(Random& random, Point place, Size size) {
    Piece photo;
    photo.kind = PieceKind::PhotoSlot;
    photo.place = place;
    photo.size = size;
    photo.printSize = size;
    if (chance(random, 40)) {
        photo.mats.push_back({Length::inches(0, 1, 16), {}, "white cardstock"});
    }
    return photo;
}

Piece placed(PieceKind kind, Rect box) {
    Piece piece;
    piece.kind = kind;
    piece.place = box.topLeft();
    piece.size = box.size();
    return piece;
}

// Rows from the top left of `room` down, as far as the photos fit; gives what is left below.
Rect layRows(Random& random, Sketch& sketch, Rect room, std::uint64_t photos) {
    const Length gutter = sketch.page.gutter;
    Point at = room.topLeft();
    Length rowHeight;
    for (std::uint64_t i = 0; i < photos; ++i) {
        Size size = findPrintSize(oneOf(random, prints))->size;
        size = chance(random, 50) ? size.turned() : size;
        if (at.x + size.width > room.right()) {
            at = {room.left(), at.y + rowHeight + gutter};
            rowHeight = Length();
        }
        if (!room.contains(Rect::at(at, size))) {
            continue;
        }
        addPiece(sketch, photoAt(random, at, size));
        at.x += size.width + gutter;
        rowHeight = std::max(rowHeight, size.height);
    }
    const Length below = std::min(at.y + rowHeight + gutter, room.bottom());
    return {room.x, {below, room.bottom()}};
}

void layWords(Random& random, Sketch& sketch, Rect room) {
    const Length least = Length::inches(1);
    if (room.size().height < least) {
        return;
    }
    const Length half = room.size().width.halfRoundedDown();
    const Length height = std::min(room.size().height, Length::inches(2));
    if (chance(random, 80)) {
        addPiece(sketch, placed(PieceKind::Title, Rect::at(room.topLeft(), {half, least})));
    }
    if (chance(random, 60)) {
        addPiece(sketch, placed(PieceKind::Journaling,
                                Rect::at({room.left() + half + sketch.page.gutter, room.top()},
                                         {half - sketch.page.gutter, height})));
    }
}

std::string generatedName(Random& random) {
    std::string name(oneOf(random, moods));
    name += ' ';
    name += oneOf(random, things);
    if (chance(random, 30)) {
        name += " with ";
        name += oneOf(random, things);
    }
    return name + ' ' + std::to_string(1 + below(random, 99));
}

}  // namespace

Sketch generatedSketch(Random& random) {
    Sketch sketch;
    sketch.name = generatedName(random);
    sketch.note = chance(random, 50) ? std::string(oneOf(random, remarks)) : "";
    sketch.page.size = findPageSize(oneOf(random, pages))->size;
    sketch.page.doublePage = chance(random, 12);
    const Rect whole = surface(sketch.page);
    if (chance(random, 60)) {
        const Length height = Length::inches(1 + static_cast<std::int64_t>(below(random, 4)));
        const Length top = Length::inches(static_cast<std::int64_t>(below(random, 4)));
        Piece strip =
            placed(PieceKind::Strip, Rect::at({whole.left(), top}, {whole.size().width, height}));
        strip.paper = "patterned";
        addPiece(sketch, std::move(strip));
    }
    std::uint64_t photos = 1 + below(random, 4) + below(random, 3) + below(random, 3);
    for (const Rect& room : insideMargins(sketch.page)) {
        layWords(random, sketch, layRows(random, sketch, room, photos));
        photos = 1 + below(random, 4);
    }
    return sketch;
}

}  // namespace matwright::test
