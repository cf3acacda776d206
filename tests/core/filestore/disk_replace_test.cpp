// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <thread>

#include "core/filestore/file_store.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

using test::readFile;
using test::TemporaryFolder;
using test::writeFile;

mode_t permissionsOf(const std::filesystem::path& path) {
    struct stat facts = {};
    EXPECT_EQ(::stat(path.c_str(), &facts), 0) << path;
    return facts.st_mode & 07777;
}

void expectRefused(const std::filesystem::path& path) {
    const auto saved = DiskFileStore().replace(path, "new");
    ASSERT_FALSE(saved) << path;
    EXPECT_EQ(saved.error().code, ErrorCode::WriteFailed);
    EXPECT_EQ(saved.error().where, path.string());
    EXPECT_TRUE(saved.error().sentence.starts_with("The file was not saved: "))
        << saved.error().sentence;
    EXPECT_TRUE(saved.error().sentence.ends_with('.')) << saved.error().sentence;
}

TEST(DiskReplace, MakesAndReplacesAFileAndLeavesNothingBeside) {
    const TemporaryFolder folder;
    const std::string bytes("a\0\r\n\xFF", 5);
    for (const std::string& content :
         {std::string("first"), bytes, std::string(), std::string(3'000'000, 'x')}) {
        ASSERT_TRUE(DiskFileStore().replace(folder / "file", content));
        EXPECT_EQ(readFile(folder / "file"), content);
        EXPECT_EQ(folder.names(), (std::vector<std::string>{"file"}));
    }
}

TEST(DiskReplace, KeepsThePermissionsOfTheOldFile) {
    const TemporaryFolder folder;
    for (const mode_t mode : {0600u, 0640u, 0664u, 0755u}) {
        writeFile(folder / "file", "old");
        test::setPermissions(folder / "file", mode);
        ASSERT_TRUE(DiskFileStore().replace(folder / "file", "new"));
        EXPECT_EQ(permissionsOf(folder / "file"), mode);
    }
}

TEST(DiskReplace, GivesANewFileThePermissionsTheUserWants) {
    const TemporaryFolder folder;
    const mode_t before = ::umask(027);
    ASSERT_TRUE(DiskFileStore().replace(folder / "file", "new"));
    ::umask(before);
    EXPECT_EQ(permissionsOf(folder / "file"), 0640u);
}

TEST(DiskReplace, FollowsLinksAndLeavesThemLinks) {
    const TemporaryFolder folder;
    std::filesystem::create_directory(folder / "real");
    writeFile(folder / "real/file", "old");
    std::filesystem::create_symlink("real/file", folder / "link");
    std::filesystem::create_symlink(folder / "link", folder / "second");
    ASSERT_TRUE(DiskFileStore().replace(folder / "second", "new"));
    EXPECT_TRUE(std::filesystem::is_symlink(folder / "second"));
    EXPECT_TRUE(std::filesystem::is_symlink(folder / "link"));
    EXPECT_EQ(readFile(folder / "real/file"), "new");
}

TEST(DiskReplace, MakesTheFileThatALinkNamesAndThatIsNotThere) {
    const TemporaryFolder folder;
    std::filesystem::create_symlink("file", folder / "link");
    ASSERT_TRUE(DiskFileStore().replace(folder / "link", "new"));
    EXPECT_TRUE(std::filesystem::is_symlink(folder / "link"));
    EXPECT_EQ(readFile(folder / "file"), "new");
}

TEST(DiskReplace, WorksOnANameWithoutAFolder) {
    const TemporaryFolder folder;
    const auto before = std::filesystem::current_path();
    std::filesystem::current_path(folder.path());
    const auto saved = DiskFileStore().replace("file", "new");
    std::filesystem::current_path(before);
    ASSERT_TRUE(saved) << saved.error().text();
    EXPECT_EQ(readFile(folder / "file"), "new");
}

TEST(DiskReplace, TakesTheLongestNameAFolderCanHold) {
    const TemporaryFolder folder;
    const std::string name(255, 'n');
    ASSERT_TRUE(DiskFileStore().replace(folder / name, "new"));
    EXPECT_EQ(folder.names(), (std::vector<std::string>{name}));
    expectRefused(folder / std::string(256, 'n'));
}

TEST(DiskReplace, RefusesWhatIsNoFile) {
    const TemporaryFolder folder;
    std::filesystem::create_directory(folder / "folder");
    ASSERT_EQ(::mkfifo((folder / "pipe").c_str(), 0600), 0);
    std::filesystem::create_symlink("round", folder / "round");
    expectRefused(folder / "folder");
    expectRefused(folder / "pipe");
    expectRefused(folder / "round");
    expectRefused(folder / "");
    expectRefused("");
    expectRefused("/");
    EXPECT_EQ(folder.names(), (std::vector<std::string>{"folder", "pipe", "round"}));
}

TEST(DiskReplace, AFolderThatIsNotThereIsASentence) {
    const TemporaryFolder folder;
    writeFile(folder / "file", "");
    expectRefused(folder / "gone/file");
    expectRefused(folder / "file/inside");
}

TEST(DiskReplace, AWriteProtectedFileStaysAsItIs) {
    const TemporaryFolder folder;
    writeFile(folder / "file", "old");
    test::setPermissions(folder / "file", 0444);
    test::setPermissions(folder.path(), 0777);
    const test::WithoutPrivileges meanwhile;
    expectRefused(folder / "file");
    EXPECT_EQ(readFile(folder / "file"), "old");
}

TEST(DiskReplace, AFolderThatMayNotBeWrittenKeepsItsFile) {
    const TemporaryFolder folder;
    writeFile(folder / "file", "old");
    test::setPermissions(folder / "file", 0666);
    test::setPermissions(folder.path(), 0555);
    const test::WithoutPrivileges meanwhile;
    expectRefused(folder / "file");
    EXPECT_EQ(readFile(folder / "file"), "old");
    EXPECT_EQ(folder.names(), (std::vector<std::string>{"file"}));
}

TEST(DiskReplace, SavesAtTheSameTimeDoNotDisturbEachOther) {
    const TemporaryFolder folder;
    const auto saveOften = [&](char c) {
        for (int i = 0; i < 50; ++i) {
            const auto saved = DiskFileStore().replace(folder / "file", std::string(10'000, c));
            EXPECT_TRUE(saved) << saved.error().text();
        }
    };
    {
        const std::jthread first(saveOften, 'a');
        const std::jthread second(saveOften, 'b');
    }
    const std::string content = readFile(folder / "file");
    EXPECT_TRUE(content == std::string(10'000, 'a') || content == std::string(10'000, 'b'));
    EXPECT_EQ(folder.names(), (std::vector<std::string>{"file"}));
}

}  // namespace
}  // namespace matwright
