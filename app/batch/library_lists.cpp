// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>
#include <ostream>

#include "app/batch/library_json.h"
#include "app/batch/library_table.h"
#include "core/library/printable.h"

namespace matwright::app {

namespace {

// In the order of their first sketches.
std::vector<std::vector<std::size_t>> familiesIn(const Holdings& holdings) {
    std::vector<std::vector<std::size_t>> families;
    for (std::size_t index = 0; index < holdings.size(); ++index) {
        const std::vector<std::size_t> members = holdings.membersOf(holdings.family(index));
        if (!members.empty() && members.front() == index) {
            families.push_back(members);
        }
    }
    return families;
}

Json familiesJson(const OpenedLibrary& library,
                  const std::vector<std::vector<std::size_t>>& families) {
    Json list = Json::array();
    for (const std::vector<std::size_t>& members : families) {
        Json sketches = Json::array();
        for (const std::size_t member : members) {
            sketches.push_back(json(library.holdings->entry(member)));
        }
        list.push_back({{"sketches", std::move(sketches)}});
    }
    return {{"library", printablePath(library.folder.native())},
            {"sketchesInLibrary", library.holdings->size()},
            {"families", std::move(list)},
            {"problems", json(library.problems)}};
}

}  // namespace

int runLibraryFamilies(const LibraryListCommand& command, BatchPorts& ports) {
    const auto library = openLibraryAloud(command.library, ports);
    if (!library) {
        return library.error();
    }
    const auto families = familiesIn(*library->holdings);
    if (command.json) {
        ports.out << textOf(familiesJson(*library, families)) << '\n';
    } else if (!families.empty()) {
        ports.out << familiesTable(*library->holdings, families);
    }
    if (families.empty()) {
        complain(ports, {}, "No two sketches of this library are alike.");
        return Findings;
    }
    return Done;
}

int runLibraryProblems(const LibraryListCommand& command, BatchPorts& ports) {
    const auto library = openLibrary(command.library, ports);
    if (!library) {
        return library.error();
    }
    if (command.json) {
        ports.out << textOf({{"library", printablePath(library->folder.native())},
                             {"sketchesInLibrary", library->holdings->size()},
                             {"problems", json(library->problems)}})
                  << '\n';
    } else if (library->problems.empty()) {
        ports.out << "Nothing to mend.\n";
    } else {
        for (const LibraryProblem& problem : library->problems) {
            ports.out << problem.text() << '\n';
        }
    }
    return library->problems.empty() ? Done : Findings;
}

}  // namespace matwright::app
