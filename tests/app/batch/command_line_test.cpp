// SPDX-License-Identifier: MIT
#include "app/batch/command_line.h"

#include <gtest/gtest.h>

#include "tests/app/batch/batch_run.h"

namespace matwright::app {
namespace {

TEST(BatchCommandLine, HelpTeachesWithExamplesAndExitCodes) {
    BatchRun batch;
    EXPECT_EQ(batch.run({"--help"}), Done);
    EXPECT_EQ(batch.err, "");
    for (const char* part : {"template", "cutlines", "picture", "check", "pieces", "sizes",
                             "library", "Examples:", "Exit codes:"}) {
        EXPECT_NE(batch.out.find(part), std::string::npos) << part;
    }
    for (const char* command :
         {"template", "cutlines", "picture", "carry-over", "turn", "check", "pieces"}) {
        EXPECT_EQ(batch.run({command, "--help"}), Done);
        EXPECT_NE(batch.out.find(std::string("matwright-batch ") + command), std::string::npos);
    }
}

TEST(BatchCommandLine, HelpOnLibrariesTeachesWithExamples) {
    BatchRun batch;
    EXPECT_EQ(batch.run({"library", "--help"}), Done);
    for (const char* command :
         {"list", "search", "families", "problems", "import", "export", "label"}) {
        EXPECT_NE(batch.out.find(std::string("\n  ") + command), std::string::npos) << command;
        EXPECT_EQ(BatchRun().run({"library", command, "--help"}), Done);
    }
    EXPECT_EQ(batch.run({"library", "search", "--help"}), Done);
    EXPECT_NE(batch.out.find("matwright-batch library search --photos 3"), std::string::npos);
}

TEST(BatchCommandLine, VersionIsOneLine) {
    BatchRun batch;
    EXPECT_EQ(batch.run({"--version"}), Done);
    EXPECT_EQ(std::count(batch.out.begin(), batch.out.end(), '\n'), 1);
    EXPECT_EQ(batch.out.rfind("matwright-batch ", 0), 0U) << batch.out;
}

TEST(BatchCommandLine, NamesTheWordItDoesNotKnow) {
    const struct {
        std::vector<std::string> arguments;
        std::string sentence;
    } rows[] = {{{"nope"}, "There is no command \"nope\"."},
                {{"--nope"}, "There is no option \"--nope\"."},
                {{"template", "--nope=1"}, "There is no option \"--nope\"."},
                {{"pieces", "page.svg", "--nope"}, "There is no option \"--nope\"."},
                {{"library", "nope"}, "There is no command \"nope\"."},
                {{"library", "--nope"}, "There is no option \"--nope\"."},
                {{"library", "search", "sea", "--nope"}, "There is no option \"--nope\"."}};
    for (const auto& row : rows) {
        BatchRun batch;
        EXPECT_EQ(batch.run(row.arguments), WrongUse);
        EXPECT_EQ(batch.err.rfind("matwright-batch: " + row.sentence, 0), 0U) << batch.err;
    }
}

using Arguments = std::vector<std::string>;

class BatchWrongUse : public testing::TestWithParam<Arguments> {};

TEST_P(BatchWrongUse, IsRefusedWithASentenceAndNothingIsWritten) {
    BatchRun batch;
    batch.addSketch("page.svg", smallSketch());
    EXPECT_EQ(batch.run(GetParam()), WrongUse);
    EXPECT_EQ(batch.out, "");
    EXPECT_EQ(batch.err.rfind("matwright-batch: ", 0), 0u) << batch.err;
    EXPECT_EQ(batch.files.files.size(), 1u);
}

INSTANTIATE_TEST_SUITE_P(
    CommandLines, BatchWrongUse,
    testing::Values(
        Arguments{}, Arguments{"frobnicate"}, Arguments{"template"},
        Arguments{"template", "page.svg"}, Arguments{"template", "-o", "out.svg"},
        Arguments{"template", "page.svg", "-o", "out.txt"},
        Arguments{"template", "page.svg", "-o", "svg"},
        Arguments{"template", "page.svg", "-o", "out.pdf", "--sheet", "a4"},
        Arguments{"template", "page.svg", "-o", "out.pdf", "--tiled", "--sheet", "napkin"},
        Arguments{"template", "page.svg", "-o", "out.pdf", "--tiled", "--overlap", "wide"},
        Arguments{"template", "page.svg", "-o", "out.pdf", "--tiled", "--overlap", "-1/4"},
        Arguments{"template", "page.svg", "-o", "out.pdf", "--tiled", "--printer-margin", "4.2"},
        Arguments{"template", "page.svg", "-o", "out.pdf", "--scale", "1/10in"},
        Arguments{"cutlines", "page.svg", "-o", "out.pdf"},
        Arguments{"picture", "page.svg", "-o", "out.jpg"},
        Arguments{"picture", "page.svg", "-o", "out.png", "--width", "0"},
        Arguments{"picture", "page.svg", "-o", "out.png", "--width", "20001"},
        Arguments{"check", "page.svg", "--trimmer-step", "0"}, Arguments{"check", "page.svg", "x"},
        Arguments{"pieces"}, Arguments{"library"}, Arguments{"library", "search", "--photos", "-1"},
        Arguments{"library", "search", "--photos", "101"},
        Arguments{"library", "search", "--photos", "2", "--photos-at-most", "3"},
        Arguments{"library", "search", "--single-page", "--double-page"},
        Arguments{"library", "search", "--some-upright", "--only-lying"},
        Arguments{"library", "search", "--print", "wide"},
        Arguments{"library", "search", "--page", "0x0"},
        Arguments{"library", "search", "--order", "colour"}, Arguments{"library", "list", "sea"},
        Arguments{"library", "import"}, Arguments{"library", "export"},
        Arguments{"library", "export", "-o", "out.txt"},
        Arguments{"library", "export", "-o", "out.pdf", "--paper", "napkin"},
        Arguments{"library", "export", "-o", "out.pdf", "--columns", "11"},
        Arguments{"library", "label"},
        Arguments{"library", "label", "a", "--favourite", "--no-favourite"},
        Arguments{"carry-over", "page.svg", "-o", "out.sketch.svg"},
        Arguments{"carry-over", "page.svg", "--to", "napkin", "-o", "out.sketch.svg"},
        Arguments{"carry-over", "page.svg", "--to", "a4", "-o", "out.svg"},
        Arguments{"carry-over", "page.svg", "--to", "a4"},
        Arguments{"turn", "page.svg", "-o", "out.sketch.svg"},
        Arguments{"turn", "page.svg", "-o", "out.svg", "--mirror", "left-right"},
        Arguments{"turn", "page.svg", "-o", "out.sketch.svg", "--turn", "about"},
        Arguments{"turn", "page.svg", "-o", "out.sketch.svg", "--turn", "clockwise", "--mirror",
                  "left-right"}));

TEST(BatchCommandLine, AnUnknownCommandIsNamed) {
    BatchRun batch;
    EXPECT_EQ(batch.run({"frobnicate", "page.svg"}), WrongUse);
    EXPECT_NE(batch.err.find("There is no command \"frobnicate\"."), std::string::npos)
        << batch.err;
}

TEST(BatchInput, ThatIsMissingOrNoSketchIsRefused) {
    BatchRun batch;
    batch.files.files["text.svg"] = "no sketch";
    for (const char* input : {"missing.svg", "text.svg"}) {
        for (const Arguments& arguments : {Arguments{"template", input, "-o", "out.svg"},
                                           Arguments{"cutlines", input, "-o", "out.svg"},
                                           Arguments{"picture", input, "-o", "out.png"},
                                           Arguments{"check", input}, Arguments{"pieces", input}}) {
            EXPECT_EQ(batch.run(arguments), InputRefused) << arguments[0];
            EXPECT_EQ(batch.err.rfind(std::string("matwright-batch: ") + input, 0), 0u)
                << batch.err;
            EXPECT_EQ(batch.out, "");
        }
    }
}

}  // namespace
}  // namespace matwright::app
