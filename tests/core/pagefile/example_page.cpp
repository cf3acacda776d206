// SPDX-License-Identifier: MIT
#include "tests/core/pagefile/example_page.h"

#include <fmt/format.h>

#include <stdexcept>

namespace matwright::test {

namespace {

Piece slot(std::int64_t x, std::int64_t y, Size size) {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.place = {Length::inches(x), Length::inches(y)};
    piece.size = size;
    piece.printSize = size;
    return piece;
}

ContentKey key(std::uint8_t byte) {
    ContentKey made;
    made.bytes.fill(byte);
    return made;
}

}  // namespace

Making examplePage() {
    const Size upright{Length::inches(4), Length::inches(6)};
    const Size lying{Length::inches(6), Length::inches(4)};
    Making making{blankSketch(), {}};
    making.sketch.name = "A day out";
    making.sketch.pieces = {{PieceId{1}, slot(1, 1, upright)}, {PieceId{2}, slot(5, 7, lying)}};
    making.sketch.pieces.at(PieceId{1}).mats = {{Length::inches(0, 1, 8), {}, "kraft"}};
    making.sketch.pieces.at(PieceId{2}).rotation = Angle::degrees(6);
    making.sketch.order = {PieceId{2}, PieceId{1}};

    PhotoWork& work = making.work;
    Photo below;
    below.path = "/home/somebody/Pages/photos/beach & dunes.jpg";
    below.content = key(0xA1);
    below.bytes = 3'482'113;
    below.upright = {3024, 4032};
    below.taken = "2026-07-14 16:03:22";
    below.rating = 4;
    below.favourite = true;
    below.wish = upright;
    below.tone = {true, 10, -5, 3, -20, 30};
    Photo away;
    away.path = "/media/camera/0002.jpg";
    away.content = key(0xB2);
    away.upright = {4032, 3024};
    work.photos = {{PhotoId{1}, below}, {PhotoId{2}, away}};
    work.focal = PhotoId{1};
    work.placements = {{PieceId{1},
                        {PhotoId{1},
                         {450'000, 520'000, 1'250'000, 1, Angle::millidegrees(358'500)},
                         Length::inches(0, 1, 8)}},
                       {PieceId{2}, {PhotoId{2}, {}, {}}}};
    work.papers = {
        {"kraft", {{200, 170, 130}, {}, {}, {}}},
        {"patterned, 6 x 12",
         {{90, 120, 60}, "/home/somebody/Pages/papers/dots.png", key(0xC3), Length::inches(12)}}};
    return making;
}

std::string examplePageFile() {
    return writePage(examplePage(), {}, exampleFolder);
}

std::string replaced(std::string text, std::string_view from, std::string_view to) {
    const std::size_t at = text.find(from);
    if (at == std::string::npos || text.find(from, at + 1) != std::string::npos) {
        throw std::logic_error(fmt::format("not exactly one \"{}\"", from));
    }
    return text.replace(at, from.size(), to);
}

std::string smallPicture(int number) {
    return "\xFF\xD8\xFF" + std::to_string(number);
}

}  // namespace matwright::test
