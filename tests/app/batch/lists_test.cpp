// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "app/batch/json.h"
#include "app/batch/place.h"
#include "app/batch/table.h"
#include "core/sketch/edit.h"
#include "tests/app/batch/batch_run.h"

namespace matwright::app {
namespace {

using nlohmann::json;

TEST(BatchTable, AlignsColumnsByCharactersAndLeavesNoBlanksAtTheEnd) {
    Table table({"No.", "Name", "Note"}, {0});
    table.addRow({"1", "½ slot", "x"});
    table.addRow({"12", "a", ""});
    EXPECT_EQ(table.text(),
              "No.  Name    Note\n"
              "  1  ½ slot  x\n"
              " 12  a\n");
}

TEST(BatchTable, WithoutHeadingsItStartsWithTheFirstRow) {
    Table table({"", ""}, {});
    table.addRow({"a", "b"});
    EXPECT_EQ(table.text(), "a  b\n");
}

TEST(BatchPieces, AreListedFromBottomToTopInTheTable) {
    BatchRun batch;
    batch.addSketch("page.svg", smallSketch());
    EXPECT_EQ(batch.run({"pieces", "page.svg"}), Done);
    EXPECT_EQ(batch.out,
              "No.  Kind        Name        Print     Trim         Mats                            "
              "Left       Top  Rotation\n"
              "  1  photo slot  lighthouse  6 × 4 in  6 × 4 in     1/8 in, 1/4 in (bottom 1/2 in)  "
              "1 in      1 in\n"
              "  2  strip                             12 × 3/4 in                                  "
              "0 in  9 1/2 in\n");
    EXPECT_EQ(batch.err, "");
    EXPECT_EQ(batch.paintingStarts, 0);
}

TEST(BatchPieces, FollowTheScaleAndMarkWhatIsRounded) {
    BatchRun batch;
    batch.addSketch("page.svg", smallSketch());
    EXPECT_EQ(batch.run({"pieces", "page.svg", "--scale", "1mm"}), Done);
    EXPECT_NE(batch.out.find("≈152 × ≈102 mm"), std::string::npos) << batch.out;
}

TEST(BatchPieces, OfAMetricPageAreInMillimetres) {
    Sketch sketch = smallSketch();
    sketch.page.size = {Length::millimetres(210), Length::millimetres(297)};
    sketch.page.margins = Margins::all(Length::millimetres(10));
    sketch.pieces.at(PieceId{1}).size = {Length::millimetres(150), Length::millimetres(100)};
    BatchRun batch;
    batch.addSketch("page.svg", sketch);
    EXPECT_EQ(batch.run({"pieces", "page.svg"}), Done);
    EXPECT_NE(batch.out.find(" 150 × 100 mm "), std::string::npos) << batch.out;
}

TEST(BatchPieces, InJsonCarryEveryLengthExactly) {
    BatchRun batch;
    batch.addSketch("page.svg", smallSketch());
    EXPECT_EQ(batch.run({"pieces", "page.svg", "--json"}), Done);
    const json all = json::parse(batch.out);
    EXPECT_EQ(all["name"], "Small");
    EXPECT_EQ(all["page"]["size"]["width"]["ticks"], 12 * 914400);
    ASSERT_EQ(all["pieces"].size(), 2u);
    const json& photo = all["pieces"][0];
    EXPECT_EQ(photo["number"], 1);
    EXPECT_EQ(photo["kind"], "photo slot");
    EXPECT_EQ(photo["shape"], "rectangle");
    EXPECT_EQ(photo["print"]["width"]["mm"], 152.4);
    EXPECT_EQ(photo["left"]["text"], "1 in");
    ASSERT_EQ(photo["mats"].size(), 2u);
    EXPECT_EQ(photo["mats"][0]["size"]["height"]["text"], "4 1/4 in");
    EXPECT_EQ(photo["mats"][1]["bottomBorder"]["text"], "1/2 in");
    EXPECT_EQ(photo["mats"][1]["gutted"], false);
    // 4 in + 2 x 1/8 in + 1/4 in + 1/2 in
    EXPECT_EQ(photo["mats"][1]["size"]["height"]["text"], "5 in");
    const json& strip = all["pieces"][1];
    EXPECT_FALSE(strip.contains("print"));
    EXPECT_FALSE(strip.contains("mats"));
    EXPECT_EQ(strip["paper"], "wave");
}

TEST(BatchPieces, LeftAndTopAreOfThePieceAsItLies) {
    Sketch sketch = smallSketch();
    sketch.pieces.at(PieceId{1}).rotation = Angle::degrees(90);
    const json all = json::parse(piecesJson(sketch));
    // 6 x 4 in about its centre (4, 3) in becomes 4 x 6 in.
    EXPECT_EQ(all["pieces"][0]["left"]["text"], "2 in");
    EXPECT_EQ(all["pieces"][0]["top"]["text"], "0 in");
    EXPECT_EQ(all["pieces"][0]["rotation"], 90);
}

TEST(BatchPieces, LeftAndTopOfATurnedOvalAreOfItsEdgeNotOfItsBox) {
    Piece oval;
    oval.place = {Length::inches(2), Length::inches(2)};
    oval.size = {Length::inches(4), Length::inches(2)};
    oval.shape = OvalShape{};
    oval.rotation = Angle::degrees(45);
    const Place place = placeOf(oval, {Rect::at({}, {Length::inches(12), Length::inches(12)})});
    // An ellipse of half axes a and b turned by 45 degrees reaches sqrt((a^2 + b^2) / 2) each way;
    // the cubic curves stray from it by at most 0.03 % of a.
    const double reach = std::sqrt((2.0 * 2 + 1 * 1) / 2);
    EXPECT_NEAR(place.left.toInches(), 4 - reach, 0.001);
    EXPECT_NEAR(place.top.toInches(), 3 - reach, 0.001);
}

TEST(BatchPieces, OfADoublePageAreMeasuredOnThePageTheyBeginOn) {
    Sketch sketch = smallSketch();
    sketch.page.doublePage = true;
    sketch.page.foldGap = Length::inches(0, 1, 2);
    const std::vector<Rect> both = pages(sketch.page);
    Piece piece = sketch.pieces.at(PieceId{1});
    const Length tick = Length::fromTicks(1);
    const std::pair<Length, Place> cases[] = {
        {Length::inches(-1), {0, Length::inches(-1), Length::inches(1)}},
        {Length{}, {0, {}, Length::inches(1)}},
        {both[1].left() - tick, {0, both[1].left() - tick, Length::inches(1)}},
        {both[1].left(), {1, {}, Length::inches(1)}},
        {both[1].left() + Length::inches(2), {1, Length::inches(2), Length::inches(1)}},
    };
    for (const auto& [x, place] : cases) {
        piece.place.x = x;
        EXPECT_EQ(placeOf(piece, both), place) << x.ticks();
    }
    sketch.pieces.at(PieceId{1}).place.x = both[1].left() + Length::inches(2);
    EXPECT_NE(piecesTable(sketch, Scale::SixteenthInch).find("  right  2 in"), std::string::npos)
        << piecesTable(sketch, Scale::SixteenthInch);
    EXPECT_EQ(json::parse(piecesJson(sketch))["pieces"][0]["onPage"], 2);
}

TEST(BatchCheck, AnswersZeroWhenThereIsNothingToMend) {
    BatchRun batch;
    batch.addSketch("page.svg", blankSketch());
    EXPECT_EQ(batch.run({"check", "page.svg"}), Done);
    EXPECT_EQ(batch.out, "Nothing to mend.\n");
    EXPECT_EQ(batch.run({"check", "page.svg", "--json"}), Done);
    EXPECT_EQ(json::parse(batch.out), json::parse(R"({"findings": []})"));
}

Sketch offThePage() {
    Sketch sketch = smallSketch();
    sketch.pieces.at(PieceId{1}).place.x = Length::inches(-1);
    return sketch;
}

TEST(BatchCheck, AnswersOneAndSaysWhatItFound) {
    BatchRun batch;
    batch.addSketch("page.svg", offThePage());
    EXPECT_EQ(batch.run({"check", "page.svg"}), Findings);
    EXPECT_EQ(batch.out.rfind("off-page: ", 0), 0u) << batch.out;
    EXPECT_EQ(batch.run({"check", "page.svg", "--json"}), Findings);
    const json all = json::parse(batch.out);
    ASSERT_FALSE(all["findings"].empty());
    EXPECT_EQ(all["findings"][0]["kind"], "off-page");
    EXPECT_EQ(all["findings"][0]["pieces"][0]["id"], 1);
    EXPECT_EQ(all["findings"][0]["pieces"][0]["number"], 1);
    EXPECT_EQ(all["findings"][0]["pieces"][0]["name"], "lighthouse");
}

TEST(BatchSizes, ListsTheCatalogue) {
    BatchRun batch;
    EXPECT_EQ(batch.run({"sizes"}), Done);
    for (const char* part :
         {"Pages\n", "Prints\n", "Sheets", "12x12", "10x15cm", "13x19", "210 × 297 mm"}) {
        EXPECT_NE(batch.out.find(part), std::string::npos) << part;
    }
}

}  // namespace
}  // namespace matwright::app
