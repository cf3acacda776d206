// SPDX-License-Identifier: MIT
#include "tests/checks/library_kill/verdict.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

#include "core/library/index.h"
#include "core/library/label_store.h"
#include "core/library/saving.h"
#include "tests/checks/library_kill/outsider.h"
#include "tests/support/temporary_folder.h"

namespace matwright::check {

namespace {

namespace fs = std::filesystem;

// Versions and what became of them.
struct History {
    std::set<int> present;
    std::multimap<int, int> savedOver;  // version -> made from it
    std::map<int, int> writtenOver;     // version -> what an outsider wrote over it

    // Whether it is there, or what replaced it with good reason is.
    bool isSafe(int version, std::set<int>& seen) const {
        if (present.contains(version)) {
            return true;
        }
        if (!seen.insert(version).second) {
            return false;
        }
        const auto [first, last] = savedOver.equal_range(version);
        const bool isSavedOver =
            std::any_of(first, last, [&](const auto& next) { return isSafe(next.second, seen); });
        const auto over = writtenOver.find(version);
        return isSavedOver || (over != writtenOver.end() && isSafe(over->second, seen));
    }
};

void findPresent(const fs::path& folder, const std::vector<std::string>& names, History& history,
                 Verdict& verdict) {
    for (const std::string& name : names) {
        const auto version = versionOf(test::readFile(folder / name));
        if (version) {
            history.present.insert(*version);
        } else {
            verdict.halfWritten.push_back(name);
        }
    }
}

std::vector<std::string> namesIn(const fs::path& folder) {
    std::vector<std::string> names;
    std::error_code failure;
    for (fs::directory_iterator it(folder, failure), last; !failure && it != last;
         it.increment(failure)) {
        names.push_back(it->path().filename().string());
    }
    return names;
}

void judgeVersions(const std::vector<JournalLine>& journal, const History& history,
                   Verdict& verdict) {
    for (const JournalLine& line : journal) {
        if (line.deed != Deed::DidSave && line.deed != Deed::DidWrite) {
            continue;
        }
        ++verdict.told;
        std::set<int> seen;
        if (history.present.contains(line.version)) {
            ++verdict.present;
        } else if (!history.isSafe(line.version, seen)) {
            verdict.lost.push_back(line.version);
        } else {
            ++(history.writtenOver.contains(line.version) ? verdict.overwritten
                                                          : verdict.superseded);
        }
    }
}

void judgeTags(const Place& place, const std::vector<JournalLine>& journal, Verdict& verdict) {
    const LabelRecords records = readLabelRecords(place.library);
    for (const LibraryProblem& problem : records.problems) {
        verdict.brokenLabels.push_back(problem.text());
    }
    std::set<std::string> tags;
    for (const LabelRecord& record : records.records) {
        tags.insert(record.labels.tags.begin(), record.labels.tags.end());
    }
    for (const JournalLine& line : journal) {
        if (line.deed == Deed::DidTag) {
            ++verdict.tags;
            if (!tags.contains(fmt::format("tag {}", line.version))) {
                verdict.lostTags.push_back(line.version);
            }
        }
    }
}

void judgeIndex(const Place& place, Verdict& verdict) {
    std::map<std::string, ContentKey> onDisk;
    for (const std::string& sketch : sketchesIn(place.library)) {
        onDisk.emplace(sketch, contentKeyOf(test::readFile(place.library / sketch)));
    }
    std::vector<KeyedSketch> keyed;
    for (const auto& [sketch, content] : onDisk) {
        keyed.push_back({sketch, content});
    }
    const auto labels = labelsFor(keyed, readLabelRecords(place.library).records);
    LibraryIndex index(place.library, place.cache);
    const IndexUpdate update = index.update();
    for (std::size_t i = 0; i < keyed.size(); ++i) {
        const auto entry = update.holdings->indexOf(keyed[i].path);
        if (!entry || update.holdings->content(*entry) != keyed[i].content ||
            update.holdings->entry(*entry).labels != labels[i]) {
            verdict.wrongInIndex.push_back(keyed[i].path);
        }
    }
    if (update.holdings->size() != keyed.size()) {
        verdict.wrongInIndex.push_back(
            fmt::format("{} sketches instead of {}", update.holdings->size(), keyed.size()));
    }
}

void judgeTrash(const Place& place, History& history, Verdict& verdict) {
    const fs::path trash = place.trash.dataHome / "Trash";
    const auto names = namesIn(trash / "files");
    findPresent(trash / "files", names, history, verdict);
    verdict.inTrash = static_cast<int>(names.size());
    for (const std::string& name : names) {
        if (!fs::exists(trash / "info" / (name + ".trashinfo"))) {
            verdict.withoutWayBack.push_back(name);
        }
    }
}

}  // namespace

Verdict judge(const Place& place) {
    Verdict verdict;
    const auto journal = place.journal.read();
    History history;
    std::set<int> tookNoPlace;
    for (const JournalLine& line : journal) {
        if (line.deed == Deed::DidSave && line.other == 1) {
            tookNoPlace.insert(line.version);
        }
    }
    const auto rescued = rescueLeftovers(place.library);
    verdict.rescued = rescued ? static_cast<int>(rescued->size()) : 0;
    const auto sketches = sketchesIn(place.library);
    verdict.sketches = static_cast<int>(sketches.size());
    findPresent(place.library, sketches, history, verdict);
    judgeTrash(place, history, verdict);
    for (const JournalLine& line : journal) {
        if (line.deed == Deed::TrySave && !tookNoPlace.contains(line.version)) {
            history.savedOver.emplace(line.other, line.version);
        } else if (line.deed == Deed::DidWrite && line.other != 0) {
            history.writtenOver.emplace(line.other, line.version);
        } else if (line.deed == Deed::KeptBoth) {
            ++verdict.keptBoth;
        } else if (line.deed == Deed::Failed) {
            verdict.refused.push_back(line.sentence);
        }
    }
    for (const auto& [version, over] : interruptedWrites(place.library)) {
        history.writtenOver.emplace(over, version);
    }
    judgeVersions(journal, history, verdict);
    judgeTags(place, journal, verdict);
    judgeIndex(place, verdict);
    return verdict;
}

}  // namespace matwright::check
