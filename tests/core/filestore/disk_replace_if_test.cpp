// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>
#include <signal.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <functional>

#include "core/filestore/displaced_file.h"
#include "core/filestore/file_store.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

using test::readFile;
using test::TemporaryFolder;
using test::writeFile;

constexpr std::size_t limit = 1'000;
using Names = std::vector<std::string>;

ExpectedBytes holding(std::string expected) {
    return [expected = std::move(expected)](std::string_view bytes) { return bytes == expected; };
}

// As another program would: blindly, by a rename.
void replaceElsewhere(const std::filesystem::path& file, const std::string& bytes) {
    const auto beside = file.parent_path() / "of another program";
    writeFile(beside, bytes);
    std::filesystem::rename(beside, file);
}

TEST(DiskReplaceIf, ReplacesAFileThatHoldsWhatIsExpected) {
    const TemporaryFolder folder;
    writeFile(folder / "file", "old");
    test::setPermissions(folder / "file", 0640);
    const auto done = DiskFileStore().replaceIf(folder / "file", limit, holding("old"), "new");
    ASSERT_TRUE(done);
    EXPECT_TRUE(*done);
    EXPECT_EQ(readFile(folder / "file"), "new");
    EXPECT_EQ(folder.names(), Names{"file"});
    struct stat facts = {};
    ASSERT_EQ(::stat((folder / "file").c_str(), &facts), 0);
    EXPECT_EQ(facts.st_mode & 0777, 0640u);
}

TEST(DiskReplaceIf, LeavesAFileThatHoldsAnythingElse) {
    const TemporaryFolder folder;
    for (const std::string& held : {std::string("other"), std::string(), std::string(1001, 'x')}) {
        writeFile(folder / "file", held);
        const auto any = [](std::string_view bytes) { return bytes != "other" && !bytes.empty(); };
        const auto done = DiskFileStore().replaceIf(folder / "file", limit, any, "new");
        ASSERT_TRUE(done);
        EXPECT_FALSE(*done) << held.size();
        EXPECT_EQ(readFile(folder / "file"), held);
        EXPECT_EQ(folder.names(), Names{"file"});
    }
}

TEST(DiskReplaceIf, NamesAFileThatIsGone) {
    const TemporaryFolder folder;
    const auto done = DiskFileStore().replaceIf(folder / "file", limit, holding("old"), "new");
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, ErrorCode::NotFound);
    EXPECT_TRUE(folder.names().empty());
}

TEST(DiskReplaceIf, ReplacesWhatALinkNames) {
    const TemporaryFolder folder;
    std::filesystem::create_directory(folder / "real");
    writeFile(folder / "real/file", "old");
    std::filesystem::create_symlink("real/file", folder / "link");
    ASSERT_TRUE(DiskFileStore().replaceIf(folder / "link", limit, holding("old"), "new").value());
    EXPECT_TRUE(std::filesystem::is_symlink(folder / "link"));
    EXPECT_EQ(readFile(folder / "real/file"), "new");
}

TEST(DiskReplaceIf, RefusesAWriteProtectedFile) {
    const TemporaryFolder folder;
    test::setPermissions(folder.path(), 0777);
    writeFile(folder / "file", "old");
    test::setPermissions(folder / "file", 0444);
    const test::WithoutPrivileges meanwhile;
    const auto done = DiskFileStore().replaceIf(folder / "file", limit, holding("old"), "new");
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, ErrorCode::WriteFailed);
    EXPECT_EQ(readFile(folder / "file"), "old");
}

// The second question is asked about what was displaced: until then another program may write.
TEST(DiskReplaceIf, PutsBackWhatAnotherProgramWroteAfterTheFirstLook) {
    const TemporaryFolder folder;
    const auto file = folder / "file";
    writeFile(file, "old");
    int looks = 0;
    const auto done = DiskFileStore().replaceIf(
        file, limit,
        [&](std::string_view bytes) {
            if (++looks == 1) {
                replaceElsewhere(file, "theirs");
                return true;
            }
            return bytes == "old";
        },
        "new");
    ASSERT_TRUE(done);
    EXPECT_FALSE(*done);
    EXPECT_EQ(looks, 2);
    EXPECT_EQ(readFile(file), "theirs");
    EXPECT_EQ(folder.names(), Names{"file"});
}

TEST(DiskReplaceIf, LeavesTheNewestWhereAnotherProgramWritesTwice) {
    const TemporaryFolder folder;
    const auto file = folder / "file";
    writeFile(file, "old");
    int looks = 0;
    const auto done = DiskFileStore().replaceIf(
        file, limit,
        [&](std::string_view) {
            replaceElsewhere(file, ++looks == 1 ? "theirs" : "theirs again");
            return looks == 1;
        },
        "new");
    ASSERT_TRUE(done);
    EXPECT_FALSE(*done);
    EXPECT_EQ(readFile(file), "theirs again");
}

