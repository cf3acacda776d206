// SPDX-License-Identifier: MIT
#include "core/library/folder_lock.h"

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <atomic>
#include <thread>

#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

using std::chrono::milliseconds;
using test::TemporaryFolder;

TEST(LibraryAround, IsTheNearestFolderWithAHiddenOne) {
    const TemporaryFolder folder;
    const auto outer = folder / "outer";
    std::filesystem::create_directories(outer / "a/inner/b");
    EXPECT_EQ(libraryAround(outer / "a"), std::nullopt);
    ASSERT_TRUE(makeLibrary(outer));
    ASSERT_TRUE(makeLibrary(outer / "a/inner"));
    EXPECT_EQ(libraryAround(outer), outer);
    EXPECT_EQ(libraryAround(outer / "a/file"), outer);
    EXPECT_EQ(libraryAround(outer / "a/inner"), outer / "a/inner");
    EXPECT_EQ(libraryAround(outer / "a/inner/b/not there/file"), outer / "a/inner");
    EXPECT_EQ(libraryAround(outer / "a/inner/b/../../file"), outer);
    EXPECT_EQ(libraryAround(folder.path()), std::nullopt);
}

TEST(FolderLock, KeepsOthersOutOfTheWholeLibrary) {
    const TemporaryFolder folder;
    ASSERT_TRUE(makeLibrary(folder.path()));
    std::filesystem::create_directories(folder / "a");
    {
        const auto lock = FolderLock::take(folder / "a/file");
        ASSERT_TRUE(lock);
        EXPECT_EQ(lock->library(), folder.path());
        const auto second = FolderLock::take(folder.path(), milliseconds(20));
        ASSERT_FALSE(second);
        EXPECT_EQ(second.error().code, ErrorCode::WriteFailed);
    }
    EXPECT_TRUE(FolderLock::take(folder.path(), milliseconds(20)));
}

TEST(FolderLock, OutsideOfLibrariesLocksTheFolderAndLeavesNoTrace) {
    const TemporaryFolder folder;
    std::filesystem::create_directories(folder / "other");
    const auto lock = FolderLock::take(folder / "file");
    ASSERT_TRUE(lock);
    EXPECT_EQ(lock->library(), std::nullopt);
    EXPECT_FALSE(FolderLock::take(folder.path(), milliseconds(20)));
    EXPECT_TRUE(FolderLock::take(folder / "other", milliseconds(20)));
    EXPECT_EQ(folder.names(), (std::vector<std::string>{"other"}));
}

TEST(FolderLock, OfAFolderThatIsNotThereIsNoError) {
    const TemporaryFolder folder;
    EXPECT_TRUE(FolderLock::take(folder / "not there/file"));
}

TEST(FolderLock, EndsWithTheProgramThatHeldIt) {
    const TemporaryFolder folder;
    ASSERT_TRUE(makeLibrary(folder.path()));
    const pid_t child = ::fork();
    if (child == 0) {
        const auto lock = FolderLock::take(folder.path());
        ::kill(::getpid(), SIGKILL);
    }
    int status = 0;
    ASSERT_EQ(::waitpid(child, &status, 0), child);
    ASSERT_TRUE(WIFSIGNALED(status));
    EXPECT_TRUE(FolderLock::take(folder.path(), milliseconds(20)));
}

TEST(FolderLock, IsNotGivenTwiceWhenTheHiddenFolderIsThrownAwayMeanwhile) {
    const TemporaryFolder folder;
    ASSERT_TRUE(makeLibrary(folder.path()));
    auto first = FolderLock::take(folder.path());
    ASSERT_TRUE(first);
    std::atomic<bool> isIn = false;
    std::jthread waiting([&] { isIn = FolderLock::take(folder.path()).has_value(); });
    std::this_thread::sleep_for(milliseconds(30));
    EXPECT_FALSE(isIn);
    std::filesystem::remove(folder / ".matwright/lock");
    {
        const auto gone = std::move(first);
    }
    waiting.join();
    EXPECT_TRUE(isIn);
    EXPECT_TRUE(std::filesystem::exists(folder / ".matwright/lock"));
}

}  // namespace
}  // namespace matwright
