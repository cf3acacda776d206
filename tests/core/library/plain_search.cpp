// SPDX-License-Identifier: MIT
#include "tests/core/library/plain_search.h"

#include <algorithm>
#include <cctype>
#include <sstream>
#include <string>

namespace matwright::test {

namespace {

template <typename Value>
bool contains(const std::vector<Value>& list, const Value& value) {
    return std::ranges::find(list, value) != list.end();
}

std::vector<std::string> asciiWords(std::string text) {
    std::ranges::transform(text, text.begin(), [](unsigned char c) {
        return static_cast<char>(c < 0x80 && std::isalnum(c) == 0 ? ' ' : std::tolower(c));
    });
    std::istringstream stream(text);
    std::vector<std::string> words;
    for (std::string word; stream >> word;) {
        words.push_back(word);
    }
    return words;
}

std::vector<std::string> wordsOf(const LibraryEntry& entry) {
    std::string text = entry.path.substr(0, entry.path.size() - 11);
    for (const std::string& more : {entry.facts.name, entry.facts.note, entry.labels.note}) {
        text += ' ' + more;
    }
    for (const std::string& tag : entry.labels.tags) {
        text += ' ' + tag;
    }
    return asciiWords(text);
}

bool passesWords(const LibraryEntry& entry, const Query& query) {
    const std::vector<std::string> words = wordsOf(entry);
    return std::ranges::all_of(asciiWords(query.words), [&](const std::string& sought) {
        return std::ranges::any_of(words, [&](const std::string& word) {
            return query.wordMatch == WordMatch::Part ? word.contains(sought) : word == sought;
        });
    });
}

bool passesWay(const SketchFacts& facts, PhotoWay way) {
    switch (way) {
        case PhotoWay::SomeUpright:
            return facts.uprightPhotos > 0;
        case PhotoWay::SomeLying:
            return facts.lyingPhotos > 0;
        case PhotoWay::OnlyUpright:
            return facts.uprightPhotos > 0 && facts.lyingPhotos == 0;
        case PhotoWay::OnlyLying:
            return facts.lyingPhotos > 0 && facts.uprightPhotos == 0;
    }
    return false;
}

bool passesPhotos(const SketchFacts& facts, const Query& query) {
    if (query.photos && (query.photos->orFewer ? facts.photos > query.photos->count
                                               : facts.photos != query.photos->count)) {
        return false;
    }
    const bool hasPrints = std::ranges::all_of(query.prints, [&](Size size) {
        return std::ranges::any_of(facts.prints, [&](const PrintNeed& need) {
            return need.size == size || need.size == size.turned();
        });
    });
    return hasPrints && (!query.photoWay || passesWay(facts, *query.photoWay));
}

bool passesPage(const SketchFacts& facts, const Query& query) {
    return (query.pageSizes.empty() || contains(query.pageSizes, facts.pageSize)) &&
           (!query.doublePage || *query.doublePage == facts.doublePage) &&
           (!query.roomForTitle || facts.titles > 0) &&
           (!query.roomForJournaling || facts.journalings > 0);
}

bool passesLabels(const LibraryEntry& entry, const Query& query) {
    return (!query.favourites || entry.labels.favourite) &&
           std::ranges::all_of(
               query.tags,
               [&](const std::string& tag) { return contains(entry.labels.tags, tag); }) &&
           (query.folder.empty() || entry.path.starts_with(query.folder + "/")) &&
           (query.family == 0 || entry.family == query.family);
}

template <typename Set>
std::uint32_t countWith(const std::vector<LibraryEntry>& entries, Query query, Set set) {
    set(query);
    return static_cast<std::uint32_t>(plainSearch(entries, query).size());
}

}  // namespace

bool passes(const LibraryEntry& entry, const Query& query) {
    return passesPhotos(entry.facts, query) && passesPage(entry.facts, query) &&
           passesLabels(entry, query) && passesWords(entry, query);
}

std::vector<std::uint32_t> plainSearch(const std::vector<LibraryEntry>& entries,
                                       const Query& query) {
    std::vector<std::uint32_t> indices;
    for (std::uint32_t i = 0; i < entries.size(); ++i) {
        if (passes(entries[i], query)) {
            indices.push_back(i);
        }
    }
    const auto latestFirst = [&](auto keyOf) {
        std::ranges::stable_sort(indices, [&](std::uint32_t a, std::uint32_t b) {
            return keyOf(entries[a]) > keyOf(entries[b]);
        });
    };
    if (query.order == SearchOrder::LastUsed) {
        latestFirst([](const LibraryEntry& entry) { return entry.labels.lastUsed; });
    } else if (query.order == SearchOrder::MostUsed) {
        latestFirst([](const LibraryEntry& entry) { return entry.labels.useCount; });
    } else if (query.order == SearchOrder::Newest) {
        latestFirst([](const LibraryEntry& entry) { return entry.modifiedNanoseconds; });
    }
    return indices;
}

FilterCounts plainCounts(const Holdings& holdings, const std::vector<LibraryEntry>& entries,
                         const Query& query) {
    const auto with = [&](auto set) { return countWith(entries, query, set); };
    FilterCounts counts;
    for (int n = 0; n <= holdings.mostPhotos(); ++n) {
        counts.photosExactly.push_back(with([&](Query& q) { q.photos = {n, false}; }));
        counts.photosAtMost.push_back(with([&](Query& q) { q.photos = {n, true}; }));
    }
    for (const Size size : holdings.printSizes()) {
        counts.prints.push_back(with([&](Query& q) { q.prints.push_back(size); }));
    }
    for (const Size size : holdings.pageSizes()) {
        counts.pageSizes.push_back(with([&](Query& q) { q.pageSizes = {size}; }));
    }
    counts.singlePages = with([](Query& q) { q.doublePage = false; });
    counts.doublePages = with([](Query& q) { q.doublePage = true; });
    for (const PhotoWay way : allPhotoWays) {
        counts.photoWays[static_cast<int>(way)] = with([&](Query& q) { q.photoWay = way; });
    }
    counts.roomForTitle = with([](Query& q) { q.roomForTitle = true; });
    counts.roomForJournaling = with([](Query& q) { q.roomForJournaling = true; });
    counts.favourites = with([](Query& q) { q.favourites = true; });
    for (const std::string& tag : holdings.tags()) {
        counts.tags.push_back(with([&](Query& q) { q.tags.push_back(tag); }));
    }
    for (const std::string& folder : holdings.folders()) {
        counts.folders.push_back(with([&](Query& q) { q.folder = folder; }));
    }
    counts.wholeLibrary = with([](Query& q) { q.folder.clear(); });
    return counts;
}

}  // namespace matwright::test
