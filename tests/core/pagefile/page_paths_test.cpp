// SPDX-License-Identifier: MIT
#include "core/pagefile/page_paths.h"

#include <gtest/gtest.h>

#include "tests/core/pagefile/example_page.h"

namespace matwright::test {
namespace {

TEST(PagePaths, OnlyPathsThatLeadDownDo) {
    for (const char* path : {"a", "a/b.jpg", "...", "..a/b", " ", "a b/ü"}) {
        EXPECT_TRUE(leadsDown(path)) << path;
    }
    for (const char* path :
         {"", "/", "/a", "a/", "a//b", ".", "..", "../a", "a/../b", "a/.", "./a"}) {
        EXPECT_FALSE(leadsDown(path)) << path;
    }
}

TEST(PagePaths, AFolderHasOnlyWhatIsBelowIt) {
    EXPECT_EQ(nearTo("/a", "/a/b/c.jpg"), "b/c.jpg");
    EXPECT_EQ(nearTo("/", "/b.jpg"), "b.jpg");
    EXPECT_EQ(nearTo("/a", "/ab/c.jpg"), "");
    EXPECT_EQ(nearTo("/a", "/a"), "");
    EXPECT_EQ(nearTo("/a", "/a/../c.jpg"), "");
    EXPECT_EQ(nearTo("", "/a/c.jpg"), "");
    EXPECT_EQ(below("/a", "b/c.jpg"), "/a/b/c.jpg");
    EXPECT_EQ(below("/", "b.jpg"), "/b.jpg");
}

TEST(PagePaths, AFolderThatMovedAsAWholeTakesItsPhotosAlong) {
    const auto loaded = readPage(examplePageFile(), "/mnt/synced");
    ASSERT_TRUE(loaded) << loaded.error().text();
    const PhotoWork& work = loaded->making.work;
    EXPECT_EQ(work.photos.at(PhotoId{1}).path, "/mnt/synced/photos/beach & dunes.jpg");
    EXPECT_EQ(work.photos.at(PhotoId{2}).path, "/media/camera/0002.jpg");
    EXPECT_EQ(work.papers.at("patterned, 6 x 12").picture, "/mnt/synced/papers/dots.png");
    EXPECT_EQ(loaded->photosElsewhere,
              (std::map<PhotoId, std::string>{
                  {PhotoId{1}, "/home/somebody/Pages/photos/beach & dunes.jpg"}}));
    EXPECT_EQ(loaded->papersElsewhere,
              (std::map<std::string, std::string>{
                  {"patterned, 6 x 12", "/home/somebody/Pages/papers/dots.png"}}));
}

TEST(PagePaths, InItsOwnFolderNothingIsElsewhere) {
    for (const char* folder : {exampleFolder, ""}) {
        const auto loaded = readPage(examplePageFile(), folder);
        ASSERT_TRUE(loaded);
        EXPECT_EQ(loaded->making, examplePage());
        EXPECT_TRUE(loaded->photosElsewhere.empty());
        EXPECT_TRUE(loaded->papersElsewhere.empty());
    }
}

}  // namespace
}  // namespace matwright::test
