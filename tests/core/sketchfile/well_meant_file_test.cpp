// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/sketchfile/sketch_file.h"
#include "tests/core/sketchfile/example.h"

namespace matwright {
namespace {

using test::block;
using test::exampleSketch;
using test::fileAround;
using test::modelWith;
using test::replaced;

// What other programs may do to a file without harm.

void expectExample(const std::string& file) {
    const auto loaded = readSketch(file);
    ASSERT_TRUE(loaded) << loaded.error().text();
    EXPECT_EQ(loaded->sketch, exampleSketch());
    EXPECT_TRUE(loaded->warnings.empty()) << loaded->warnings.front();
}

std::string everyReplaced(std::string text, std::string_view from, std::string_view to) {
    for (std::size_t at = text.find(from); at != std::string::npos;
         at = text.find(from, at + to.size())) {
        text.replace(at, from.size(), to);
    }
    return text;
}

TEST(WellMeantFile, AByteOrderMarkIsAccepted) {
    expectExample("\xEF\xBB\xBF" + writeSketch(exampleSketch()));
}

TEST(WellMeantFile, CarriageReturnsAreLineBreaks) {
    expectExample(everyReplaced(writeSketch(exampleSketch()), "\n", "\r\n"));
    expectExample(everyReplaced(writeSketch(exampleSketch()), "\n", "\r"));
}

TEST(WellMeantFile, ADifferentPictureChangesNothing) {
    const std::string file = writeSketch(exampleSketch());
    const std::size_t modelEnd = file.find("</sketch>") + 9;
    expectExample(file.substr(0, modelEnd) + "<circle r=\"5\"/></svg>");
}

TEST(WellMeantFile, SomethingBeforeTheModelChangesNothing) {
    expectExample(replaced(writeSketch(exampleSketch()), "<sketch ",
                           "<title>A day out</title><defs/><sketch "));
}

TEST(WellMeantFile, ANamespacePrefixIsFollowed) {
    const auto loaded = readSketch(
        "<s:svg xmlns:s='http://www.w3.org/2000/svg' xmlns:m='urn:matwright:sketch'>"
        "<m:sketch version='1' unit='1/914400 in'><m:name>n</m:name>"
        "<m:page width='914400' height='914400' gutter='0'>"
        "<m:margins left='0' top='0' right='0' "
        "bottom='0'/></m:page><m:pieces/></m:sketch></s:svg>");
    ASSERT_TRUE(loaded) << loaded.error().text();
    EXPECT_EQ(loaded->sketch.name, "n");
    EXPECT_TRUE(loaded->warnings.empty());
}

TEST(WellMeantFile, ACharacterDataSectionIsText) {
    const auto loaded = readSketch(fileAround("<note> a<![CDATA[<b>]]>\n</note>" + modelWith("")));
    ASSERT_TRUE(loaded) << loaded.error().text();
    EXPECT_EQ(loaded->sketch.note, " a<b>\n");
}

TEST(WellMeantFile, AnUnlockedPieceMayBeSaidToBeUnlocked) {
    const auto loaded = readSketch(fileAround(modelWith(block(1, "locked=\"no\""))));
    ASSERT_TRUE(loaded) << loaded.error().text();
    EXPECT_FALSE(loaded->sketch.pieces.at(PieceId{1}).locked);
}

TEST(WellMeantFile, PiecesLieInTheOrderTheyStandInWhateverTheirIds) {
    const auto loaded = readSketch(fileAround(modelWith(block(7) + block(2) + block(5))));
    ASSERT_TRUE(loaded) << loaded.error().text();
    EXPECT_EQ(loaded->sketch.order, (std::vector{PieceId{7}, PieceId{2}, PieceId{5}}));
}

TEST(WellMeantFile, AnUnusualWayToWriteXmlIsRead) {
    expectExample(replaced(writeSketch(exampleSketch()),
                           "<?xml version=\"1.0\" encoding=\"UTF-8\"?>",
                           "<?xml version='1.0' encoding='utf-8' standalone='yes'?>\n<!-- x -->"
                           "<?style none?>"));
    expectExample(everyReplaced(writeSketch(exampleSketch()), "&lt;", "&#x3C;"));
    expectExample(replaced(writeSketch(exampleSketch()), "Focal photo", "Focal&#32;photo"));
}

}  // namespace
}  // namespace matwright
