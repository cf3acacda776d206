// SPDX-License-Identifier: MIT
#include "core/library/saving.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include "core/filestore/displaced_file.h"
#include "tests/core/library/keeping_fixture.h"

namespace matwright {
namespace {

using test::bytesOfSketch;
using test::LibraryOnDisk;
using test::readFile;
using test::Tags;
using test::writeFile;

const std::string first = bytesOfSketch("Harbour day", "first");
const std::string second = bytesOfSketch("Harbour day", "second");
const std::string theirs = bytesOfSketch("Harbour day", "theirs");

// Outside of any library.
struct PlainFolder : test::TemporaryFolder {
    DiskFileStore store;
    std::filesystem::path file = *this / "Harbour day.sketch.svg";
    std::filesystem::path beside = *this / "Harbour day (2).sketch.svg";

    SavedSketch save(std::optional<ContentKey> openedFrom, const std::string& bytes) {
        return saveKeepingBoth(store, file, openedFrom, bytes).value();
    }
};

TEST(SaveKeepingBoth, MakesANewFile) {
    PlainFolder folder;
    const SavedSketch saved = folder.save(std::nullopt, first);
    EXPECT_EQ(saved.path, folder.file);
    EXPECT_EQ(saved.content, contentKeyOf(first));
    EXPECT_FALSE(saved.keptBoth);
    EXPECT_EQ(saved.said, "");
    EXPECT_EQ(readFile(folder.file), first);
    EXPECT_EQ(folder.names().size(), 1u);
}

TEST(SaveKeepingBoth, ReplacesWhatItWasOpenedFrom) {
    PlainFolder folder;
    SavedSketch saved = folder.save(std::nullopt, first);
    saved = folder.save(saved.content, second);
    EXPECT_FALSE(saved.keptBoth);
    EXPECT_EQ(saved.said, "");
    saved = folder.save(saved.content, first);
    EXPECT_EQ(readFile(folder.file), first);
    EXPECT_EQ(folder.names().size(), 1u);
}

TEST(SaveKeepingBoth, GoesBesideWhatSomebodyElseWrote) {
    PlainFolder folder;
    const SavedSketch opened = folder.save(std::nullopt, first);
    writeFile(folder.file, theirs);
    const SavedSketch saved = folder.save(opened.content, second);
    EXPECT_TRUE(saved.keptBoth);
    EXPECT_EQ(saved.path, folder.beside);
    EXPECT_NE(saved.said.find("\u201CHarbour day (2)\u201D"), std::string::npos) << saved.said;
    EXPECT_EQ(readFile(folder.file), theirs);
    EXPECT_EQ(readFile(folder.beside), second);
}

TEST(SaveKeepingBoth, MakesNoThirdWhenSavedTwice) {
    PlainFolder folder;
    writeFile(folder.file, theirs);
    EXPECT_EQ(folder.save(contentKeyOf(first), second).path, folder.beside);
    EXPECT_EQ(folder.save(contentKeyOf(first), second).path, folder.beside);
    EXPECT_EQ(folder.names().size(), 2u);
    EXPECT_EQ(folder.save(contentKeyOf(first), first).path, folder / "Harbour day (3).sketch.svg");
}

TEST(SaveKeepingBoth, NeverReplacesForANewSketch) {
    PlainFolder folder;
    writeFile(folder.file, theirs);
    const SavedSketch saved = folder.save(std::nullopt, first);
    EXPECT_TRUE(saved.keptBoth);
    EXPECT_EQ(readFile(folder.file), theirs);
    EXPECT_EQ(readFile(folder.beside), first);
}

TEST(SaveKeepingBoth, WritesNothingWhereTheFileHoldsItAlready) {
    PlainFolder folder;
    writeFile(folder.file, second);
    struct stat before = {};
    ASSERT_EQ(::stat(folder.file.c_str(), &before), 0);
    for (const auto& openedFrom :
         {std::optional<ContentKey>(), std::optional(contentKeyOf(first))}) {
        const SavedSketch saved = folder.save(openedFrom, second);
        EXPECT_EQ(saved.path, folder.file);
        EXPECT_FALSE(saved.keptBoth);
    }
    struct stat after = {};
    ASSERT_EQ(::stat(folder.file.c_str(), &after), 0);
    EXPECT_EQ(before.st_ino, after.st_ino);
}

TEST(SaveKeepingBoth, BringsBackAFileThatIsGoneAndSaysSo) {
    PlainFolder folder;
    const SavedSketch saved = folder.save(contentKeyOf(first), second);
    EXPECT_EQ(saved.path, folder.file);
    EXPECT_FALSE(saved.said.empty());
    EXPECT_EQ(readFile(folder.file), second);
}

TEST(SaveKeepingBoth, GoesBesideAFileThatCannotBeRead) {
    PlainFolder folder;
    test::setPermissions(folder.path(), 0777);
    writeFile(folder.file, theirs);
    test::setPermissions(folder.file, 0200);
    {
        const test::WithoutPrivileges meanwhile;
        EXPECT_EQ(folder.save(contentKeyOf(first), second).path, folder.beside);
    }
    EXPECT_EQ(readFile(folder.file), theirs);
}

TEST(SaveKeepingBoth, FailsWithASentenceAndChangesNothing) {
    PlainFolder folder;
    const auto saved = saveKeepingBoth(folder.store, folder / "not there/a.sketch.svg",
                                       std::nullopt, std::string_view(first));
    ASSERT_FALSE(saved);
    EXPECT_EQ(saved.error().code, ErrorCode::WriteFailed);
    EXPECT_TRUE(folder.names().empty());
}

TEST(SaveKeepingBoth, WorksThroughAnyFileStore) {
    MemoryFileStore store;
    const std::filesystem::path file = "/not on the disk/a.sketch.svg";
    const auto saved = saveKeepingBoth(store, file, std::nullopt, test::sketchNamed("a"));
    ASSERT_TRUE(saved);
    store.files[file] = theirs;
    EXPECT_TRUE(saveKeepingBoth(store, file, saved->content, std::string_view(second))->keptBoth);
    EXPECT_EQ(store.files.size(), 2u);
    store.failReplacesWith = Error{ErrorCode::WriteFailed, "No room.", ""};
    EXPECT_EQ(saveKeepingBoth(store, file, contentKeyOf(theirs), std::string_view(first)).error(),
              *store.failReplacesWith);
    EXPECT_EQ(store.files.at(file), theirs);
}

TEST(SaveInALibrary, TakesTheLabelsAlong) {
    LibraryOnDisk library;
    const std::string sketch = library.put("a", first);
    library.tag(sketch, "beach");
    const auto saved = saveKeepingBoth(library.store, library.path / sketch, contentKeyOf(first),
                                       std::string_view(second));
    ASSERT_TRUE(saved);
    EXPECT_EQ(readLabelRecords(library.path).records.at(0).content, contentKeyOf(second));
    EXPECT_EQ(library.labels(sketch).tags, Tags{"beach"});
}

TEST(SaveInALibrary, FindsTheLabelsOfASketchThatWasRenamedElsewhere) {
    LibraryOnDisk library;
    library.tag(library.put("old", first), "beach");
    std::filesystem::rename(library.path / "old.sketch.svg", library.path / "new.sketch.svg");
    ASSERT_TRUE(saveKeepingBoth(library.store, library.path / "new.sketch.svg", contentKeyOf(first),
                                std::string_view(second)));
    EXPECT_EQ(library.labels("new.sketch.svg").tags, Tags{"beach"});
}

TEST(SaveInALibrary, GivesWhatGoesBesideTheTagsToo) {
    LibraryOnDisk library;
    const std::string sketch = library.put("a", first);
    library.tag(sketch, "beach");
    ASSERT_TRUE(changeLabels(library.store, library.path, sketch,
                             [](Labels& labels) { labels.useCount = 7; }));
    library.put("a", theirs);
    const auto saved = saveKeepingBoth(library.store, library.path / sketch, contentKeyOf(first),
                                       std::string_view(second));
    ASSERT_TRUE(saved && saved->keptBoth);
    EXPECT_EQ(library.labels("a (2).sketch.svg").tags, Tags{"beach"});
    EXPECT_EQ(library.labels("a (2).sketch.svg").useCount, 0);
    EXPECT_EQ(library.labels(sketch).useCount, 7);
}

TEST(SaveInALibrary, GivesANewSketchNoLabelsOfOneThatIsGone) {
    LibraryOnDisk library;
    const std::string sketch = library.put("a", first);
    library.tag(sketch, "beach");
    std::filesystem::rename(library.path / sketch, library.folder / "in the trash");
    ASSERT_TRUE(saveKeepingBoth(library.store, library.path / sketch, std::nullopt,
                                std::string_view(second)));
    EXPECT_EQ(library.labels(sketch), Labels());
    // It comes back, under another name.
    std::filesystem::rename(library.folder / "in the trash", library.path / "b.sketch.svg");
    EXPECT_EQ(library.labels("b.sketch.svg").tags, Tags{"beach"});
    library.tag("b.sketch.svg", "summer");
    EXPECT_EQ(library.labels("b.sketch.svg").tags, (Tags{"beach", "summer"}));
}

// What a program leaves that is killed between the two halves of an exchange.
TEST(Leftovers, AreMadeVisibleOrRemoved) {
    LibraryOnDisk library;
    std::filesystem::create_directories(library.path / "sub");
    const auto leave = [&](const std::string& bytes, std::int64_t shift) {
        const auto born = library.path / "sub/born";
        writeFile(born, bytes);
        struct stat facts = {};
        EXPECT_EQ(::stat(born.c_str(), &facts), 0);
        const std::int64_t modified =
            std::int64_t{facts.st_mtim.tv_sec} * 1'000'000'000 + facts.st_mtim.tv_nsec;
        std::filesystem::rename(
            born,
            library.path / "sub" / displacedName("a.sketch.svg", facts.st_ino, modified + shift));
    };
    library.put("sub/a", second);
    leave(first, 0);   // what was replaced
    leave(second, 1);  // what is at its place too
    leave(theirs, 1);  // what would be lost
    writeFile(library.path / "sub/.a.sketch.svg.matwright-0123456789abcdef.part", "half");
    writeFile(library.path / "sub/.hidden", "of somebody else");
    const auto rescued = rescueLeftovers(library.path);
    ASSERT_TRUE(rescued);
    ASSERT_EQ(rescued->size(), 1u);
    EXPECT_EQ(rescued->at(0), library.path / "sub/a (2).sketch.svg");
    EXPECT_EQ(library.held("sub/a (2).sketch.svg"), theirs);
    EXPECT_EQ(library.held("sub/a.sketch.svg"), second);
    int names = 0;
    for (const auto& entry : std::filesystem::directory_iterator(library.path / "sub")) {
        names += entry.exists() ? 1 : 0;
    }
    EXPECT_EQ(names, 3);
}

TEST(Leftovers, OfASketchThatIsGoneGetItsName) {
    PlainFolder folder;
    writeFile(folder / displacedName("Harbour day.sketch.svg", 1, 1), first);
    EXPECT_EQ(rescueLeftovers(folder.path())->size(), 1u);
    EXPECT_EQ(readFile(folder.file), first);
}

}  // namespace
}  // namespace matwright
