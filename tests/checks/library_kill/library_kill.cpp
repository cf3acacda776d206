// SPDX-License-Identifier: MIT
// Usage: library_kill OPERATIONS SEED
//
// Two programs save, rename, copy, trash and tag the sketches of one library, other programs that
// know nothing of them write and move in between, and all are killed with SIGKILL again and again.
// In the end no sketch may be lost or half-written, and the index must say what the folder holds.
#include <fmt/format.h>
#include <signal.h>
#include <sys/mman.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <cstdlib>
#include <new>
#include <thread>

#include "core/library/folder_lock.h"
#include "core/library/saving.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/checks/library_kill/verdict.h"
#include "tests/checks/library_kill/worker.h"
#include "tests/support/temporary_folder.h"

namespace matwright::check {

namespace {

pid_t startWorker(const Place& place, std::uint64_t seed, int operations) {
    const pid_t child = ::fork();
    if (child == 0) {
        work(place, test::Random(seed), operations);
        ::_exit(0);
    }
    return child;
}

// Whether it ended by itself; kills it otherwise.
bool endedOrKilled(pid_t child, int& failures) {
    int status = 0;
    if (::waitpid(child, &status, WNOHANG) != child) {
        ::kill(child, SIGKILL);
        ::waitpid(child, &status, 0);
    }
    failures += WIFEXITED(status) && WEXITSTATUS(status) != 0 ? 1 : 0;
    failures += WIFSIGNALED(status) && WTERMSIG(status) != SIGKILL ? 1 : 0;
    return WIFEXITED(status);
}

struct Run {
    int kills = 0;
    int crashes = 0;  // of their own accord: none is right
};

// A worker lives some milliseconds, then it is killed and another one takes its place.
Run runWorkers(const Place& place, std::uint64_t seed, int operations) {
    Run run;
    test::Random random(seed);
    pid_t workers[2] = {startWorker(place, random(), operations),
                        startWorker(place, random(), operations)};
    while (place.shared->begun < operations) {
        std::this_thread::sleep_for(std::chrono::microseconds(test::below(random, 30'000)));
        pid_t& worker = workers[test::below(random, 2)];
        run.kills += endedOrKilled(worker, run.crashes) ? 0 : 1;
        worker = startWorker(place, random(), operations);
    }
    for (const pid_t worker : workers) {
        int status = 0;
        ::waitpid(worker, &status, 0);
        run.crashes += WIFEXITED(status) && WEXITSTATUS(status) == 0 ? 0 : 1;
    }
    return run;
}

void putFirstSketches(const Place& place) {
    DiskFileStore store;
    for (int i = 0; i < 12; ++i) {
        const int version = place.newVersion();
        const auto name = fmt::format("name {}{}", i, sketchFileSuffix);
        const auto saved = saveKeepingBoth(store, place.library / name, std::nullopt,
                                           versionSketch(version, "a sketch"));
        place.journal.write({saved ? Deed::DidSave : Deed::Failed, version, 0, ""});
    }
}

void printList(const char* what, const std::vector<std::string>& list) {
    for (const std::string& each : list) {
        fmt::print("  {}: {}\n", what, each);
    }
}

void print(const Run& run, const Verdict& verdict, const Place& place, std::uint64_t seed) {
    fmt::print("{} operations by two programs and outsiders, {} kills, seed {}\n",
               place.shared->begun.load(), run.kills, seed);
    fmt::print(
        "{} versions were told to be saved ({} of them beside another): {} are there, {} "
        "were saved over by their own next version, {} written over by an outsider, {} "
        "lost; {} half-written\n",
        verdict.told, verdict.keptBoth, verdict.present, verdict.superseded, verdict.overwritten,
        verdict.lost.size(), verdict.halfWritten.size());
    fmt::print("{} tags were told to be kept: {} lost; {} broken records\n", verdict.tags,
               verdict.lostTags.size(), verdict.brokenLabels.size());
    fmt::print(
        "{} sketches in the library: {} differ from the index; {} in the trash: {} without "
        "way back; {} leftovers rescued; {} refusals, {} crashes\n",
        verdict.sketches, verdict.wrongInIndex.size(), verdict.inTrash,
        verdict.withoutWayBack.size(), verdict.rescued, verdict.refused.size(), run.crashes);
    for (const int version : verdict.lost) {
        fmt::print("  lost: version {}\n", version);
    }
    for (const int tag : verdict.lostTags) {
        fmt::print("  lost: tag {}\n", tag);
    }
    printList("half-written", verdict.halfWritten);
    printList("broken", verdict.brokenLabels);
    printList("index", verdict.wrongInIndex);
    printList("no way back", verdict.withoutWayBack);
    printList("refused", verdict.refused);
}

int check(int operations, std::uint64_t seed) {
    const test::TemporaryFolder folder;
    void* memory =
        ::mmap(nullptr, sizeof(Shared), PROT_READ | PROT_WRITE, MAP_SHARED | MAP_ANONYMOUS, -1, 0);
    if (memory == MAP_FAILED) {
        return EXIT_FAILURE;
    }
    const Place place{folder / "library",
                      folder / "cache",
                      {folder / "data", ::getuid(), std::time(nullptr)},
                      Journal(folder / "journal"),
                      new (memory) Shared};
    if (!makeLibrary(place.library)) {
        return EXIT_FAILURE;
    }
    putFirstSketches(place);
    const Run run = runWorkers(place, seed, operations);
    const Verdict verdict = judge(place);
    print(run, verdict, place, seed);
    return verdict.isGood() && run.crashes == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}

}  // namespace

}  // namespace matwright::check

int main(int count, char** arguments) {
    if (count != 3) {
        fmt::print("usage: library_kill OPERATIONS SEED\n");
        return EXIT_FAILURE;
    }
    return matwright::check::check(std::atoi(arguments[1]),
                                   std::strtoull(arguments[2], nullptr, 10));
}
