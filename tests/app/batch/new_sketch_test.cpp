// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "core/carry/carry_over.h"
#include "core/carry/turned_sketch.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/app/batch/batch_run.h"

namespace matwright::app {
namespace {

struct WithPage : BatchRun {
    WithPage() { addSketch("page.sketch.svg", smallSketch()); }
    Sketch written(const char* name) {
        const auto loaded = loadSketch(files, name);
        EXPECT_TRUE(loaded) << name;
        return loaded ? loaded->sketch : Sketch();
    }
};

TEST(BatchCarryOver, WritesTheSketchOnTheOtherPageAndListsWhatGaveWay) {
    WithPage batch;
    EXPECT_EQ(batch.run({"carry-over", "page.sketch.svg", "--to", "8x8", "-o", "new.sketch.svg"}),
              Done);
    const Sketch before = smallSketch();
    const CarriedOver expected =
        carriedOver(before, onPageSize(before.page, {Length::inches(8), Length::inches(8)}));
    EXPECT_EQ(batch.written("new.sketch.svg"), expected.sketch);
    ASSERT_FALSE(expected.gaveWay.empty());
    std::string text = "Wrote new.sketch.svg: 8 × 8 in page\n";
    for (const std::string& sentence : expected.gaveWay) {
        text += sentence + '\n';
    }
    EXPECT_EQ(batch.out, text);
    EXPECT_EQ(batch.err, "");

    EXPECT_EQ(batch.run({"carry-over", "page.sketch.svg", "--to", "8 x 8 in", "-o",
                         "again.sketch.svg", "--json"}),
              Done);
    const auto all = nlohmann::json::parse(batch.out);
    EXPECT_EQ(all["written"], "again.sketch.svg");
    EXPECT_EQ(all["page"]["size"]["width"]["text"], "8 in");
    EXPECT_EQ(all["gaveWay"], nlohmann::json(expected.gaveWay));
    EXPECT_EQ(batch.written("again.sketch.svg"), expected.sketch);
}

TEST(BatchCarryOver, SaysWhereNothingHadToGive) {
    WithPage batch;
    EXPECT_EQ(batch.run({"carry-over", "page.sketch.svg", "--to", "12x12", "-o", "n.sketch.svg"}),
              Done);
    EXPECT_EQ(batch.out, "Wrote n.sketch.svg: 12 × 12 in page\nNothing had to give.\n");
    EXPECT_EQ(batch.written("n.sketch.svg"), smallSketch());
}

TEST(BatchCarryOver, CanGoToADoublePageAndBack) {
    WithPage batch;
    EXPECT_EQ(batch.run({"carry-over", "page.sketch.svg", "--to", "12x12", "--double-page", "-o",
                         "two.sketch.svg"}),
              Done);
    EXPECT_TRUE(batch.written("two.sketch.svg").page.doublePage);
    EXPECT_TRUE(batch.out.starts_with("Wrote two.sketch.svg: 12 × 12 in double page\n"))
        << batch.out;
    EXPECT_EQ(batch.run({"carry-over", "two.sketch.svg", "--to", "12x12", "--single-page", "-o",
                         "one.sketch.svg"}),
              Done);
    EXPECT_FALSE(batch.written("one.sketch.svg").page.doublePage);
}

TEST(BatchCarryOver, ASketchThatCannotBeReadIsRefused) {
    BatchRun batch;
    EXPECT_EQ(batch.run({"carry-over", "none.sketch.svg", "--to", "a4", "-o", "n.sketch.svg"}),
              InputRefused);
    EXPECT_EQ(
        batch.run({"turn", "none.sketch.svg", "--mirror", "left-right", "-o", "n.sketch.svg"}),
        InputRefused);
    EXPECT_TRUE(batch.files.files.empty());
}

TEST(BatchTurn, TurnsAsTheCoreDoes) {
    const struct {
        const char* option;
        const char* word;
        WholeTurn turn;
    } rows[] = {{"--mirror", "left-right", WholeTurn::MirroredLeftRight},
                {"--mirror", "top-bottom", WholeTurn::MirroredTopBottom},
                {"--turn", "upside-down", WholeTurn::UpsideDown},
                {"--turn", "clockwise", WholeTurn::QuarterClockwise},
                {"--turn", "counter-clockwise", WholeTurn::QuarterCounterClockwise}};
    for (const auto& row : rows) {
        WithPage batch;
        EXPECT_EQ(
            batch.run({"turn", "page.sketch.svg", row.option, row.word, "-o", "new.sketch.svg"}),
            Done)
            << batch.err;
        EXPECT_EQ(batch.written("new.sketch.svg"), turned(smallSketch(), row.turn)) << row.word;
        EXPECT_EQ(batch.out, "Wrote new.sketch.svg: 12 × 12 in page\n");
    }
}

TEST(BatchTurn, ADoublePageHasNoQuarterTurn) {
    Sketch sketch = smallSketch();
    sketch.page.doublePage = true;
    BatchRun batch;
    batch.addSketch("page.sketch.svg", sketch);
    EXPECT_EQ(batch.run({"turn", "page.sketch.svg", "--turn", "clockwise", "-o", "n.sketch.svg"}),
              WrongUse);
    EXPECT_TRUE(batch.err.starts_with("matwright-batch: page.sketch.svg: ")) << batch.err;
    EXPECT_EQ(batch.files.files.size(), 1U);
}

TEST(BatchNewSketches, NeverGoOverAFileThatIsThere) {
    WithPage batch;
    batch.files.files["other.sketch.svg"] = "somebody's";
    const std::string before = batch.files.files["page.sketch.svg"];
    for (const std::string output : {"other.sketch.svg", "page.sketch.svg"}) {
        EXPECT_EQ(batch.run({"turn", "page.sketch.svg", "--turn", "upside-down", "-o", output}),
                  CouldNotWrite);
        EXPECT_EQ(batch.err, "matwright-batch: " + output +
                                 ": There is a file of this name already, and it stays as it is; "
                                 "give the result another name.\n");
        EXPECT_EQ(batch.run({"carry-over", "page.sketch.svg", "--to", "a4", "-o", output}),
                  CouldNotWrite);
        EXPECT_EQ(batch.out, "");
    }
    EXPECT_EQ(batch.files.files["page.sketch.svg"], before);
    EXPECT_EQ(batch.files.files["other.sketch.svg"], "somebody's");
}

TEST(BatchNewSketches, SayWhenTheyCannotBeWritten) {
    WithPage batch;
    batch.files.failReplacesWith = Error{ErrorCode::WriteFailed, "The disk is full.", "n"};
    EXPECT_EQ(batch.run({"carry-over", "page.sketch.svg", "--to", "a4", "-o", "n.sketch.svg"}),
              CouldNotWrite);
    EXPECT_EQ(batch.err, "matwright-batch: n: The disk is full.\n");
    EXPECT_EQ(batch.out, "");
}

}  // namespace
}  // namespace matwright::app
