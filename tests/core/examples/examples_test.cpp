// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>

#include "core/checks/checks.h"
#include "core/sketch/soundness.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/support/example_sketches.h"

namespace matwright {
namespace {

const std::filesystem::path folder = MATWRIGHT_EXAMPLES_DIR;

// Run with MATWRIGHT_ACCEPT=1 to rewrite the files after looking at what changed in them.
TEST(Examples, FilesAreWhatSavingTheExampleSketchesGives) {
    DiskFileStore disk;
    for (const auto& example : test::exampleSketches()) {
        ASSERT_EQ(findFault(example.sketch), std::nullopt) << example.file;
        const std::string expected = writeSketch(example.sketch);
        if (std::getenv("MATWRIGHT_ACCEPT")) {
            ASSERT_TRUE(disk.replace(folder / example.file, expected));
        }
        const auto bytes = disk.read(folder / example.file, maxSketchFileBytes);
        ASSERT_TRUE(bytes) << bytes.error().text();
        EXPECT_TRUE(*bytes == expected) << example.file << " differs; see the comment above";
    }
}

TEST(Examples, OpenWithoutWarningsAsTheSameSketch) {
    DiskFileStore disk;
    for (const auto& example : test::exampleSketches()) {
        const auto loaded = loadSketch(disk, folder / example.file);
        ASSERT_TRUE(loaded) << loaded.error().text();
        EXPECT_TRUE(loaded->warnings.empty());
        EXPECT_EQ(loaded->sketch, example.sketch);
    }
}

TEST(Examples, HaveNothingToMend) {
    for (const auto& example : test::exampleSketches()) {
        CheckSettings settings;
        if (example.metric) {
            settings = {Length::millimetres(1), Scale::WholeMillimetre};
        }
        for (const CheckFinding& finding : checkSketch(example.sketch, settings)) {
            ADD_FAILURE() << example.file << ": " << finding.sentence;
        }
    }
}

}  // namespace
}  // namespace matwright
