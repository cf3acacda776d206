// SPDX-License-Identifier: MIT
#include "core/library/keeping.h"

#include <gtest/gtest.h>

#include "tests/core/library/keeping_fixture.h"

namespace matwright {
namespace {

using test::bytesOfSketch;
using test::LibraryOnDisk;
using test::Tags;

std::string ownName(const LibraryOnDisk& library, const std::string& sketch) {
    return readSketch(library.held(sketch))->sketch.name;
}

TEST(RenameSketch, NamesTheFileAndTheSketchAndKeepsTheLabels) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("sub/old");
    library.tag(sketch, "beach");
    const auto renamed = renameSketch(library.store, library.path, sketch, " Harbour day ");
    ASSERT_TRUE(renamed);
    EXPECT_EQ(renamed->sketch, "sub/Harbour day.sketch.svg");
    EXPECT_EQ(renamed->said, "");
    EXPECT_FALSE(library.has(sketch));
    EXPECT_EQ(ownName(library, renamed->sketch), "Harbour day");
    EXPECT_EQ(renamed->content, contentKeyOf(library.held(renamed->sketch)));
    EXPECT_EQ(library.labels(renamed->sketch).tags, Tags{"beach"});
    const auto records = readLabelRecords(library.path).records;
    ASSERT_EQ(records.size(), 1u);
    EXPECT_EQ(records[0].sketch, renamed->sketch);
    EXPECT_EQ(records[0].content, renamed->content);
}

TEST(RenameSketch, NeverReplacesAnotherAndSaysTheNumber) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("old");
    const std::string other = library.putNamed("new");
    const std::string before = library.held(other);
    const auto renamed = renameSketch(library.store, library.path, sketch, "new");
    ASSERT_TRUE(renamed);
    EXPECT_EQ(renamed->sketch, "new (2).sketch.svg");
    EXPECT_NE(renamed->said.find("\u201Cnew (2)\u201D"), std::string::npos) << renamed->said;
    EXPECT_EQ(library.held(other), before);
    EXPECT_EQ(ownName(library, renamed->sketch), "new");
}

TEST(RenameSketch, ToItsOwnNameChangesNothing) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("a");
    library.tag(sketch, "beach");
    const std::string before = library.held(sketch);
    const auto renamed = renameSketch(library.store, library.path, sketch, "a");
    ASSERT_TRUE(renamed);
    EXPECT_EQ(renamed->sketch, sketch);
    EXPECT_EQ(renamed->said, "");
    EXPECT_EQ(library.held(sketch), before);
    EXPECT_EQ(library.labels(sketch).tags, Tags{"beach"});
}

TEST(RenameSketch, GivesAFileThatIsOutOfStepTheNameAgain) {
    LibraryOnDisk library;
    const std::string sketch = library.put("a17", bytesOfSketch("Harbour day"));
    EXPECT_EQ(renameSketch(library.store, library.path, sketch, "Harbour day")->sketch,
              "Harbour day.sketch.svg");
}

TEST(RenameSketch, KeepsBytesThatItCannotReadOrWouldLose) {
    LibraryOnDisk library;
    std::string foreign = bytesOfSketch("old");
    foreign.replace(foreign.find("<pieces"), 0, "<weather>sun</weather>");
    ASSERT_FALSE(readSketch(foreign)->warnings.empty());
    for (const std::string& bytes : {foreign, std::string("no sketch at all")}) {
        const std::string sketch = library.put("old", bytes);
        const auto renamed = renameSketch(library.store, library.path, sketch, "new");
        ASSERT_TRUE(renamed);
        EXPECT_EQ(library.held(renamed->sketch), bytes);
        EXPECT_TRUE(renamed->said.find("Only the file has the new name") != std::string::npos)
            << renamed->said;
    }
}

TEST(RenameSketch, RefusesBadNamesAndSketchesThatAreGone) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("a");
    EXPECT_EQ(renameSketch(library.store, library.path, sketch, "a/b").error().code,
              ErrorCode::BadText);
    EXPECT_EQ(renameSketch(library.store, library.path, "gone.sketch.svg", "b").error().code,
              ErrorCode::NotFound);
    EXPECT_TRUE(library.has(sketch));
}

