// SPDX-License-Identifier: MIT
#include "core/making/finding.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include "tests/support/temporary_folder.h"

namespace matwright::test {
namespace {

namespace fs = std::filesystem;

class FindingTest : public testing::Test {
  protected:
    fs::path put(const std::string& name, const std::string& bytes) {
        const fs::path file = folder / name;
        fs::create_directories(file.parent_path());
        writeFile(file, bytes);
        return file;
    }
    LostFile lost(const std::string& name, const std::string& bytes) const {
        return {(folder / name).string(), contentKeyOf(bytes), bytes.size()};
    }
    Finding find(const LostFile& file, const FindingLimits& limits = {},
                 std::stop_token stop = {}) const {
        const fs::path folders[] = {folder.path()};
        return findAgain({&file, 1}, folders, limits, std::move(stop)).front();
    }

    TemporaryFolder folder;
};

TEST_F(FindingTest, WhatIsWhereItWasIsFoundThereEvenWithoutFolders) {
    const fs::path file = put("a.jpg", "photo");
    const LostFile sought = lost("a.jpg", "photo");
    const auto findings = findAgain({&sought, 1}, {});
    EXPECT_EQ(findings.front().end, FindingEnd::Found);
    EXPECT_EQ(findings.front().place, file);
}

TEST_F(FindingTest, AMovedFileIsFoundByItsName) {
    put("b/x.jpg", "other");
    const fs::path moved = put("b/c/a.jpg", "photo");
    EXPECT_EQ(find(lost("a.jpg", "photo")).place, moved);
}

TEST_F(FindingTest, ARenamedFileIsFoundByItsLengthAndContent) {
    put("b/x.jpg", "otter");
    const fs::path renamed = put("b/IMG_1.JPG", "photo");
    EXPECT_EQ(find(lost("a.jpg", "photo")).place, renamed);
}

TEST_F(FindingTest, TheSameNameIsPreferredToAnotherNameThatComesFirst) {
    put("a/copy.jpg", "photo");
    const fs::path named = put("z/day.jpg", "photo");
    EXPECT_EQ(find(lost("day.jpg", "photo")).place, named);
}

TEST_F(FindingTest, AnotherPhotoOfTheSameNameIsNotBelieved) {
    put("b/a.jpg", "other");
    put("c/a.jpg", "longer than it");
    const Finding finding = find(lost("a.jpg", "photo"));
    EXPECT_EQ(finding.end, FindingEnd::NotThere);
    EXPECT_FALSE(finding.place);
}

TEST_F(FindingTest, AFileThatWasReplacedWhereItWasIsSoughtElsewhere) {
    put("a.jpg", "a new one");
    const fs::path kept = put("old/a.jpg", "photo");
    EXPECT_EQ(find(lost("a.jpg", "photo")).place, kept);
}

TEST_F(FindingTest, WithoutALengthOnlyTheNameCounts) {
    put("b/x.jpg", "photo");
    LostFile sought = lost("a.jpg", "photo");
    sought.bytes = 0;
    EXPECT_EQ(find(sought).end, FindingEnd::NotThere);
    const fs::path named = put("b/a.jpg", "photo");
    EXPECT_EQ(find(sought).place, named);
}

TEST_F(FindingTest, ManyAreFoundInOneWalk) {
    const fs::path first = put("b/1.jpg", "one..");
    const fs::path second = put("c/renamed.jpg", "two..");
    const LostFile sought[] = {lost("1.jpg", "one.."), lost("2.jpg", "two.."),
                               lost("3.jpg", "three")};
    const fs::path folders[] = {folder / "nowhere", folder.path()};
    const auto findings = findAgain(sought, folders);
    ASSERT_EQ(findings.size(), 3);
    EXPECT_EQ(findings[0].place, first);
    EXPECT_EQ(findings[1].place, second);
    EXPECT_EQ(findings[2].end, FindingEnd::NotThere);
}

TEST_F(FindingTest, LinksPipesAndHiddenFoldersAreLeftAlone) {
    TemporaryFolder outside;
    writeFile(outside / "a.jpg", "photo");
    fs::create_directory_symlink(outside.path(), folder / "link");
    fs::create_symlink(outside / "a.jpg", folder / "a.jpg");
    fs::create_directories(folder / "b");
    ASSERT_EQ(::mkfifo((folder / "b/a.jpg").c_str(), 0600), 0);
    put(".trash/a.jpg", "photo");
    EXPECT_EQ(find(lost("gone/a.jpg", "photo")).end, FindingEnd::NotThere);
    EXPECT_FALSE(contentKeyOfFile(folder / "b/a.jpg"));
    EXPECT_FALSE(contentKeyOfFile(folder.path()));
}

TEST_F(FindingTest, ALimitOfFilesDepthOrTimeEndsIt) {
    for (int i = 0; i < 20; ++i) {
        put("many/" + std::to_string(i), "x");
    }
    put("b/c/d/a.jpg", "photo");
    const LostFile sought = lost("a.jpg", "photo");
    EXPECT_EQ(find(sought, {.files = 3}).end, FindingEnd::GaveUp);
    EXPECT_EQ(find(sought, {.time = std::chrono::milliseconds(-1)}).end, FindingEnd::GaveUp);
    EXPECT_EQ(find(sought, {.depth = 3}).end, FindingEnd::GaveUp);
    EXPECT_EQ(find(sought, {.depth = 4}).end, FindingEnd::Found);
}

TEST_F(FindingTest, AStopIsObeyed) {
    put("b/a.jpg", "photo");
    std::stop_source source;
    source.request_stop();
    EXPECT_EQ(find(lost("a.jpg", "photo"), {}, source.get_token()).end, FindingEnd::Stopped);
}

TEST_F(FindingTest, AFileOfManyPartsHasTheKeyOfItsBytes) {
    const std::string bytes((std::size_t{5} << 19) + 17, 'q');
    EXPECT_EQ(contentKeyOfFile(put("large", bytes)), contentKeyOf(bytes));
    EXPECT_EQ(contentKeyOfFile(put("empty", "")), contentKeyOf(""));
}

}  // namespace
}  // namespace matwright::test
