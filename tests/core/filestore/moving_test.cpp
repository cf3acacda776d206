// SPDX-License-Identifier: MIT
#include "core/filestore/moving.h"

#include <fcntl.h>
#include <gtest/gtest.h>

#include <cerrno>

#include "core/filestore/file_descriptor.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

using test::readFile;
using test::TemporaryFolder;
using test::writeFile;

FileDescriptor openFolder(const TemporaryFolder& folder) {
    return FileDescriptor(::open(folder.path().c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
}

TEST(MoveWithoutReplacing, GivesFilesAndFoldersAnotherName) {
    const TemporaryFolder folder;
    const FileDescriptor open = openFolder(folder);
    writeFile(folder / "file", "bytes");
    std::filesystem::create_directory(folder / "folder");
    EXPECT_TRUE(moveWithoutReplacing(open.number(), "file", open.number(), "moved"));
    EXPECT_TRUE(moveWithoutReplacing(open.number(), "folder", open.number(), "moved folder"));
    EXPECT_EQ(readFile(folder / "moved"), "bytes");
    EXPECT_EQ(folder.names(), (std::vector<std::string>{"moved", "moved folder"}));
}

TEST(MoveWithoutReplacing, NeverReplaces) {
    const TemporaryFolder folder;
    const FileDescriptor open = openFolder(folder);
    writeFile(folder / "file", "mine");
    writeFile(folder / "other", "theirs");
    const auto moved = moveWithoutReplacing(open.number(), "file", open.number(), "other");
    ASSERT_FALSE(moved);
    EXPECT_EQ(moved.error(), EEXIST);
    EXPECT_EQ(readFile(folder / "other"), "theirs");
    EXPECT_EQ(readFile(folder / "file"), "mine");
}

TEST(ExchangeNames, LetsTwoFilesChangePlaces) {
    const TemporaryFolder folder;
    const FileDescriptor open = openFolder(folder);
    writeFile(folder / "one", "1");
    writeFile(folder / "two", "2");
    ASSERT_TRUE(exchangeNames(open.number(), "one", "two"));
    EXPECT_EQ(readFile(folder / "one"), "2");
    EXPECT_EQ(readFile(folder / "two"), "1");
    EXPECT_EQ(exchangeNames(open.number(), "one", "three").error(), ENOENT);
}

}  // namespace
}  // namespace matwright
