// SPDX-License-Identifier: MIT
#include "core/library/index.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <algorithm>

#include "core/library/facts.h"
#include "core/library/label_store.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/support/generated_library.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

namespace fs = std::filesystem;
using Names = std::vector<std::string>;
constexpr std::uint64_t seed = 40;

class Index : public testing::Test {
  protected:
    fs::path library() const { return m_folder / "library"; }
    fs::path cache() const { return m_folder / "cache"; }

    void SetUp() override { fs::create_directories(library()); }

    void put(const std::string& path, const Sketch& sketch) {
        fs::create_directories((library() / path).parent_path());
        test::writeFile(library() / path, writeSketch(sketch));
    }
    static Sketch named(const std::string& name) {
        Sketch sketch = blankSketch();
        sketch.name = name;
        return sketch;
    }

    static Names paths(const Holdings& holdings) {
        Names paths;
        for (std::size_t i = 0; i < holdings.size(); ++i) {
            paths.emplace_back(holdings.path(i));
        }
        std::ranges::sort(paths);
        return paths;
    }
    static LibraryEntry entryAt(const Holdings& holdings, const std::string& path) {
        const auto index = holdings.indexOf(path);
        return index ? holdings.entry(*index) : LibraryEntry();
    }

    // As if the file had been written long ago, so that nothing is suspect. The system alone sets
    // the other time of a file, so the index has to wait for it.
    static void waitUntilNothingIsSuspect() {
        const timespec pause{3, 100'000'000};
        ::nanosleep(&pause, nullptr);
    }

    test::TemporaryFolder m_folder;
};

TEST_F(Index, OfAnEmptyFolderIsEmpty) {
    LibraryIndex index(library(), cache());
    EXPECT_EQ(index.latest(), nullptr);
    EXPECT_EQ(index.remembered()->size(), 0U);
    const IndexUpdate update = index.update();
    EXPECT_EQ(update.holdings->size(), 0U);
    EXPECT_TRUE(update.problems.empty());
    EXPECT_EQ(update.indexTrouble, "");
}

TEST_F(Index, NamesAllFoldersThoseWithoutSketchesToo) {
    put("winter/snow/a.sketch.svg", named("a"));
    fs::create_directories(library() / "empty");
    LibraryIndex index(library(), cache());
    const IndexUpdate update = index.update();
    EXPECT_EQ(update.folders, (Names{"empty", "winter", "winter/snow"}));
    EXPECT_EQ(update.holdings->folders(), (Names{"winter", "winter/snow"}));
}

TEST_F(Index, KnowsTheFactsOfEverySketchInTheFolder) {
    test::writeGeneratedLibrary(library(), seed, 30);
    LibraryIndex index(library(), cache());
    const IndexUpdate update = index.update();
    ASSERT_EQ(update.holdings->size(), 30U);
    EXPECT_EQ(update.progress.found, 30U);
    EXPECT_EQ(update.progress.read, 30U);
    for (std::size_t i = 0; i < 30; ++i) {
        const std::string path = test::generatedPath(seed, i);
        const LibraryEntry entry = entryAt(*update.holdings, path);
        const std::string bytes = test::readFile(library() / path);
        EXPECT_EQ(entry.facts, factsOf(test::generatedSketch(seed, i)));
        EXPECT_EQ(entry.content, contentKeyOf(bytes));
        EXPECT_EQ(entry.size, bytes.size());
    }
}

TEST_F(Index, RemembersEverythingInANewProgram) {
    test::writeGeneratedLibrary(library(), seed, 20);
    const auto before = LibraryIndex(library(), cache()).update().holdings;
    LibraryIndex index(library(), cache());
    const auto remembered = index.remembered();
    ASSERT_EQ(remembered->size(), before->size());
    for (std::size_t i = 0; i < before->size(); ++i) {
        EXPECT_EQ(remembered->entry(i), before->entry(i));
    }
    EXPECT_EQ(index.update().holdings, remembered) << "nothing changed: the same value";
}

