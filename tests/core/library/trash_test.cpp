// SPDX-License-Identifier: MIT
// What the freedesktop.org Trash specification 1.0 asks for, section by section
// (https://specifications.freedesktop.org/trash-spec/trashspec-1.0.html).
#include "core/library/trash.h"

#include <gtest/gtest.h>
#include <sched.h>
#include <stdlib.h>
#include <sys/mount.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <functional>
#include <memory>

#include "core/library/trash_can.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

namespace fs = std::filesystem;
using test::readFile;
using test::TemporaryFolder;
using test::writeFile;

// 2004-08-31 22:32:08 in the time zone of the tests.
std::time_t exampleMoment() {
    std::tm time = {};
    time.tm_year = 104;
    time.tm_mon = 7;
    time.tm_mday = 31;
    time.tm_hour = 22;
    time.tm_min = 32;
    time.tm_sec = 8;
    time.tm_isdst = -1;
    return std::mktime(&time);
}

struct TrashFolders : TemporaryFolder {
    TrashPlaces places{*this / "data", 1234, exampleMoment()};
    fs::path work = *this / "work";

    TrashFolders() { fs::create_directories(work); }
    fs::path put(const std::string& name, const std::string& bytes) const {
        writeFile(work / name, bytes);
        return work / name;
    }
};

unsigned modeOf(const fs::path& path) {
    struct stat facts = {};
    EXPECT_EQ(::lstat(path.c_str(), &facts), 0) << path;
    return facts.st_mode & 07777;
}

// "Contents of a trash directory", "The $trash/info directory".
TEST(Trash, MovesTheFileAndTellsTheWayBack) {
    const TrashFolders folders;
    const fs::path file = folders.put("Harbour day.sketch.svg", "bytes");
    const auto trashed = moveToTrash(file, folders.places);
    ASSERT_TRUE(trashed) << trashed.error().text();
    EXPECT_FALSE(fs::exists(file));
    EXPECT_EQ(trashed->file, folders / "data/Trash/files/Harbour day.sketch.svg");
    EXPECT_EQ(trashed->info, folders / "data/Trash/info/Harbour day.sketch.svg.trashinfo");
    EXPECT_EQ(readFile(trashed->file), "bytes");
    EXPECT_EQ(readFile(trashed->info), "[Trash Info]\nPath=" + escapedPath(file.string()) +
                                           "\nDeletionDate=2004-08-31T22:32:08\n");
    EXPECT_NE(readFile(trashed->info).find("Harbour%20day.sketch.svg"), std::string::npos);
}

// "Trash directories": created "automatically and without any warnings or delays".
TEST(Trash, MakesTheHomeTrashForItsOwnerOnly) {
    const TrashFolders folders;
    ASSERT_TRUE(moveToTrash(folders.put("a", ""), folders.places));
    for (const char* name : {"data/Trash", "data/Trash/files", "data/Trash/info"}) {
        EXPECT_EQ(modeOf(folders / name), 0700u) << name;
    }
}

// "files with the same name … MUST NOT be overwritten"; a name may be taken in either folder.
TEST(Trash, NumbersNamesThatAreTakenInEitherFolder) {
    const TrashFolders folders;
    std::vector<fs::path> places;
    for (const char* bytes : {"1", "2", "3"}) {
        places.push_back(moveToTrash(folders.put("a.sketch.svg", bytes), folders.places)->file);
    }
    writeFile(folders / "data/Trash/files/b", "a file without information");
    writeFile(folders / "data/Trash/info/c.trashinfo", "information without a file");
    const auto b = moveToTrash(folders.put("b", "b"), folders.places);
    const auto c = moveToTrash(folders.put("c", "c"), folders.places);
    EXPECT_EQ(places[1].filename(), "a (2).sketch.svg");
    EXPECT_EQ(places[2].filename(), "a (3).sketch.svg");
    for (std::size_t i = 0; i < places.size(); ++i) {
        EXPECT_EQ(readFile(places[i]), std::to_string(i + 1));
    }
    EXPECT_EQ(b->file.filename(), "b (2)");
    EXPECT_EQ(c->file.filename(), "c (2)");
    EXPECT_EQ(readFile(folders / "data/Trash/files/b"), "a file without information");
    EXPECT_EQ(readFile(folders / "data/Trash/info/c.trashinfo"), "information without a file");
    EXPECT_FALSE(fs::exists(folders / "data/Trash/info/b.trashinfo"));
}

