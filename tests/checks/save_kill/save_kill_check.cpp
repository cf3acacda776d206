// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <iostream>
#include <thread>

#include "core/filestore/file_store.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/support/random_sketch.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

using Clock = std::chrono::steady_clock;
using std::chrono::nanoseconds;
using test::Random;

constexpr int saves = 500;
constexpr std::uint64_t seed = 20'240'611;

// A file of some 200 KB, so that writing takes a while.
std::string versionOf(int number, Random& random) {
    Sketch sketch = test::randomSketch(random, 200);
    sketch.name = "version " + std::to_string(number);
    return writeSketch(sketch);
}

[[noreturn]] void saveAndExit(int start, const std::filesystem::path& file,
                              const std::string& bytes) {
    char go = 0;
    const bool isStarted = ::read(start, &go, 1) == 1;
    ::_exit(isStarted && DiskFileStore().replace(file, bytes) ? 0 : 1);
}

// Saves in a process of its own. With `killAfter` the process is killed that long after it began.
// True where it ended by itself, saved.
bool saveElsewhere(const std::filesystem::path& file, const std::string& bytes,
                   std::optional<nanoseconds> killAfter) {
    int start[2] = {};
    EXPECT_EQ(::pipe(start), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        saveAndExit(start[0], file, bytes);
    }
    EXPECT_GT(child, 0);
    EXPECT_EQ(::write(start[1], "x", 1), 1);
    if (killAfter) {
        std::this_thread::sleep_for(*killAfter);
        ::kill(child, SIGKILL);
    }
    int status = 0;
    EXPECT_EQ(::waitpid(child, &status, 0), child);
    ::close(start[0]);
    ::close(start[1]);
    EXPECT_TRUE(WIFSIGNALED(status) || (WIFEXITED(status) && WEXITSTATUS(status) == 0));
    return WIFEXITED(status);
}

// The median of some saves.
nanoseconds timeOfOneSave(const std::filesystem::path& file, Random& random) {
    const std::string bytes = versionOf(0, random);
    std::vector<nanoseconds> times;
    for (int i = 0; i < 21; ++i) {
        const auto begin = Clock::now();
        EXPECT_TRUE(saveElsewhere(file, bytes, std::nullopt));
        times.push_back(Clock::now() - begin);
    }
    std::ranges::sort(times);
    return times[times.size() / 2];
}

struct Tally {
    int old = 0;
    int fresh = 0;
    int finished = 0;
    int leftovers = 0;
};

void printTally(const Tally& tally, nanoseconds oneSave) {
    using std::chrono::duration_cast;
    using std::chrono::microseconds;
    std::cout << saves << " saves killed at random moments, seed " << seed << " (a save takes "
              << duration_cast<microseconds>(oneSave).count() << " us): " << tally.old
              << " times the old file, " << tally.fresh << " times the new one (" << tally.finished
              << " had ended by themselves), 0 times anything else; " << tally.leftovers
              << " kills left a temporary file, all swept\n";
}

// How many temporary files lie beside the one file.
int leftoversIn(const test::TemporaryFolder& folder) {
    return static_cast<int>(folder.names().size()) - 1;
}

TEST(SaveKill, TheFileIsAlwaysTheOldOneOrTheNewOneWhole) {
    const test::TemporaryFolder folder;
    const auto file = folder / "page.sketch.svg";
    DiskFileStore store;
    Random random(seed);
    const nanoseconds oneSave = timeOfOneSave(file, random);
    std::string current = versionOf(0, random);
    ASSERT_TRUE(store.replace(file, current));
    Tally tally;
    int leftovers = 0;
    // Kills come up to this long after the start. It follows the machine, which is not equally
    // fast all the time, so that about half of them come before the rename.
    nanoseconds range = oneSave;
    for (int i = 1; i <= saves; ++i) {
        const std::string next = versionOf(i, random);
        const auto after = range * static_cast<int>(test::below(random, 10'000)) / 10'000;
        tally.finished += saveElsewhere(file, next, after);
        const std::string bytes = test::readFile(file);
        const bool isNew = bytes == next;
        ASSERT_TRUE(isNew || bytes == current) << "save " << i << ", seed " << seed;
        const auto loaded = loadSketch(store, file);
        ASSERT_TRUE(loaded) << loaded.error().text();
        ++(isNew ? tally.fresh : tally.old);
        tally.leftovers += leftoversIn(folder) > leftovers;
        leftovers = leftoversIn(folder);
        range = isNew ? range * 95 / 100 : range * 105 / 100;
        current = isNew ? next : current;
    }
    ASSERT_TRUE(store.replace(file, current));
    EXPECT_EQ(folder.names(), (std::vector<std::string>{"page.sketch.svg"}));
    // Otherwise the moments were not spread over the save, and nothing was shown.
    EXPECT_GT(tally.old, saves / 10);
    EXPECT_GT(tally.fresh, saves / 10);
    EXPECT_GT(tally.leftovers, 0);
    printTally(tally, oneSave);
}

}  // namespace
}  // namespace matwright