TEST_F(Index, ReadsOnlyWhatChanged) {
    put("a.sketch.svg", named("a"));
    put("b.sketch.svg", named("b"));
    put("sub/c.sketch.svg", named("c"));
    waitUntilNothingIsSuspect();
    LibraryIndex index(library(), cache());
    EXPECT_EQ(index.update().progress.read, 3U);
    EXPECT_EQ(index.update().progress.read, 0U);
    put("b.sketch.svg", named("a longer name"));
    put("d.sketch.svg", named("d"));
    fs::remove(library() / "sub/c.sketch.svg");
    const IndexUpdate update = index.update();
    EXPECT_EQ(update.progress.read, 2U);
    EXPECT_EQ(paths(*update.holdings), (Names{"a.sketch.svg", "b.sketch.svg", "d.sketch.svg"}));
    EXPECT_EQ(entryAt(*update.holdings, "b.sketch.svg").facts.name, "a longer name");
}

TEST_F(Index, ReadsAFileAgainThatChangedWithinTheGrainOfTheClock) {
    put("a.sketch.svg", named("one"));
    LibraryIndex index(library(), cache());
    index.update();
    struct stat before = {};
    ASSERT_EQ(::stat((library() / "a.sketch.svg").c_str(), &before), 0);
    // In place, of the same size, with the same time.
    test::writeFile(library() / "a.sketch.svg", writeSketch(named("two")));
    const timespec times[] = {before.st_atim, before.st_mtim};
    ASSERT_EQ(::utimensat(AT_FDCWD, (library() / "a.sketch.svg").c_str(), times, 0), 0);
    EXPECT_EQ(entryAt(*index.update().holdings, "a.sketch.svg").facts.name, "two");
}

TEST_F(Index, NoticesAnEditThatSetsSizeAndTimeBack) {
    put("a.sketch.svg", named("one"));
    waitUntilNothingIsSuspect();
    LibraryIndex index(library(), cache());
    index.update();
    const auto time = fs::last_write_time(library() / "a.sketch.svg");
    test::writeFile(library() / "a.sketch.svg", writeSketch(named("two")));
    fs::last_write_time(library() / "a.sketch.svg", time);
    EXPECT_EQ(entryAt(*index.update().holdings, "a.sketch.svg").facts.name, "two");
}

TEST_F(Index, NamesAFileThatIsNoSketchOnceAndAtEveryUpdate) {
    put("good.sketch.svg", named("good"));
    test::writeFile(library() / "bad.sketch.svg", "<svg");
    test::writeFile(library() / "empty.sketch.svg", "");
    LibraryIndex index(library(), cache());
    for (int i = 0; i < 2; ++i) {
        const IndexUpdate update = index.update();
        ASSERT_EQ(update.problems.size(), 2U);
        EXPECT_EQ(update.problems[0].path, "bad.sketch.svg");
        EXPECT_EQ(update.problems[1].path, "empty.sketch.svg");
        EXPECT_EQ(update.problems[0].sentence.find(library().string()), std::string::npos);
        EXPECT_EQ(paths(*update.holdings), Names{"good.sketch.svg"});
    }
    put("bad.sketch.svg", named("mended"));
    fs::remove(library() / "empty.sketch.svg");
    EXPECT_TRUE(index.update().problems.empty());
    EXPECT_EQ(index.latest()->size(), 2U);
}

TEST_F(Index, ShowsNothingOfAMissingFolderAndKnowsItAgainWhenItIsBack) {
    test::writeGeneratedLibrary(library(), seed, 5);
    waitUntilNothingIsSuspect();
    LibraryIndex index(library(), cache());
    index.update();
    fs::rename(library(), m_folder / "away");
    const IndexUpdate gone = index.update();
    EXPECT_EQ(gone.holdings->size(), 0U);
    ASSERT_EQ(gone.problems.size(), 1U);
    EXPECT_EQ(gone.problems[0].path, "");
    fs::rename(m_folder / "away", library());
    const IndexUpdate back = index.update();
    EXPECT_EQ(back.holdings->size(), 5U);
    EXPECT_EQ(back.progress.read, 0U);
}

