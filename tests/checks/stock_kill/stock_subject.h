// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "tests/support/random_sketch.h"

namespace matwright::test {

// A program that changes one store, one change after the other. Its stock has a name of its own, so
// that two of them in one store can be told apart.
class StockWorker {
  public:
    virtual ~StockWorker() = default;
    StockWorker() = default;
    StockWorker(const StockWorker&) = delete;
    StockWorker& operator=(const StockWorker&) = delete;
    StockWorker(StockWorker&&) = delete;
    StockWorker& operator=(StockWorker&&) = delete;

    // What the store holds of this worker's, read anew, in words that are equal only for an equal
    // stock; empty where it cannot be read.
    virtual std::string state() = 0;

    // The next change: what the state will be when it is made, worked out without the store, and
    // what makes it. Alone in the store it may also take changes back and bring them back.
    struct Change {
        std::string after;
        std::function<bool()> make;
    };
    virtual Change next(Random& random, bool isAlone) = 0;
};

// A store that can be put under the test. To add one: a class like this, and a line in main().
class StockSubject {
  public:
    virtual ~StockSubject() = default;
    StockSubject() = default;
    StockSubject(const StockSubject&) = delete;
    StockSubject& operator=(const StockSubject&) = delete;
    StockSubject(StockSubject&&) = delete;
    StockSubject& operator=(StockSubject&&) = delete;

    virtual std::string name() const = 0;
    // Nothing where the store cannot be opened: that is a fault.
    virtual std::unique_ptr<StockWorker> worker(const std::filesystem::path& folder,
                                                int number) = 0;
    // At the end, with everything quiet: what else has to hold. Sentences; empty is good.
    virtual std::vector<std::string> faultsAtTheEnd(const std::filesystem::path& folder) = 0;
};

std::unique_ptr<StockSubject> papersSubject();

struct KillTally {
    int kills = 0;
    int changes = 0;  // told to be made
    int between = 0;  // kills while a change was under way
    int kept = 0;     // of these: it was made all the same
    std::vector<std::string> faults;
};

// Kills that many times: in every other round one worker alone, else two at once. After each the
// store must hold what the worker told it had done, or that and the change it had begun.
KillTally killRounds(StockSubject& subject, const std::filesystem::path& folder, int kills,
                     std::uint64_t seed);

}  // namespace matwright::test