TEST(MoveSketch, MakesTheFolderAndTakesTheLabelsAlong) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("a");
    library.tag(sketch, "beach");
    const std::string before = library.held(sketch);
    auto moved = moveSketch(library.store, library.path, sketch, "2026/Holidays");
    ASSERT_TRUE(moved);
    EXPECT_EQ(moved->sketch, "2026/Holidays/a.sketch.svg");
    EXPECT_EQ(library.held(moved->sketch), before);
    EXPECT_EQ(library.labels(moved->sketch).tags, Tags{"beach"});
    moved = moveSketch(library.store, library.path, moved->sketch, "");
    ASSERT_TRUE(moved);
    EXPECT_EQ(moved->sketch, sketch);
    EXPECT_EQ(library.labels(sketch).tags, Tags{"beach"});
}

TEST(MoveSketch, TakesANumberWhereTheNameIsTaken) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("a");
    const std::string other = library.put("sub/a", bytesOfSketch("other"));
    EXPECT_EQ(moveSketch(library.store, library.path, sketch, "sub")->sketch,
              "sub/a (2).sketch.svg");
    EXPECT_EQ(library.held(other), bytesOfSketch("other"));
}

TEST(MoveSketch, StaysInsideTheLibrary) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("a");
    for (const char* folder : {"..", "sub/../..", "/tmp", ".matwright"}) {
        EXPECT_EQ(moveSketch(library.store, library.path, sketch, folder).error().code,
                  ErrorCode::BadText);
    }
    EXPECT_TRUE(library.has(sketch));
}

TEST(MoveSketch, SaysWhyAFolderCannotTakeIt) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("a");
    test::writeFile(library.path / "a file", "");
    const auto moved = moveSketch(library.store, library.path, sketch, "a file");
    ASSERT_FALSE(moved);
    EXPECT_EQ(moved.error().code, ErrorCode::WriteFailed);
    EXPECT_TRUE(library.has(sketch));
}

TEST(CopySketch, MakesASecondFileWithTagsAndNoteOfTheFirst) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("a");
    ASSERT_TRUE(changeLabels(library.store, library.path, sketch, [](Labels& labels) {
        labels = {{"beach"}, true, "note", 4, Timestamp(std::chrono::seconds(9))};
    }));
    const auto copy = copySketch(library.store, library.path, sketch, "");
    ASSERT_TRUE(copy);
    EXPECT_EQ(copy->sketch, "a (2).sketch.svg");
    EXPECT_EQ(library.held(copy->sketch), library.held(sketch));
    EXPECT_EQ(library.labels(copy->sketch), (Labels{{"beach"}, false, "note", 0, std::nullopt}));
    EXPECT_EQ(library.labels(sketch).useCount, 4);
    EXPECT_EQ(copySketch(library.store, library.path, copy->sketch, "")->sketch,
              "a (3).sketch.svg");
    EXPECT_EQ(copySketch(library.store, library.path, sketch, "sub")->sketch, "sub/a.sketch.svg");
}

TEST(TrashSketch, CanBeUndoneWithItsLabels) {
    LibraryOnDisk library;
    const std::string sketch = library.putNamed("sub/a");
    library.tag(sketch, "beach");
    TrashPlaces places;
    places.dataHome = library.folder / "data";
    const auto trashed = trashSketch(library.path, sketch, places);
    ASSERT_TRUE(trashed) << trashed.error().text();
    EXPECT_FALSE(library.has(sketch));
    const std::string other = library.put("sub/a", bytesOfSketch("other"));
    const auto back = untrashSketch(library.path, *trashed);
    ASSERT_TRUE(back);
    EXPECT_EQ(back->sketch, "sub/a (2).sketch.svg");
    EXPECT_EQ(library.held(other), bytesOfSketch("other"));
    EXPECT_EQ(library.labels(back->sketch).tags, Tags{"beach"});
    EXPECT_FALSE(std::filesystem::exists(trashed->info));
}

}  // namespace
}  // namespace matwright
