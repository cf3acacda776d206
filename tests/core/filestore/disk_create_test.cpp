// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <thread>

#include "core/filestore/file_store.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

using test::readFile;
using test::TemporaryFolder;
using test::writeFile;

TEST(DiskCreate, MakesAFileAndLeavesNothingBeside) {
    const TemporaryFolder folder;
    const auto made = DiskFileStore().create(folder / "file", "new");
    ASSERT_TRUE(made);
    EXPECT_TRUE(*made);
    EXPECT_EQ(readFile(folder / "file"), "new");
    EXPECT_EQ(folder.names(), (std::vector<std::string>{"file"}));
}

TEST(DiskCreate, LeavesWhateverHasTheNameAlone) {
    const TemporaryFolder folder;
    writeFile(folder / "file", "old");
    std::filesystem::create_directory(folder / "folder");
    std::filesystem::create_symlink("nowhere", folder / "dead link");
    for (const char* name : {"file", "folder", "dead link"}) {
        const auto made = DiskFileStore().create(folder / name, "new");
        ASSERT_TRUE(made) << name;
        EXPECT_FALSE(*made) << name;
    }
    EXPECT_EQ(readFile(folder / "file"), "old");
    EXPECT_EQ(folder.names(), (std::vector<std::string>{"dead link", "file", "folder"}));
}

TEST(DiskCreate, SaysWhyItCouldNot) {
    const TemporaryFolder folder;
    const auto made = DiskFileStore().create(folder / "not there/file", "new");
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().code, ErrorCode::WriteFailed);
    EXPECT_TRUE(made.error().sentence.starts_with("The file was not saved: "));
}

TEST(DiskCreate, OfManyAtOnceExactlyOneMakesTheFile) {
    const TemporaryFolder folder;
    for (int round = 0; round < 50; ++round) {
        const auto file = folder / ("file " + std::to_string(round));
        std::atomic<int> made = 0;
        std::string winner;
        {
            std::vector<std::jthread> threads;
            for (const std::string bytes : {"a", "b", "c", "d"}) {
                threads.emplace_back([&, bytes] {
                    if (DiskFileStore().create(file, bytes).value()) {
                        ++made;
                        winner = bytes;
                    }
                });
            }
        }
        ASSERT_EQ(made, 1);
        ASSERT_EQ(readFile(file), winner);
    }
}

}  // namespace
}  // namespace matwright
