// SPDX-License-Identifier: MIT
#include "app/batch/library_search.h"

#include <fmt/format.h>

#include <ostream>

#include "app/batch/filter_options.h"
#include "app/batch/library_json.h"
#include "app/batch/library_table.h"
#include "core/library/printable.h"

namespace matwright::app {

namespace {

// A sketch that is alone is found by no family's number.
SearchedLibrary aloneInFamily(OpenedLibrary library, const Query& query, std::size_t sketch) {
    const std::string name = shownName(library.holdings->entry(sketch));
    return {std::move(library), query, {}, fmt::format("No other sketch is like \"{}\".", name)};
}

}  // namespace

std::expected<SearchedLibrary, int> searchedLibrary(const SelectionCommand& command,
                                                    BatchPorts& ports) {
    auto library = openLibraryAloud(command.library, ports);
    if (!library) {
        return std::unexpected(library.error());
    }
    Query query = command.query;
    if (!command.familyOf.empty()) {
        const Result<std::size_t> sketch = sketchNamed(*library, command.familyOf);
        if (!sketch) {
            return std::unexpected(fail(ports, InputRefused, sketch.error()));
        }
        query.family = library->holdings->family(*sketch);
        if (query.family == 0) {
            return aloneInFamily(std::move(*library), query, *sketch);
        }
    }
    Found found = search(*library->holdings, query);
    const std::string why = found.indices.empty() ? nothingFoundSentence(*library->holdings, query,
                                                                         found, command.familyOf)
                                                  : "";
    return SearchedLibrary{std::move(*library), std::move(query), std::move(found), why};
}

namespace {

// "without" is what to leave out of the command line.
Json loosenJson(const SearchedLibrary& searched, std::string_view familyOf) {
    if (!searched.found.loosen) {
        return nullptr;
    }
    const Loosening& loosen = *searched.found.loosen;
    return {{"without", typedFilter(searched.query, loosen.filter, familyOf)},
            {"wouldFind", loosen.wouldFind}};
}

Json searchJson(const SearchCommand& command, const SearchedLibrary& searched) {
    const Holdings& holdings = *searched.library.holdings;
    Json sketches = Json::array();
    for (const std::uint32_t index : searched.found.indices) {
        sketches.push_back(json(holdings.entry(index)));
    }
    Json result = {{"library", printablePath(searched.library.folder.native())},
                   {"sketchesInLibrary", holdings.size()},
                   {"sketches", std::move(sketches)},
                   {"loosen", loosenJson(searched, command.familyOf)},
                   {"problems", json(searched.library.problems)}};
    if (command.counts) {
        result["counts"] = countsJson(holdings, searched.found.counts);
    }
    return result;
}

void printSearch(const SearchCommand& command, const SearchedLibrary& searched, BatchPorts& ports) {
    const Holdings& holdings = *searched.library.holdings;
    if (command.counts) {
        ports.out << countsTable(holdings, searched.found.counts);
    } else if (!searched.found.indices.empty()) {
        ports.out << entriesTable(holdings, searched.found.indices)
                  << fmt::format("{} of {} sketches\n", searched.found.indices.size(),
                                 holdings.size());
    }
}

}  // namespace

int runLibrarySearch(const SearchCommand& command, BatchPorts& ports) {
    const auto searched = searchedLibrary(command, ports);
    if (!searched) {
        return searched.error();
    }
    if (command.json) {
        ports.out << textOf(searchJson(command, *searched)) << '\n';
    } else {
        printSearch(command, *searched, ports);
    }
    if (!searched->whyNothing.empty()) {
        complain(ports, {}, searched->whyNothing);
    }
    return searched->found.indices.empty() ? Findings : Done;
}

}  // namespace matwright::app
