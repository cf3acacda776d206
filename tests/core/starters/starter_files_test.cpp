// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <set>

#include "core/sketch/soundness.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/support/starters/starters.h"

namespace matwright {
namespace {

const std::filesystem::path folder = MATWRIGHT_STARTERS_DIR;

// Run with MATWRIGHT_ACCEPT=1 to rewrite the files after looking at them as pictures.
TEST(StarterFiles, AreWhatSavingTheSketchesGives) {
    DiskFileStore disk;
    for (const auto& starter : test::starters()) {
        ASSERT_EQ(findFault(starter.sketch), std::nullopt) << starter.file;
        const std::string expected = writeSketch(starter.sketch);
        if (std::getenv("MATWRIGHT_ACCEPT")) {
            ASSERT_TRUE(disk.replace(folder / starter.file, expected));
        }
        const auto bytes = disk.read(folder / starter.file, maxSketchFileBytes);
        ASSERT_TRUE(bytes) << bytes.error().text();
        EXPECT_TRUE(*bytes == expected) << starter.file << " differs; see the comment above";
    }
}

TEST(StarterFiles, OpenWithoutWarningsAsTheSameSketch) {
    DiskFileStore disk;
    for (const auto& starter : test::starters()) {
        const auto loaded = loadSketch(disk, folder / starter.file);
        ASSERT_TRUE(loaded) << loaded.error().text();
        EXPECT_TRUE(loaded->warnings.empty());
        EXPECT_EQ(loaded->sketch, starter.sketch);
    }
}

TEST(StarterFiles, AreAllThatLiesInTheFolder) {
    std::set<std::string> expected;
    for (const auto& starter : test::starters()) {
        expected.insert(starter.file);
    }
    std::set<std::string> found;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        found.insert(entry.path().filename());
    }
    EXPECT_EQ(found, expected);
}

}  // namespace
}  // namespace matwright
