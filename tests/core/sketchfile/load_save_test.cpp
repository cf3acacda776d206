// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/sketchfile/sketch_file.h"
#include "tests/core/sketchfile/example.h"

namespace matwright {
namespace {

TEST(LoadSave, ASavedSketchIsLoadedAgain) {
    MemoryFileStore store;
    ASSERT_TRUE(saveSketch(store, "shelf/day.sketch.svg", test::exampleSketch()));
    const auto loaded = loadSketch(store, "shelf/day.sketch.svg");
    ASSERT_TRUE(loaded) << loaded.error().text();
    EXPECT_EQ(loaded->sketch, test::exampleSketch());
}

TEST(LoadSave, AnErrorNamesTheFileAndThenTheLine) {
    MemoryFileStore store;
    store.files["shelf/day.sketch.svg"] = "<svg\n>&nbsp;</svg>";
    const auto loaded = loadSketch(store, "shelf/day.sketch.svg");
    ASSERT_FALSE(loaded);
    EXPECT_EQ(loaded.error().code, ErrorCode::NotXml);
    EXPECT_EQ(loaded.error().where, "shelf/day.sketch.svg, line 2");
}

TEST(LoadSave, AMissingFileIsNamed) {
    MemoryFileStore store;
    const auto loaded = loadSketch(store, "gone.sketch.svg");
    ASSERT_FALSE(loaded);
    EXPECT_EQ(loaded.error().code, ErrorCode::NotFound);
    EXPECT_EQ(loaded.error().where, "gone.sketch.svg");
}

TEST(LoadSave, AFailingStoreIsPassedOn) {
    MemoryFileStore store;
    store.failReplacesWith = Error{ErrorCode::WriteFailed, "No room.", "day"};
    const auto saved = saveSketch(store, "day", blankSketch());
    ASSERT_FALSE(saved);
    EXPECT_EQ(saved.error(), *store.failReplacesWith);
    EXPECT_TRUE(store.files.empty());
}

TEST(LoadSave, ASketchTooLargeToBeOpenedAgainIsNotSaved) {
    Sketch sketch = blankSketch();
    Piece piece;
    piece.size = {Length::inches(1), Length::inches(1)};
    piece.note = std::string(maxTextBytes, 'x');
    for (std::uint32_t id = 1; id * maxTextBytes <= maxSketchFileBytes; ++id) {
        sketch.pieces.emplace(PieceId{id}, piece);
        sketch.order.push_back(PieceId{id});
    }
    MemoryFileStore store;
    store.files["day"] = "the old one";
    const auto saved = saveSketch(store, "day", sketch);
    ASSERT_FALSE(saved);
    EXPECT_EQ(saved.error().code, ErrorCode::TooLarge);
    EXPECT_EQ(saved.error().where, "day");
    EXPECT_EQ(store.files["day"], "the old one");
}

}  // namespace
}  // namespace matwright
