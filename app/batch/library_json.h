// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "app/batch/json_values.h"
#include "app/batch/open_library.h"
#include "core/library/search.h"

namespace matwright::app {

// A library for scripts; values as in json.h. A sketch is
//   {"name", "path", "page": {"size", "doublePage"},
//    "photos": {"all", "upright", "lying", "square"}, "prints": [{"size", "count"}, …],
//    "titles", "journalings", "note", "tags": […], "favourite", "ownNote", "uses", "lastUsed",
//    "family", "content", "bytes", "changed"}
// "path" is below the library with '/' between folders; where it is no UTF-8 it is the printable
// form that the tables show, which names the sketch to every command of the program as well.
// Prints are short side first and go from small to large. "note" is the sketch's own and "ownNote"
// the person's. "lastUsed" is null where it never was. Moments are UTC, "2026-05-03T17:20:00Z".
// "family" numbers hold for this answer only; 0 is in no family with another.
Json json(const LibraryEntry& entry);

// {"path", "sentence"}; an empty path is the library itself.
Json json(const LibraryProblem& problem);
Json json(const std::vector<LibraryProblem>& problems);

// What each choice would leave, choices that would leave nothing included:
// {"photos": [{"photos", "exactly", "atMost"}, …], "prints": [{"size", "sketches"}, …],
//  "pages": [{"size", "sketches"}, …], "singlePage", "doublePage", "someUpright", "someLying",
//  "onlyUpright", "onlyLying", "roomForTitle", "roomForJournaling", "favourites",
//  "tags": [{"tag", "sketches"}, …], "folders": [{"folder", "sketches"}, …], "wholeLibrary"}
Json countsJson(const Holdings& holdings, const FilterCounts& counts);

}  // namespace matwright::app