TEST(DiskReplaceIf, NamesAFileThatVanishesMeanwhile) {
    const TemporaryFolder folder;
    const auto file = folder / "file";
    writeFile(file, "old");
    const auto done = DiskFileStore().replaceIf(
        file, limit, [&](std::string_view) { return std::filesystem::remove(file); }, "new");
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, ErrorCode::NotFound);
    EXPECT_TRUE(folder.names().empty());
}

// Runs replaceIf in a program of its own that dies while it asks for the given time.
void replaceAndDie(
    const std::filesystem::path& file, int deadlyLook,
    const std::function<void()>& meanwhile = [] {}) {
    const pid_t child = ::fork();
    if (child == 0) {
        int looks = 0;
        static_cast<void>(DiskFileStore().replaceIf(
            file, limit,
            [&](std::string_view) {
                if (++looks == deadlyLook) {
                    ::kill(::getpid(), SIGKILL);
                }
                meanwhile();
                return true;
            },
            "new"));
        ::_exit(0);
    }
    int status = 0;
    ASSERT_EQ(::waitpid(child, &status, 0), child);
    ASSERT_TRUE(WIFSIGNALED(status));
}

TEST(DiskReplaceIf, KilledBeforeTheExchangeLeavesTheOldFile) {
    const TemporaryFolder folder;
    writeFile(folder / "file", "old");
    replaceAndDie(folder / "file", 1);
    EXPECT_EQ(readFile(folder / "file"), "old");
    EXPECT_EQ(folder.names(), Names{"file"});
}

TEST(DiskReplaceIf, KilledAfterTheExchangeLeavesTheOldFileHiddenAndKnownAsReplaced) {
    const TemporaryFolder folder;
    writeFile(folder / "file", "old");
    replaceAndDie(folder / "file", 2);
    EXPECT_EQ(readFile(folder / "file"), "new");
    const auto displaced = displacedFiles(folder.path());
    ASSERT_EQ(displaced.size(), 1u);
    EXPECT_TRUE(displaced[0].isReplaced);
    EXPECT_EQ(readFile(displaced[0].path), "old");
}

TEST(DiskReplaceIf, KilledAfterTheExchangeKeepsWhatAnotherProgramWrote) {
    const TemporaryFolder folder;
    const auto file = folder / "file";
    writeFile(file, "old");
    replaceAndDie(file, 2, [&] { replaceElsewhere(file, "theirs"); });
    EXPECT_EQ(readFile(file), "new");
    // Sweeping after other saves must not take it away.
    ASSERT_TRUE(DiskFileStore().replace(file, "newer"));
    const auto displaced = displacedFiles(folder.path());
    ASSERT_EQ(displaced.size(), 1u);
    EXPECT_FALSE(displaced[0].isReplaced);
    EXPECT_EQ(readFile(displaced[0].path), "theirs");
}

TEST(DisplacedFiles, TellWhatWasReplacedFromWhatIsToBeKept) {
    const TemporaryFolder folder;
    const auto bornAs = [&](const std::string& bytes, std::int64_t shift) {
        writeFile(folder / "born", bytes);
        struct stat facts = {};
        EXPECT_EQ(::stat((folder / "born").c_str(), &facts), 0);
        const auto modified =
            std::int64_t{facts.st_mtim.tv_sec} * 1'000'000'000 + facts.st_mtim.tv_nsec;
        const auto name = displacedName("Päge.sketch.svg", facts.st_ino, modified + shift);
        std::filesystem::rename(folder / "born", folder / name);
        return folder / name;
    };
    const auto replaced = bornAs("replaced", 0);
    const auto changed = bornAs("changed", 1);
    writeFile(folder / "Päge.sketch.svg", "at its place");
    writeFile(folder / ".hidden.kept", "of somebody else");
    int seen = 0;
    for (const DisplacedFile& file : displacedFiles(folder.path())) {
        EXPECT_EQ(file.targetName, "Päge.sketch.svg");
        EXPECT_EQ(file.path, file.isReplaced ? replaced : changed);
        ++seen;
    }
    EXPECT_EQ(seen, 2);
}

TEST(DisplacedFiles, HaveNamesThatADiskTakes) {
    std::string longest;
    while (longest.size() < 255) {
        longest += "ä";
    }
    const std::string name = displacedName(longest, ~std::uint64_t{0}, -1);
    EXPECT_LE(name.size(), 255u);
    const TemporaryFolder folder;
    writeFile(folder / name, "x");
    ASSERT_EQ(displacedFiles(folder.path()).size(), 1u);
    EXPECT_TRUE(longest.starts_with(displacedFiles(folder.path())[0].targetName));
}

}  // namespace
}  // namespace matwright