TEST(Trash, CutsNamesSoThatTheInformationFits) {
    const std::string longest = std::string(244, 'a') + ".sketch.svg";
    for (int number : {1, 2, 100}) {
        const std::string name = trashName(longest, number);
        EXPECT_EQ(name.size() + std::string(".trashinfo").size(), 255u);
        EXPECT_TRUE(name.ends_with(".sketch.svg"));
    }
    EXPECT_EQ(trashName("a.sketch.svg", 1), "a.sketch.svg");
    EXPECT_LE(trashName("." + std::string(254, 'x'), 2).size(), 245u);
    EXPECT_LE(trashName("a." + std::string(253, 'x'), 2).size(), 245u);
    const TrashFolders folders;
    const auto trashed = moveToTrash(folders.put(longest, "x"), folders.places);
    ASSERT_TRUE(trashed) << trashed.error().text();
    EXPECT_EQ(readFile(trashed->file), "x");
}

// "Path … MUST … be percent-encoded", RFC 2396, section 2.
TEST(Trash, EscapesPathsAsTheRfcSays) {
    EXPECT_EQ(escapedPath("/a-b_c.d!e~f*g'h(i)j"), "/a-b_c.d!e~f*g'h(i)j");
    EXPECT_EQ(escapedPath("a b\n%\xC3\xA4#?&=+,:;@$\"<>\x7F\xFF"),
              "a%20b%0A%25%C3%A4%23%3F%26%3D%2B%2C%3A%3B%40%24%22%3C%3E%7F%FF");
}

TEST(Trash, MovesALinkItselfAndTellsWhereItsFolderReallyIs) {
    const TrashFolders folders;
    folders.put("target", "stays");
    fs::create_symlink("target", folders.work / "link");
    fs::create_directory_symlink(folders.work, folders / "other way");
    const auto trashed = moveToTrash(folders / "other way/link", folders.places);
    ASSERT_TRUE(trashed);
    EXPECT_TRUE(fs::is_symlink(trashed->file));
    EXPECT_EQ(readFile(folders.work / "target"), "stays");
    EXPECT_EQ(trashed->original, folders.work / "link");
}

TEST(Trash, LeavesTheFileWhereItIsWhenItCannot) {
    const TrashFolders folders;
    const fs::path file = folders.put("a", "bytes");
    writeFile(folders / "data", "no folder");
    const auto trashed = moveToTrash(file, folders.places);
    ASSERT_FALSE(trashed);
    EXPECT_EQ(trashed.error().code, ErrorCode::WriteFailed);
    EXPECT_TRUE(trashed.error().sentence.starts_with("The file was left where it is"));
    EXPECT_EQ(readFile(file), "bytes");
    EXPECT_EQ(moveToTrash(folders.work / "gone", folders.places).error().code, ErrorCode::NotFound);
}

TEST(Trash, LeavesNoInformationBehindWhereTheFolderMayNotBeChanged) {
    const TrashFolders folders;
    const fs::path file = folders.put("a", "bytes");
    test::setPermissions(folders.path(), 0777);
    test::setPermissions(folders.work, 0555);
    {
        const test::WithoutPrivileges meanwhile;
        EXPECT_FALSE(moveToTrash(file, folders.places));
        EXPECT_TRUE(fs::is_empty(folders / "data/Trash/info"));
    }
    test::setPermissions(folders.work, 0755);
    EXPECT_EQ(readFile(file), "bytes");
}

TEST(Trash, GivesAFileBackButNeverOverAnother) {
    const TrashFolders folders;
    const fs::path file = folders.put("a", "bytes");
    const auto trashed = moveToTrash(file, folders.places);
    ASSERT_TRUE(trashed);
    writeFile(file, "another");
    EXPECT_FALSE(restoreFromTrash(*trashed, file).value());
    EXPECT_TRUE(restoreFromTrash(*trashed, folders.work / "new/b").value());
    EXPECT_EQ(readFile(folders.work / "new/b"), "bytes");
    EXPECT_EQ(readFile(file), "another");
    EXPECT_FALSE(fs::exists(trashed->info));
    EXPECT_EQ(restoreFromTrash(*trashed, folders.work / "c").error().code, ErrorCode::NotFound);
}

TEST(Trash, TakesTheHomeFromTheEnvironmentWhereItIsAbsolute) {
    ASSERT_EQ(::setenv("XDG_DATA_HOME", "/somewhere/data", 1), 0);
    EXPECT_EQ(ownTrashPlaces().dataHome, "/somewhere/data");
    ASSERT_EQ(::setenv("XDG_DATA_HOME", "relative", 1), 0);
    ASSERT_EQ(::setenv("HOME", "/home/somebody", 1), 0);
    EXPECT_EQ(ownTrashPlaces().dataHome, "/home/somebody/.local/share");
    EXPECT_EQ(ownTrashPlaces().user, ::getuid());
}

enum Elsewhere : int { Right = 0, Wrong = 1, NotPossible = 77 };