TEST_F(Index, CanBeStoppedAndGoesOnThere) {
    test::writeGeneratedLibrary(library(), seed, 60);
    waitUntilNothingIsSuspect();
    LibraryIndex index(library(), cache());
    std::stop_source stop;
    IndexOptions options;
    options.stop = stop.get_token();
    options.interim = [&](const std::shared_ptr<const Holdings>& holdings) {
        EXPECT_GT(holdings->size(), 0U);
        stop.request_stop();
    };
    const IndexUpdate first = index.update(options);
    EXPECT_TRUE(first.cancelled);
    EXPECT_EQ(first.holdings->size(), first.progress.read);
    ASSERT_LT(first.progress.read, 60U);
    const IndexUpdate second = index.update();
    EXPECT_EQ(first.progress.read + second.progress.read, 60U);
    EXPECT_EQ(second.holdings->size(), 60U);
}

TEST_F(Index, WithManyThreadsGivesTheSame) {
    test::writeGeneratedLibrary(library(), seed, 120);
    IndexOptions options;
    options.threads = 4;
    const auto many = LibraryIndex(library(), m_folder / "cache 4").update(options).holdings;
    const auto one = LibraryIndex(library(), cache()).update().holdings;
    ASSERT_EQ(many->size(), one->size());
    for (std::size_t i = 0; i < one->size(); ++i) {
        EXPECT_EQ(many->entry(i), one->entry(i));
    }
}

TEST_F(Index, JoinsFamiliesAndPartsThemAgain) {
    Sketch sketch = test::generatedSketch(seed, 1);
    put("a.sketch.svg", sketch);
    sketch.name = "another name";
    put("b.sketch.svg", sketch);
    put("c.sketch.svg", test::generatedSketch(seed, 2));
    LibraryIndex index(library(), cache());
    auto holdings = index.update().holdings;
    const int family = entryAt(*holdings, "a.sketch.svg").family;
    EXPECT_GT(family, 0);
    EXPECT_EQ(entryAt(*holdings, "b.sketch.svg").family, family);
    EXPECT_EQ(entryAt(*holdings, "c.sketch.svg").family, 0);

    put("b.sketch.svg", test::generatedSketch(seed, 3));
    put("d.sketch.svg", test::generatedSketch(seed, 2));
    LibraryIndex later(library(), cache());
    holdings = later.update().holdings;
    EXPECT_EQ(entryAt(*holdings, "a.sketch.svg").family, 0);
    EXPECT_EQ(entryAt(*holdings, "b.sketch.svg").family, 0);
    EXPECT_GT(entryAt(*holdings, "c.sketch.svg").family, 0);
    fs::remove(library() / "d.sketch.svg");
    EXPECT_EQ(entryAt(*later.update().holdings, "c.sketch.svg").family, 0);
}

TEST_F(Index, ShowsTheLabelsOfASketchAlsoAfterARenameElsewhere) {
    put("a.sketch.svg", named("a"));
    DiskFileStore store;
    ASSERT_TRUE(changeLabels(store, library(), "a.sketch.svg", [](Labels& labels) {
        labels.tags = {"beach"};
        labels.favourite = true;
    }));
    LibraryIndex index(library(), cache());
    EXPECT_EQ(entryAt(*index.update().holdings, "a.sketch.svg").labels.tags, Names{"beach"});
    EXPECT_EQ(entryAt(*LibraryIndex(library(), cache()).remembered(), "a.sketch.svg").labels.tags,
              Names{"beach"});
    fs::rename(library() / "a.sketch.svg", library() / "b.sketch.svg");
    EXPECT_TRUE(entryAt(*index.update().holdings, "b.sketch.svg").labels.favourite);
    ASSERT_TRUE(changeLabels(store, library(), "b.sketch.svg",
                             [](Labels& labels) { labels.tags = {"sea"}; }));
    EXPECT_EQ(entryAt(*index.update().holdings, "b.sketch.svg").labels.tags, Names{"sea"});
}

TEST_F(Index, NamesLabelsThatCannotBeReadAndKeepsTheSketch) {
    put("a.sketch.svg", named("a"));
    fs::create_directories(labelsFolder(library()));
    test::writeFile(labelFileOf(library(), "a.sketch.svg"), "{");
    const IndexUpdate update = LibraryIndex(library(), cache()).update();
    EXPECT_EQ(update.holdings->size(), 1U);
    ASSERT_EQ(update.problems.size(), 1U);
    EXPECT_EQ(update.problems[0].path, ".matwright/labels/a.json");
}

}  // namespace
}  // namespace matwright
