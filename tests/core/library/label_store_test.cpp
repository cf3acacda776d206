// SPDX-License-Identifier: MIT
#include "core/library/label_store.h"

#include <gtest/gtest.h>

#include <thread>

#include "core/library/keeping.h"
#include "tests/core/library/keeping_fixture.h"

namespace matwright {
namespace {

using test::bytesOfSketch;
using test::LibraryOnDisk;
using test::Tags;

TEST(LabelStore, KeepsLabelsOutsideTheSketch) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("2026/Harbour day");
    const std::string before = library.held(sketch);
    library.tag(sketch, "beach");
    EXPECT_EQ(library.held(sketch), before);
    EXPECT_EQ(library.labels(sketch).tags, Tags{"beach"});
    EXPECT_TRUE(std::filesystem::exists(library.path / ".matwright/labels/2026/Harbour day.json"));
}

TEST(LabelStore, TakesTheLongestNamesADiskAllows) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed(std::string(244, 'a'));
    library.tag(sketch, "long");
    EXPECT_EQ(library.labels(sketch).tags, Tags{"long"});
}

TEST(LabelStore, TakesNamesThatAreNoText) {
    LibraryOnDisk library;
    const std::string sketch = library.put("two\nlines \xFF", bytesOfSketch("odd"));
    library.tag(sketch, "odd");
    EXPECT_EQ(library.labels(sketch).tags, Tags{"odd"});
}

TEST(LabelStore, CountsUsesAndTheLatest) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("a");
    const Timestamp early{std::chrono::seconds(1'000)};
    const Timestamp late{std::chrono::seconds(2'000)};
    EXPECT_EQ(countUse(library.store, library.path, sketch, late)->useCount, 1);
    EXPECT_EQ(countUse(library.store, library.path, sketch, early)->useCount, 2);
    EXPECT_EQ(library.labels(sketch).lastUsed, late);
    EXPECT_EQ(countUse(library.store, library.path, "not there.sketch.svg", late).error().code,
              ErrorCode::NotFound);
}

TEST(LabelStore, FindsASketchThatAFileManagerMoved) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("old");
    library.tag(sketch, "beach");
    std::filesystem::create_directories(library.path / "sub");
    std::filesystem::rename(library.path / sketch, library.path / "sub/new.sketch.svg");
    EXPECT_EQ(library.labels("sub/new.sketch.svg").tags, Tags{"beach"});
    library.tag("sub/new.sketch.svg", "summer");
    EXPECT_EQ(library.labels("sub/new.sketch.svg").tags, (Tags{"beach", "summer"}));
    EXPECT_EQ(readLabelRecords(library.path).records.size(), 1u);
}

TEST(LabelStore, KeepsTheLabelsOfASketchThatIsGoneForWhenItComesBack) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("a");
    library.tag(sketch, "beach");
    const std::string bytes = library.held(sketch);
    std::filesystem::remove(library.path / sketch);
    library.tag(library.putNamed("other"), "other");
    library.put("a", bytes);
    EXPECT_EQ(library.labels(sketch).tags, Tags{"beach"});
}

TEST(LabelStore, SetsABrokenRecordAsideAndSaysSo) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("a");
    library.tag(sketch, "beach");
    const auto file = labelFileOf(library.path, sketch);
    test::writeFile(file, "{\"version\": 1, \"tags\": [\"bea");
    const LabelRecords all = readLabelRecords(library.path);
    ASSERT_EQ(all.problems.size(), 1u);
    EXPECT_EQ(all.problems[0].path, ".matwright/labels/a.json");
    const auto changed = changeLabels(library.store, library.path, sketch,
                                      [](Labels& labels) { labels.favourite = true; });
    ASSERT_TRUE(changed);
    EXPECT_FALSE(changed->said.empty());
    EXPECT_TRUE(library.labels(sketch).favourite);
    EXPECT_EQ(test::readFile(file.string() + ".broken"), "{\"version\": 1, \"tags\": [\"bea");
}

TEST(LabelStore, LeavesARecordOfALaterVersionAlone) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("a");
    library.tag(sketch, "beach");
    const std::string later = R"({"version": 2, "tags": {"beach": "blue"}})";
    test::writeFile(labelFileOf(library.path, sketch), later);
    const auto changed = changeLabels(library.store, library.path, sketch, [](Labels&) {});
    ASSERT_FALSE(changed);
    EXPECT_EQ(changed.error().code, ErrorCode::NewerVersion);
    EXPECT_EQ(test::readFile(labelFileOf(library.path, sketch)), later);
}

TEST(LabelStore, UnitesTheSecondFileACloudDriveMade) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("a");
    library.tag(sketch, "mine");
    const auto file = labelFileOf(library.path, sketch);
    std::filesystem::rename(file, file.parent_path() / "a (conflict of the other computer).json");
    library.tag(sketch, "yours");
    EXPECT_EQ(library.labels(sketch).tags, (Tags{"mine", "yours"}));
    EXPECT_EQ(readLabelRecords(library.path).records.size(), 1u);
    ASSERT_TRUE(changeLabels(library.store, library.path, sketch,
                             [](Labels& labels) { labels.tags = {"yours"}; }));
    EXPECT_EQ(library.labels(sketch).tags, Tags{"yours"});
}

TEST(LabelStore, LosesNoTagWhenManyChangeOneSketchAtOnce) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("a");
    {
        std::vector<std::jthread> threads;
        for (int i = 0; i < 8; ++i) {
            threads.emplace_back([&library, &sketch, i] {
                DiskFileStore store;
                for (int j = 0; j < 5; ++j) {
                    EXPECT_TRUE(changeLabels(store, library.path, sketch, [&](Labels& labels) {
                        labels.tags.push_back(std::to_string(i) + "-" + std::to_string(j));
                        labels.useCount += 1;
                    }));
                }
            });
        }
    }
    EXPECT_EQ(library.labels(sketch).tags.size(), 40u);
    EXPECT_EQ(library.labels(sketch).useCount, 40);
}

TEST(LabelStore, RefusesTagsThatAreNoText) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("a");
    const auto changed = changeLabels(library.store, library.path, sketch,
                                      [](Labels& labels) { labels.tags = {"\xFF"}; });
    ASSERT_FALSE(changed);
    EXPECT_EQ(changed.error().code, ErrorCode::BadText);
    EXPECT_TRUE(readLabelRecords(library.path).records.empty());
}

}  // namespace
}  // namespace matwright
