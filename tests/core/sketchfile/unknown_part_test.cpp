// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/sketchfile/sketch_file.h"
#include "tests/core/sketchfile/example.h"

namespace matwright {
namespace {

using test::block;
using test::fileAround;
using test::modelWith;

// The one warning there is.
std::string warningOf(const std::string& file) {
    const auto loaded = readSketch(file);
    if (!loaded) {
        return "refused: " + loaded.error().text();
    }
    return loaded->warnings.size() == 1 ? loaded->warnings.front()
                                        : std::to_string(loaded->warnings.size()) + " warnings";
}

TEST(UnknownPart, AnAttributeIsNamedWithItsLine) {
    EXPECT_EQ(warningOf(fileAround(modelWith(block(1, "sheen=\"high\"")))),
              "line 7: The \"sheen\" of <piece> is not known to this version and would be lost on "
              "saving.");
}

TEST(UnknownPart, AnElementIsNamedWithItsLine) {
    EXPECT_EQ(warningOf(fileAround(modelWith(block(1, "", "\n<ribbon/>")))),
              "line 8: The part \"ribbon\" in <piece> is not known to this version and would be "
              "lost on saving.");
}

TEST(UnknownPart, AnElementOfAnotherNamespaceIsNamedToo) {
    EXPECT_TRUE(warningOf(fileAround("<o:x xmlns:o=\"urn:other\"/>" + modelWith("")))
                    .contains("\"o:x\" in <sketch>"));
    EXPECT_TRUE(warningOf(fileAround("<name xmlns=\"urn:other\">n</name>" + modelWith("")))
                    .contains("\"name\" in <sketch>"));
}

TEST(UnknownPart, StrayTextIsNamed) {
    EXPECT_TRUE(warningOf(fileAround(modelWith("stray"))).contains("text in <pieces>"));
}

TEST(UnknownPart, MarkupInsideATextIsNamedAndTheTextAroundItIsRead) {
    const std::string file = fileAround("<note>a<b>c</b>d</note>" + modelWith(""));
    EXPECT_TRUE(warningOf(file).contains("\"b\" in <note>"));
    EXPECT_EQ(readSketch(file)->sketch.note, "ad");
}

TEST(UnknownPart, AMeasureThatItsShapeHasNotIsNamed) {
    EXPECT_TRUE(warningOf(fileAround(modelWith(block(1, "radius=\"5\"")))).contains("\"radius\""));
}

TEST(UnknownPart, CommentsAndThePictureAreNoPartOfTheModel) {
    const auto loaded =
        readSketch(test::replaced(fileAround("<!-- x -->" + modelWith("")), "</svg>",
                                  "<g><sketch/><rect/></g><script>x</script></svg>"));
    ASSERT_TRUE(loaded) << loaded.error().text();
    EXPECT_TRUE(loaded->warnings.empty());
}

TEST(UnknownPart, WarningsAreCountedPastFifty) {
    std::string many;
    for (int i = 0; i < 1000; ++i) {
        many += "<ribbon/>";
    }
    const auto loaded = readSketch(fileAround(modelWith(many)));
    ASSERT_TRUE(loaded);
    ASSERT_EQ(loaded->warnings.size(), 50u);
    EXPECT_TRUE(loaded->warnings.back().starts_with("951 more parts"));
}

TEST(UnknownPart, ALongOrOddNameIsCutShortInTheSentence) {
    const std::string name(5000, 'n');
    EXPECT_LT(warningOf(fileAround(modelWith("<" + name + "/>"))).size(), 200u);
}

}  // namespace
}  // namespace matwright
