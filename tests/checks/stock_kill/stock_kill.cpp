// SPDX-License-Identifier: MIT
#include <cstdlib>
#include <iostream>

#include "tests/checks/stock_kill/stock_subject.h"
#include "tests/support/temporary_folder.h"

namespace matwright::test {
namespace {

// Whether the moments of the kills were spread over the changes; otherwise nothing was shown.
bool isTelling(const KillTally& tally) {
    // Of few kills the share is chance.
    const int least = tally.kills < 200 ? 0 : tally.kills / 10;
    return tally.between > least && tally.changes > tally.kills;
}

bool runOn(StockSubject& subject, int kills, std::uint64_t seed) {
    const TemporaryFolder folder;
    const KillTally tally = killRounds(subject, folder.path(), kills, seed);
    std::cout << subject.name() << ": " << tally.kills << " kills at random moments, seed " << seed
              << ": " << tally.changes << " changes told as made, " << tally.between
              << " kills came during a change (" << tally.kept << " of these were kept whole), "
              << tally.faults.size() << " times something was lost or counted twice\n";
    for (const std::string& fault : tally.faults) {
        std::cout << "  " << fault << "\n";
    }
    if (!isTelling(tally)) {
        std::cout << "  too few kills came during a change\n";
    }
    return tally.faults.empty() && isTelling(tally);
}

}  // namespace
}  // namespace matwright::test

// stock_kill KILLS SEED
int main(int argc, char** argv) {
    using namespace matwright::test;
    const int kills = argc > 1 ? std::atoi(argv[1]) : 40;
    const std::uint64_t seed = argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 7;
    bool good = true;
    for (const auto& subject : {papersSubject(), printsSubject()}) {
        good = runOn(*subject, kills, seed) && good;
    }
    return good ? EXIT_SUCCESS : EXIT_FAILURE;
}
