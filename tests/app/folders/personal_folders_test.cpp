// SPDX-License-Identifier: MIT
#include "app/folders/personal_folders.h"

#include <gtest/gtest.h>

#include <map>

namespace matwright::app {
namespace {

Environment with(std::map<std::string, std::string> variables) {
    return [variables = std::move(variables)](const char* name) {
        const auto found = variables.find(name);
        return found == variables.end() ? "" : found->second;
    };
}

// The rules are those of the XDG Base Directory Specification 0.8.

TEST(PersonalFolders, AreBelowTheHomeFolderWhereNothingElseIsSet) {
    const Environment home = with({{"HOME", "/home/ann"}});
    EXPECT_EQ(personalLibraryFolder(home), "/home/ann/.local/share/matwright/library");
    EXPECT_EQ(personalDataFolder(home), "/home/ann/.local/share/matwright");
    EXPECT_EQ(personalCacheFolder(home), "/home/ann/.cache/matwright");
    EXPECT_EQ(personalDataFolder(home), "/home/ann/.local/share/matwright");
}

TEST(PersonalFolders, FollowTheVariables) {
    const Environment set = with(
        {{"HOME", "/home/ann"}, {"XDG_DATA_HOME", "/data"}, {"XDG_CACHE_HOME", "/fast/cache"}});
    EXPECT_EQ(personalLibraryFolder(set), "/data/matwright/library");
    EXPECT_EQ(personalDataFolder(set), "/data/matwright");
    EXPECT_EQ(personalCacheFolder(set), "/fast/cache/matwright");
}

TEST(PersonalFolders, PassOverVariablesThatAreEmptyOrNotAbsolute) {
    for (const char* value : {"", "data", "./data", "~/data"}) {
        const Environment set =
            with({{"HOME", "/home/ann"}, {"XDG_DATA_HOME", value}, {"XDG_CACHE_HOME", value}});
        EXPECT_EQ(personalLibraryFolder(set), "/home/ann/.local/share/matwright/library") << value;
        EXPECT_EQ(personalCacheFolder(set), "/home/ann/.cache/matwright") << value;
    }
}

TEST(PersonalFolders, AreNowhereWithoutAHomeFolder) {
    EXPECT_EQ(personalLibraryFolder(with({})), "");
    EXPECT_EQ(personalCacheFolder(with({{"HOME", "ann"}})), "");
}

}  // namespace
}  // namespace matwright::app
