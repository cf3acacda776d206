// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>
#include <sys/stat.h>

#include "core/filestore/file_store.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

using test::TemporaryFolder;
using test::writeFile;

constexpr std::size_t plenty = 1'000'000;

void expectRefused(const Result<std::string>& read, ErrorCode code, const std::string& path) {
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, code);
    EXPECT_EQ(read.error().where, path);
    EXPECT_TRUE(read.error().sentence.ends_with('.')) << read.error().sentence;
}

TEST(DiskRead, GivesTheBytesAsTheyAre) {
    const TemporaryFolder folder;
    const std::string bytes("a\0\r\n\xFF", 5);
    writeFile(folder / "file", bytes);
    EXPECT_EQ(DiskFileStore().read(folder / "file", plenty), bytes);
    writeFile(folder / "empty", "");
    EXPECT_EQ(DiskFileStore().read(folder / "empty", plenty), "");
}

TEST(DiskRead, TakesAFileOfTheLimitAndRefusesOneByteMore) {
    const TemporaryFolder folder;
    for (const std::size_t limit : {0u, 1u, 65'536u, 200'000u}) {
        writeFile(folder / "file", std::string(limit, 'x'));
        EXPECT_EQ(DiskFileStore().read(folder / "file", limit)->size(), limit);
        writeFile(folder / "file", std::string(limit + 1, 'x'));
        expectRefused(DiskFileStore().read(folder / "file", limit), ErrorCode::TooLarge,
                      folder / "file");
    }
}

// Files of the process table say that they have no bytes and have some.
TEST(DiskRead, DoesNotTrustTheStatedSize) {
    const auto whole = DiskFileStore().read("/proc/self/status", plenty);
    ASSERT_TRUE(whole) << whole.error().text();
    EXPECT_GT(whole->size(), 100u);
    expectRefused(DiskFileStore().read("/proc/self/status", 10), ErrorCode::TooLarge,
                  "/proc/self/status");
}

TEST(DiskRead, AMissingFileOrFolderIsNotFound) {
    const TemporaryFolder folder;
    writeFile(folder / "file", "");
    for (const char* name : {"gone", "gone/file", "file/inside"}) {
        expectRefused(DiskFileStore().read(folder / name, plenty), ErrorCode::NotFound,
                      folder / name);
    }
}

// A pipe or device that was opened in the usual way would hold the test up for ever.
TEST(DiskRead, RefusesWhatIsNoFileAtOnce) {
    const TemporaryFolder folder;
    const std::string pipe = folder / "pipe";
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    std::filesystem::create_symlink(pipe, folder / "link");
    for (const std::string& path : {pipe, (folder / "link").string(), folder.path().string(),
                                    std::string("/dev/zero"), std::string("/dev/tty")}) {
        if (std::filesystem::exists(path)) {
            expectRefused(DiskFileStore().read(path, plenty), ErrorCode::ReadFailed, path);
        }
    }
}

TEST(DiskRead, FollowsALinkAndNamesACircle) {
    const TemporaryFolder folder;
    writeFile(folder / "file", "x");
    std::filesystem::create_symlink("file", folder / "link");
    EXPECT_EQ(DiskFileStore().read(folder / "link", plenty), "x");
    std::filesystem::create_symlink("round", folder / "round");
    expectRefused(DiskFileStore().read(folder / "round", plenty), ErrorCode::ReadFailed,
                  folder / "round");
}

TEST(DiskRead, AForbiddenFileIsASentence) {
    const TemporaryFolder folder;
    writeFile(folder / "file", "x");
    test::setPermissions(folder / "file", 0);
    test::setPermissions(folder.path(), 0755);
    const test::WithoutPrivileges meanwhile;
    expectRefused(DiskFileStore().read(folder / "file", plenty), ErrorCode::ReadFailed,
                  folder / "file");
}

}  // namespace
}  // namespace matwright
