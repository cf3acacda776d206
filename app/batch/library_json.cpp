// SPDX-License-Identifier: MIT
#include "app/batch/library_json.h"

#include <fmt/chrono.h>
#include <fmt/format.h>

#include "core/library/printable.h"
#include "core/sketch/soundness.h"

namespace matwright::app {

namespace {

// The system's own bytes where JSON has a place for them.
std::string pathForJson(std::string_view path) {
    return isValidText(path, false) ? std::string(path) : printablePath(path);
}

std::string momentText(Timestamp moment) {
    return fmt::format("{:%Y-%m-%dT%H:%M:%S}Z",
                       fmt::gmtime(static_cast<std::time_t>(moment.time_since_epoch().count())));
}

Json printsJson(const std::vector<PrintNeed>& prints) {
    Json list = Json::array();
    for (const PrintNeed& need : prints) {
        list.push_back({{"size", json(need.size)}, {"count", need.count}});
    }
    return list;
}

void addLabels(Json& to, const Labels& labels) {
    to["tags"] = labels.tags;
    to["favourite"] = labels.favourite;
    to["ownNote"] = labels.note;
    to["uses"] = labels.useCount;
    to["lastUsed"] = labels.lastUsed ? Json(momentText(*labels.lastUsed)) : Json(nullptr);
}

}  // namespace

Json json(const LibraryEntry& entry) {
    const SketchFacts& facts = entry.facts;
    Json result = {{"name", shownName(entry)},
                   {"path", pathForJson(entry.path)},
                   {"page", {{"size", json(facts.pageSize)}, {"doublePage", facts.doublePage}}},
                   {"photos",
                    {{"all", facts.photos},
                     {"upright", facts.uprightPhotos},
                     {"lying", facts.lyingPhotos},
                     {"square", facts.squarePhotos}}},
                   {"prints", printsJson(facts.prints)},
                   {"titles", facts.titles},
                   {"journalings", facts.journalings},
                   {"note", facts.note}};
    addLabels(result, entry.labels);
    result["family"] = entry.family;
    result["content"] = entry.content.text();
    result["bytes"] = entry.size;
    result["changed"] = momentText(
        std::chrono::floor<std::chrono::seconds>(std::chrono::sys_time<std::chrono::nanoseconds>(
            std::chrono::nanoseconds(entry.modifiedNanoseconds))));
    return result;
}

Json json(const LibraryProblem& problem) {
    return {{"path", pathForJson(problem.path)}, {"sentence", problem.sentence}};
}

Json json(const std::vector<LibraryProblem>& problems) {
    Json list = Json::array();
    for (const LibraryProblem& problem : problems) {
        list.push_back(json(problem));
    }
    return list;
}

namespace {

template <typename Values, typename Value>
Json choicesJson(const char* name, const Values& values, const std::vector<std::uint32_t>& counts,
                 const Value& value) {
    Json list = Json::array();
    for (std::size_t i = 0; i < counts.size(); ++i) {
        list.push_back({{name, value(values[i])}, {"sketches", counts[i]}});
    }
    return list;
}

Json photoCountsJson(const FilterCounts& counts) {
    Json list = Json::array();
    for (std::size_t i = 0; i < counts.photosExactly.size(); ++i) {
        list.push_back({{"photos", i},
                        {"exactly", counts.photosExactly[i]},
                        {"atMost", counts.photosAtMost[i]}});
    }
    return list;
}

}  // namespace

Json countsJson(const Holdings& holdings, const FilterCounts& counts) {
    const auto sizeJson = [](Size size) { return json(size); };
    return {{"photos", photoCountsJson(counts)},
            {"prints", choicesJson("size", holdings.printSizes(), counts.prints, sizeJson)},
            {"pages", choicesJson("size", holdings.pageSizes(), counts.pageSizes, sizeJson)},
            {"singlePage", counts.singlePages},
            {"doublePage", counts.doublePages},
            {"someUpright", counts.photoWays[0]},
            {"someLying", counts.photoWays[1]},
            {"onlyUpright", counts.photoWays[2]},
            {"onlyLying", counts.photoWays[3]},
            {"roomForTitle", counts.roomForTitle},
            {"roomForJournaling", counts.roomForJournaling},
            {"favourites", counts.favourites},
            {"tags", choicesJson("tag", holdings.tags(), counts.tags,
                                 [](const std::string& tag) { return tag; })},
            {"folders", choicesJson("folder", holdings.folders(), counts.folders, pathForJson)},
            {"wholeLibrary", counts.wholeLibrary}};
}

}  // namespace matwright::app
