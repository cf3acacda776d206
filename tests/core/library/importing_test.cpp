// SPDX-License-Identifier: MIT
#include "core/library/importing.h"

#include <gtest/gtest.h>

#include "tests/core/library/keeping_fixture.h"

namespace matwright {
namespace {

using test::bytesOfSketch;
using test::LibraryOnDisk;
using test::writeFile;
using Paths = std::vector<std::filesystem::path>;

struct ImportFolders : LibraryOnDisk {
    std::filesystem::path outside = folder / "outside";

    ImportFolders() { std::filesystem::create_directories(outside / "Beach/deeper"); }
    std::filesystem::path putOutside(const std::string& name, const std::string& bytes) const {
        writeFile(outside / name, bytes);
        return outside / name;
    }
    ImportReport import(const Paths& sources, const ImportOptions& options = {}) {
        return importSketches(store, path, sources, options).value();
    }
};

TEST(Import, TakesAFileAsItIs) {
    ImportFolders folders;
    const std::string bytes = bytesOfSketch("a", "note");
    const auto source = folders.putOutside("a.sketch.svg", bytes);
    const ImportReport report = folders.import({source});
    ASSERT_EQ(report.files.size(), 1u);
    EXPECT_EQ(report.files[0].outcome, ImportOutcome::Imported);
    EXPECT_EQ(report.files[0].sketch, "a.sketch.svg");
    EXPECT_EQ(report.files[0].said, "");
    EXPECT_EQ(folders.held("a.sketch.svg"), bytes);
    EXPECT_EQ(test::readFile(source), bytes);
}

TEST(Import, TakesAFolderWithItsSubFolders) {
    ImportFolders folders;
    folders.putOutside("Beach/a.sketch.svg", bytesOfSketch("a"));
    folders.putOutside("Beach/deeper/b.sketch.svg", bytesOfSketch("b"));
    folders.putOutside("Beach/photo.jpg", "passed over");
    ImportOptions options;
    options.intoFolder = "2026";
    for (const auto& source : {folders.outside / "Beach", folders.outside / "Beach/"}) {
        const ImportReport report = folders.import({source}, options);
        EXPECT_EQ(report.files.size(), 2u);
        EXPECT_TRUE(folders.has("2026/Beach/a.sketch.svg"));
        EXPECT_TRUE(folders.has("2026/Beach/deeper/b.sketch.svg"));
        std::filesystem::remove_all(folders.path / "2026");
    }
}

TEST(Import, NamesWhatIsNoSketchAndLeavesIt) {
    ImportFolders folders;
    const Paths sources{folders.putOutside("photo.jpg", "x"),
                        folders.putOutside("broken.sketch.svg", "<svg"),
                        folders.outside / "gone.sketch.svg",
                        folders.putOutside("good.sketch.svg", bytesOfSketch("good"))};
    const ImportReport report = folders.import(sources);
    ASSERT_EQ(report.files.size(), 4u);
    EXPECT_EQ(report.files[0].outcome, ImportOutcome::NotASketch);
    EXPECT_EQ(report.files[1].outcome, ImportOutcome::NotASketch);
    EXPECT_EQ(report.files[2].outcome, ImportOutcome::Unreadable);
    EXPECT_EQ(report.files[3].outcome, ImportOutcome::Imported);
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_EQ(report.files[i].source, sources[i]);
        EXPECT_FALSE(report.files[i].said.empty());
        EXPECT_EQ(report.files[i].sketch, "");
    }
    EXPECT_EQ(report.count(ImportOutcome::NotASketch), 2);
}

TEST(Import, NeverOverwrites) {
    ImportFolders folders;
    folders.put("a", bytesOfSketch("mine"));
    const auto report =
        folders.import({folders.putOutside("a.sketch.svg", bytesOfSketch("theirs"))});
    EXPECT_EQ(report.files[0].sketch, "a (2).sketch.svg");
    EXPECT_FALSE(report.files[0].said.empty());
    EXPECT_EQ(folders.held("a.sketch.svg"), bytesOfSketch("mine"));
    EXPECT_EQ(folders.held("a (2).sketch.svg"), bytesOfSketch("theirs"));
}

TEST(Import, DoesNotDoubleWhatTheLibraryHas) {
    ImportFolders folders;
    const std::string bytes = bytesOfSketch("a");
    const std::vector<KeyedSketch> known{{folders.put("sub/mine", bytes), contentKeyOf(bytes)}};
    ImportOptions options;
    options.known = known;
    const Paths sources{folders.putOutside("a.sketch.svg", bytes),
                        folders.putOutside("b.sketch.svg", bytesOfSketch("b")),
                        folders.putOutside("c.sketch.svg", bytesOfSketch("b"))};
    const ImportReport report = folders.import(sources, options);
    EXPECT_EQ(report.files[0].outcome, ImportOutcome::AlreadyThere);
    EXPECT_EQ(report.files[0].sketch, "sub/mine.sketch.svg");
    EXPECT_EQ(report.files[1].outcome, ImportOutcome::Imported);
    EXPECT_EQ(report.files[2].outcome, ImportOutcome::AlreadyThere);
    EXPECT_EQ(report.files[2].sketch, "b.sketch.svg");
    EXPECT_FALSE(folders.has("a.sketch.svg"));
}

TEST(Import, DoesNotBelieveAListThatIsOutOfDate) {
    ImportFolders folders;
    const std::string bytes = bytesOfSketch("a");
    const std::vector<KeyedSketch> known{{"gone.sketch.svg", contentKeyOf(bytes)},
                                         {folders.putNamed("changed"), contentKeyOf(bytes)}};
    ImportOptions options;
    options.known = known;
    const auto report = folders.import({folders.putOutside("a.sketch.svg", bytes)}, options);
    EXPECT_EQ(report.files[0].outcome, ImportOutcome::Imported);
}

TEST(Import, CanBeStopped) {
    ImportFolders folders;
    const Paths sources{folders.putOutside("a.sketch.svg", bytesOfSketch("a")),
                        folders.putOutside("b.sketch.svg", bytesOfSketch("b"))};
    std::stop_source stop;
    ImportOptions options;
    options.stop = stop.get_token();
    options.progress = [&](std::size_t) { stop.request_stop(); };
    const ImportReport report = folders.import(sources, options);
    EXPECT_TRUE(report.cancelled);
    EXPECT_EQ(report.files.size(), 1u);
    EXPECT_TRUE(folders.has("a.sketch.svg"));
    EXPECT_FALSE(folders.has("b.sketch.svg"));
}

TEST(Import, RefusesAFolderOutsideTheLibrary) {
    ImportFolders folders;
    ImportOptions options;
    options.intoFolder = "../outside";
    EXPECT_EQ(importSketches(folders.store, folders.path, {}, options).error().code,
              ErrorCode::BadText);
}

}  // namespace
}  // namespace matwright
