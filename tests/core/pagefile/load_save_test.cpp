// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "tests/core/pagefile/example_page.h"

namespace matwright::test {
namespace {

TEST(PageLoadSave, ASavedPageIsLoadedAgainAlsoFromAFolderThatMoved) {
    MemoryFileStore store;
    const std::filesystem::path file = "/home/somebody/Pages/day.page.svg";
    ASSERT_TRUE(savePage(store, file, examplePage()));
    const auto loaded = loadPage(store, file);
    ASSERT_TRUE(loaded) << loaded.error().text();
    EXPECT_EQ(loaded->making, examplePage());
    store.files["/mnt/day.page.svg"] = store.files[file];
    const auto moved = loadPage(store, "/mnt/day.page.svg");
    ASSERT_TRUE(moved);
    EXPECT_EQ(moved->making.work.photos.at(PhotoId{1}).path, "/mnt/photos/beach & dunes.jpg");
}

TEST(PageLoadSave, AnErrorNamesTheFileAndThenTheLine) {
    MemoryFileStore store;
    store.files["/a/day.page.svg"] = "<svg\n>&nbsp;</svg>";
    const auto loaded = loadPage(store, "/a/day.page.svg");
    ASSERT_FALSE(loaded);
    EXPECT_EQ(loaded.error().code, ErrorCode::NotXml);
    EXPECT_EQ(loaded.error().where, "/a/day.page.svg, line 2");
    EXPECT_EQ(loadPage(store, "/gone").error().code, ErrorCode::NotFound);
}

TEST(PageLoadSave, AFailingStoreIsPassedOn) {
    MemoryFileStore store;
    store.failReplacesWith = Error{ErrorCode::WriteFailed, "No room.", "day"};
    const auto saved = savePage(store, "/day", examplePage());
    ASSERT_FALSE(saved);
    EXPECT_EQ(saved.error(), *store.failReplacesWith);
}

TEST(PageLoadSave, APageTooLargeToBeOpenedAgainIsNotSaved) {
    Making making{blankSketch(), {}};
    Piece piece;
    piece.size = {Length::inches(1), Length::inches(1)};
    piece.note = std::string(maxTextBytes, 'x');
    for (std::uint32_t id = 1; id * maxTextBytes <= maxPageFileBytes; ++id) {
        making.sketch.pieces.emplace(PieceId{id}, piece);
        making.sketch.order.push_back(PieceId{id});
    }
    MemoryFileStore store;
    store.files["/day"] = "the old one";
    const auto saved = savePage(store, "/day", making);
    ASSERT_FALSE(saved);
    EXPECT_EQ(saved.error().code, ErrorCode::TooLarge);
    EXPECT_EQ(saved.error().where, "/day");
    EXPECT_EQ(store.files["/day"], "the old one");
}

}  // namespace
}  // namespace matwright::test
