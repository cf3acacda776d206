// SPDX-License-Identifier: MIT
#include "app/starters/starters_folder.h"

#include <gtest/gtest.h>

#include "tests/support/starters/starters.h"
#include "tests/support/temporary_folder.h"

namespace matwright::app {
namespace {

TEST(StartersFolder, HoldsEveryStarterSketchInTheBuildTree) {
    const std::filesystem::path folder = startersFolder(MATWRIGHT_PROGRAM_FOLDER);
    ASSERT_FALSE(folder.empty());
    for (const auto& starter : test::starters()) {
        EXPECT_TRUE(std::filesystem::is_regular_file(folder / starter.file)) << starter.file;
    }
}

TEST(StartersFolder, LiesInTheSharedFolderBesideAnInstalledProgram) {
    const test::TemporaryFolder prefix;
    const std::filesystem::path installed = prefix.path() / "share/matwright/starters";
    std::filesystem::create_directories(installed);
    std::filesystem::create_directories(prefix.path() / "bin");
    EXPECT_EQ(startersFolder(prefix.path() / "bin"), installed);
}

TEST(StartersFolder, IsEmptyWhereTheProgramStandsAlone) {
    const test::TemporaryFolder alone;
    EXPECT_EQ(startersFolder(alone.path() / "bin"), std::filesystem::path());
}

}  // namespace
}  // namespace matwright::app
