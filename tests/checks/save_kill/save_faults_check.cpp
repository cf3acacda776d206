// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>
#include <sched.h>
#include <signal.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <functional>
#include <iostream>

#include "core/filestore/file_store.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/support/random_sketch.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

enum Outcome : int { AsWished = 0, Wrong = 1, NotPossibleHere = 77 };

// In a process of its own, which may mount and limit what it likes.
Outcome elsewhere(const std::function<Outcome()>& act) {
    std::cout.flush();
    const pid_t child = ::fork();
    if (child == 0) {
        const Outcome outcome = act();
        std::cout.flush();
        ::_exit(outcome);
    }
    int status = 0;
    EXPECT_EQ(::waitpid(child, &status, 0), child);
    return WIFEXITED(status) ? static_cast<Outcome>(WEXITSTATUS(status)) : Wrong;
}

// Files of an unknown owner cannot be made: in a space of its own the process is the administrator.
void becomeOwner(uid_t user, gid_t group) {
    test::writeFile("/proc/self/setgroups", "deny");
    test::writeFile("/proc/self/uid_map", "0 " + std::to_string(user) + " 1");
    test::writeFile("/proc/self/gid_map", "0 " + std::to_string(group) + " 1");
}

// Mounts that nobody else sees; false where this user or machine does not allow it.
bool hasOwnMounts() {
    const uid_t user = ::geteuid();
    const gid_t group = ::getegid();
    if (::unshare(user == 0 ? CLONE_NEWNS : CLONE_NEWNS | CLONE_NEWUSER) != 0) {
        return false;
    }
    if (user != 0) {
        becomeOwner(user, group);
    }
    return ::geteuid() == 0 && ::mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) == 0;
}

bool mountSmallDisk(const std::filesystem::path& folder, const char* options) {
    return ::mount("matwright-check", folder.c_str(), "tmpfs", 0, options) == 0;
}

Sketch smallSketch() {
    Sketch sketch = blankSketch();
    sketch.name = "the old one";
    return sketch;
}

Sketch largeSketch() {
    test::Random random(1);
    return test::randomSketch(random, 500);
}

// A save that must fail with a sentence and leave the old file, alone and whole.
Outcome failsWell(const test::TemporaryFolder& folder, const char* what) {
    DiskFileStore store;
    const auto file = folder / "page.sketch.svg";
    const auto saved = saveSketch(store, file, largeSketch());
    const auto loaded = loadSketch(store, file);
    if (saved || !loaded) {
        std::cout << what << ": " << (saved ? "the save succeeded" : loaded.error().text()) << "\n";
        return Wrong;
    }
    std::cout << what << ": " << saved.error().text() << "\n";
    const bool isAsWished = saved.error().code == ErrorCode::WriteFailed &&
                            saved.error().sentence.starts_with("The file was not saved: ") &&
                            loaded->sketch == smallSketch() && folder.names().size() == 1;
    return isAsWished ? AsWished : Wrong;
}

bool saveSmall(const test::TemporaryFolder& folder) {
    DiskFileStore store;
    return saveSketch(store, folder / "page.sketch.svg", smallSketch()).has_value();
}

TEST(SaveFaults, AFullDiskIsASentenceAndTheOldFileStays) {
    const test::TemporaryFolder folder;
    const Outcome outcome = elsewhere([&] {
        if (!hasOwnMounts() || !mountSmallDisk(folder.path(), "size=64k")) {
            return NotPossibleHere;
        }
        return saveSmall(folder) ? failsWell(folder, "full disk") : Wrong;
    });
    if (outcome == NotPossibleHere) {
        GTEST_SKIP() << "SKIPPED: full disk: mounting a small disk is not allowed here";
    }
    EXPECT_EQ(outcome, AsWished);
}

TEST(SaveFaults, ALimitOfTheAccountIsASentenceAndTheOldFileStays) {
    const test::TemporaryFolder folder;
    ASSERT_TRUE(saveSmall(folder));
    EXPECT_EQ(elsewhere([&] {
                  // Without this the system ends the program at the limit.
                  ::signal(SIGXFSZ, SIG_IGN);
                  const rlimit limit{65'536, 65'536};
                  return ::setrlimit(RLIMIT_FSIZE, &limit) == 0 ? failsWell(folder, "file limit")
                                                                : Wrong;
              }),
              AsWished);
}

TEST(SaveFaults, ADiskThatCanOnlyBeReadIsASentenceAndTheOldFileStays) {
    const test::TemporaryFolder folder;
    const Outcome outcome = elsewhere([&] {
        if (!hasOwnMounts() || !mountSmallDisk(folder.path(), "size=4m")) {
            return NotPossibleHere;
        }
        if (!saveSmall(folder) || ::mount(nullptr, folder.path().c_str(), nullptr,
                                          MS_REMOUNT | MS_RDONLY, nullptr) != 0) {
            return Wrong;
        }
        return failsWell(folder, "read-only disk");
    });
    if (outcome == NotPossibleHere) {
        GTEST_SKIP() << "SKIPPED: read-only disk: mounting one is not allowed here";
    }
    EXPECT_EQ(outcome, AsWished);
}

TEST(SaveFaults, AFolderThatCanOnlyBeReadIsASentenceAndTheOldFileStays) {
    const test::TemporaryFolder folder;
    ASSERT_TRUE(saveSmall(folder));
    test::setPermissions(folder / "page.sketch.svg", 0666);
    test::setPermissions(folder.path(), 0555);
    const test::WithoutPrivileges meanwhile;
    EXPECT_EQ(failsWell(folder, "read-only folder"), AsWished);
}

TEST(SaveFaults, AVanishedFolderIsASentenceAndNothingIsMadeInItsPlace) {
    const test::TemporaryFolder folder;
    const auto inside = folder / "shelf";
    const auto moved = folder / "moved";
    const auto file = inside / "page.sketch.svg";
    DiskFileStore store;
    std::filesystem::create_directory(inside);
    ASSERT_TRUE(saveSketch(store, file, smallSketch()));
    std::filesystem::rename(inside, moved);
    const auto saved = saveSketch(store, file, largeSketch());
    ASSERT_FALSE(saved);
    std::cout << "vanished folder: " << saved.error().text() << "\n";
    EXPECT_EQ(saved.error().code, ErrorCode::WriteFailed);
    EXPECT_FALSE(std::filesystem::exists(inside));
    EXPECT_EQ(loadSketch(store, moved / "page.sketch.svg")->sketch, smallSketch());
}

}  // namespace
}  // namespace matwright
