// SPDX-License-Identifier: MIT
#include "tests/support/example_sketches.h"

#include <utility>

#include "core/measure/catalogue.h"
#include "core/sketch/edit.h"

namespace matwright::test {

namespace {

// Sixteenths of an inch: every figure of the inch examples is on the trimmer's scale.
constexpr Length in(std::int64_t whole, std::int64_t sixteenths = 0) {
    return Length::inches(whole, sixteenths, 16);
}
constexpr Length mm(std::int64_t n) {
    return Length::millimetres(n);
}

class SketchBuilder {
  public:
    SketchBuilder(std::string name, std::string note, PageSetup page) {
        m_sketch.name = std::move(name);
        m_sketch.note = std::move(note);
        m_sketch.page = page;
    }

    Piece& add(PieceKind kind, std::string name, Point place, Size size) {
        Piece piece;
        piece.kind = kind;
        piece.name = std::move(name);
        piece.place = place;
        piece.size = size;
        if (kind == PieceKind::PhotoSlot) {
            piece.printSize = size;
        }
        const PieceId id = nextId(m_sketch);
        m_sketch.order.push_back(id);
        return m_sketch.pieces.emplace(id, std::move(piece)).first->second;
    }

    Sketch take() { return std::move(m_sketch); }

  private:
    Sketch m_sketch;
};

PageSetup page(Size size, Length margin, Length gutter) {
    PageSetup setup;
    setup.size = size;
    setup.margins = Margins::all(margin);
    setup.gutter = gutter;
    return setup;
}

Mat mat(Length border, std::string paper) {
    return {border, std::nullopt, std::move(paper)};
}

// The common page: one 4x6 and three 3x4, all matted 1/8 in.
Sketch lighthouseDay() {
    SketchBuilder b("Lighthouse day", "One 4x6 and three 3x4, matted 1/8 in.",
                    page({in(12), in(12)}, in(0, 8), in(0, 4)));
    b.add(PieceKind::Strip, "wave strip", {in(0), in(5, 8)}, {in(12), in(1)}).paper = "wave print";
    Piece& focal =
        b.add(PieceKind::PhotoSlot, "lighthouse", {in(0, 14), in(0, 14)}, {in(6), in(4)});
    focal.mats = {mat(in(0, 2), "white cardstock"), mat(in(0, 2), "navy cardstock")};
    b.add(PieceKind::Title, "title", {in(7, 8), in(0, 12)}, {in(4), in(1, 8)});
    b.add(PieceKind::Journaling, "story", {in(7, 8), in(2, 8)}, {in(4), in(2, 8)}).paper =
        "cream cardstock";
    const char* const names[] = {"stairs", "rocks", "ferry"};
    for (int i = 0; i < 3; ++i) {
        Piece& photo =
            b.add(PieceKind::PhotoSlot, names[i], {in(1) + i * in(3, 8), in(7)}, {in(3), in(4)});
        photo.mats = {mat(in(0, 2), "white cardstock")};
    }
    return b.take();
}

// 8.5x11 upright: one 5x7 and two small squares cut from 2 1/2 in prints.
Sketch firstSnow() {
    SketchBuilder b("First snow in the garden", "One 5x7 and two squares for a letter-size album.",
                    page({in(8, 8), in(11)}, in(0, 8), in(0, 4)));
    b.add(PieceKind::Block, "grey block", {in(0, 8), in(0, 8)}, {in(7, 8), in(7, 8)}).paper =
        "grey linen";
    Piece& focal = b.add(PieceKind::PhotoSlot, "snowman", {in(0, 12), in(0, 12)}, {in(5), in(7)});
    focal.mats = {mat(in(0, 2), "white cardstock")};
    b.add(PieceKind::Journaling, "story", {in(6, 2), in(1)}, {in(1, 8), in(6, 8)}).paper =
        "white cardstock";
    const char* const names[] = {"mittens", "sparrow"};
    for (int i = 0; i < 2; ++i) {
        Piece& photo = b.add(PieceKind::PhotoSlot, names[i], {in(0, 10) + i * in(2, 8), in(8, 6)},
                             {in(2), in(2)});
        photo.printSize = Size{in(2, 8), in(2, 8)};
        photo.mats = {mat(in(0, 2), "grey cardstock")};
    }
    b.add(PieceKind::Title, "title", {in(5, 8), in(8, 4)}, {in(2, 8), in(1)});
    b.add(PieceKind::Embellishment, "snowflake", {in(6, 4), in(9, 4)}, {in(1), in(1)});
    return b.take();
}

// A4 upright in millimetres: two 10x15 cm prints, matted 5 mm.
Sketch plumCake() {
    SketchBuilder b("Plum cake afternoon", "Two 10x15 cm prints on A4.",
                    page({mm(210), mm(297)}, mm(15), mm(6)));
    const char* const names[] = {"dough", "table"};
    for (int i = 0; i < 2; ++i) {
        Piece& photo = b.add(PieceKind::PhotoSlot, names[i], {mm(20), mm(52) + i * mm(116)},
                             {mm(150), mm(100)});
        photo.mats = {Mat{mm(5), std::nullopt, "plum cardstock"}};
    }
    b.add(PieceKind::Title, "title", {mm(15), mm(17)}, {mm(120), mm(24)});
    b.add(PieceKind::Strip, "gingham strip", {mm(181), mm(0)}, {mm(12), mm(297)}).paper = "gingham";
    return b.take();
}

// A double page: an 8x10 to the left, four squares and the story to the right.
Sketch harbourMarket() {
    PageSetup setup = page({in(12), in(12)}, in(0, 8), in(0, 4));
    setup.doublePage = true;
    setup.foldGap = in(0, 8);
    SketchBuilder b("Harbour market", "Double page: an 8x10 and four 4x4.", setup);
    b.add(PieceKind::Strip, "stripe left", {in(0), in(9, 8)}, {in(12), in(1, 8)}).paper =
        "red stripe";
    b.add(PieceKind::Strip, "stripe right", {in(12, 8), in(9, 8)}, {in(12), in(1, 8)}).paper =
        "red stripe";
    Piece& focal = b.add(PieceKind::PhotoSlot, "stalls", {in(0, 12), in(1)}, {in(10), in(8)});
    focal.mats = {mat(in(0, 4), "kraft cardstock")};
    b.add(PieceKind::Title, "title", {in(1), in(9, 12)}, {in(9), in(1)});
    const char* const names[] = {"lemons", "nets", "bread", "gulls"};
    for (int i = 0; i < 4; ++i) {
        Piece& photo =
            b.add(PieceKind::PhotoSlot, names[i],
                  {in(13, 4) + (i % 2) * in(4, 8), in(0, 10) + (i / 2) * in(4, 8)}, {in(4), in(4)});
        photo.mats = {mat(in(0, 2), "kraft cardstock")};
    }
    b.add(PieceKind::Journaling, "story", {in(22, 4), in(0, 8)}, {in(1, 8), in(8, 12)}).paper =
        "cream cardstock";
    b.add(PieceKind::Embellishment, "anchor", {in(22, 8), in(9, 12)}, {in(1), in(1)});
    return b.take();
}

// Rotated and round pieces, a pennant and rounded corners.
Sketch kiteAfternoon() {
    SketchBuilder b("Kite afternoon", "Tilted prints, a round one and a pennant.",
                    page({in(12), in(12)}, in(0, 8), in(0, 4)));
    Piece& sky = b.add(PieceKind::Block, "sky block", {in(1), in(1)}, {in(10), in(7, 8)});
    sky.shape = RoundedRectangleShape{in(0, 12)};
    sky.paper = "sky blue";
    Piece& kite = b.add(PieceKind::PhotoSlot, "kite", {in(1, 12), in(2)}, {in(4), in(6)});
    kite.rotation = Angle::degrees(-6);
    kite.mats = {Mat{in(0, 2), in(0, 8), "white cardstock"}};
    Piece& run = b.add(PieceKind::PhotoSlot, "running", {in(6, 12), in(1, 12)}, {in(4), in(3)});
    run.rotation = Angle::millidegrees(4500);
    run.mats = {mat(in(0, 2), "white cardstock")};
    Piece& round = b.add(PieceKind::PhotoSlot, "laughing", {in(7), in(5, 4)}, {in(4), in(4)});
    round.shape = OvalShape{};
    round.mats = {mat(in(0, 4), "yellow cardstock")};
    Piece& pennant =
        b.add(PieceKind::Embellishment, "pennant", {in(0, 12), in(9, 4)}, {in(1, 8), in(2)});
    pennant.shape = PolygonShape{{{in(0), in(0)},
                                  {in(1, 8), in(0)},
                                  {in(1, 8), in(2)},
                                  {in(0, 12), in(1, 8)},
                                  {in(0), in(2)}}};
    b.add(PieceKind::Title, "title", {in(2, 12), in(10)}, {in(4), in(1)});
    b.add(PieceKind::Journaling, "story", {in(7, 8), in(10, 2)}, {in(3, 8), in(1, 4)}).paper =
        "cream cardstock";
    return b.take();
}

}  // namespace

std::vector<ExampleSketch> exampleSketches() {
    return {
        {"one-4x6-three-3x4.sketch.svg", lighthouseDay(), false},
        {"letter-one-5x7-two-squares.sketch.svg", firstSnow(), false},
        {"a4-two-10x15cm.sketch.svg", plumCake(), true},
        {"double-page-8x10-four-4x4.sketch.svg", harbourMarket(), false},
        {"tilted-and-round.sketch.svg", kiteAfternoon(), false},
    };
}

}  // namespace matwright::test