// In a process of its own with a small disk mounted in `folder`.
Elsewhere onAnotherMount(const fs::path& folder, const std::function<bool()>& check) {
    const pid_t child = ::fork();
    if (child == 0) {
        const bool isMounted =
            ::geteuid() == 0 && ::unshare(CLONE_NEWNS) == 0 &&
            ::mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) == 0 &&
            ::mount("matwright-check", folder.c_str(), "tmpfs", 0, "size=1m") == 0;
        ::_exit(isMounted ? (check() ? Right : Wrong) : NotPossible);
    }
    int status = 0;
    EXPECT_EQ(::waitpid(child, &status, 0), child);
    return WIFEXITED(status) ? static_cast<Elsewhere>(WEXITSTATUS(status)) : Wrong;
}

// "Trash directories", (1) and (2), and "Path … relative to the directory in which the trash
// directory resides".
bool fallsFromSharedToOwnTrash(const TrashFolders& folders) {
    const fs::path mount = folders.work;
    fs::create_directories(mount / "sub");
    const auto trashAnew = [&] {
        writeFile(mount / "sub/a b", "bytes");
        return moveToTrash(mount / "sub/a b", folders.places);
    };
    const auto goesTo = [&](const fs::path& can) {
        const auto trashed = trashAnew();
        return trashed && trashed->file.parent_path() == can / "files" &&
               readFile(trashed->info).find("\nPath=sub/a%20b\n") != std::string::npos;
    };
    const fs::path own = mount / ".Trash-1234";
    const bool withoutShared = goesTo(own);
    fs::create_directory(mount / ".Trash");
    const bool withoutSticky = goesTo(own);
    test::setPermissions(mount / ".Trash", 01777);
    const bool withSticky = goesTo(mount / ".Trash/1234");
    fs::rename(mount / ".Trash", mount / "real");
    fs::create_directory_symlink("real", mount / ".Trash");
    const bool withLink = goesTo(own);
    return withoutShared && withoutSticky && withSticky && withLink && modeOf(own) == 0700 &&
           !fs::exists(folders / "data/Trash");
}

TEST(Trash, UsesTheTrashOfAnotherMount) {
    const TrashFolders folders;
    const Elsewhere outcome =
        onAnotherMount(folders.work, [&] { return fallsFromSharedToOwnTrash(folders); });
    if (outcome == NotPossible) {
        GTEST_SKIP() << "SKIPPED: trash of another mount: mounting is not allowed here";
    }
    EXPECT_EQ(outcome, Right);
}

TEST(Trash, LeavesTheFileOnAMountThatHasNoTrash) {
    const TrashFolders folders;
    const Elsewhere outcome = onAnotherMount(folders.work, [&] {
        const fs::path file = folders.put("a", "bytes");
        writeFile(folders.work / ".Trash-1234", "no folder");
        return !moveToTrash(file, folders.places) && readFile(file) == "bytes";
    });
    if (outcome == NotPossible) {
        GTEST_SKIP() << "SKIPPED: mount without trash: mounting is not allowed here";
    }
    EXPECT_EQ(outcome, Right);
}

// What another program says is in the trash; nothing where there is no such program.
std::optional<std::string> trashListed(const fs::path& dataHome) {
    if (std::system("command -v trash-list >/dev/null 2>&1") != 0) {
        return std::nullopt;
    }
    const std::string command = "XDG_DATA_HOME='" + dataHome.string() +
                                "' PYTHONIOENCODING=utf-8 LC_ALL=C.UTF-8 trash-list";
    std::string listed;
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(::popen(command.c_str(), "r"), ::pclose);
    std::array<char, 4096> part{};
    while (const std::size_t count = std::fread(part.data(), 1, part.size(), pipe.get())) {
        listed.append(part.data(), count);
    }
    return listed;
}

TEST(Trash, IsReadByAnotherProgram) {
    const TrashFolders folders;
    std::vector<std::string> expected;
    for (const std::string& name :
         {std::string("Harbour day.sketch.svg"), std::string("100 % \u00E4 [1] #2.sketch.svg"),
          std::string("a+b&c=d;e.sketch.svg"), std::string(200, 'l') + ".sketch.svg"}) {
        const fs::path file = folders.put(name, "bytes");
        ASSERT_TRUE(moveToTrash(file, folders.places));
        expected.push_back("2004-08-31 22:32:08 " + file.string() + "\n");
    }
    const auto listed = trashListed(folders.places.dataHome);
    if (!listed) {
        GTEST_SKIP() << "SKIPPED: trash read by another program: trash-list (Debian package "
                        "trash-cli) is not installed";
    }
    for (const std::string& line : expected) {
        EXPECT_NE(listed->find(line), std::string::npos) << line << "is not in\n" << *listed;
    }
}

}  // namespace
}  // namespace matwright
