// SPDX-License-Identifier: MIT
#include "core/library/search.h"

#include <gtest/gtest.h>

#include "tests/core/library/plain_search.h"
#include "tests/support/generated_library.h"

namespace matwright {
namespace {

constexpr Length in(std::int64_t whole) {
    return Length::inches(whole);
}

LibraryEntry named(const std::string& path, const std::string& name = "") {
    LibraryEntry entry;
    entry.path = path + ".sketch.svg";
    entry.facts.name = name;
    entry.facts.pageSize = {in(12), in(12)};
    return entry;
}

std::vector<std::string> pathsFound(const std::vector<LibraryEntry>& entries, const Query& query) {
    const auto holdings = Holdings::of(entries);
    std::vector<std::string> paths;
    for (const std::uint32_t index : search(*holdings, query).indices) {
        const std::string_view path = holdings->path(index);
        paths.emplace_back(path.substr(0, path.size() - std::string_view(".sketch.svg").size()));
    }
    return paths;
}

std::vector<std::string> pathsWith(const std::vector<LibraryEntry>& entries,
                                   const std::string& words, WordMatch match = WordMatch::Part) {
    Query query;
    query.words = words;
    query.wordMatch = match;
    return pathsFound(entries, query);
}

using Paths = std::vector<std::string>;

TEST(Search, OfAnEmptyLibraryFindsNothingAndCountsNothing) {
    const auto holdings = Holdings::of({});
    const Found found = search(*holdings, {});
    EXPECT_TRUE(found.indices.empty());
    EXPECT_FALSE(found.loosen);
    FilterCounts none;
    none.photosExactly = {0};
    none.photosAtMost = {0};
    EXPECT_EQ(found.counts, none);
    Query query;
    query.words = "beach";
    query.photos = {3, true};
    query.tags = {"zoo"};
    query.folder = "travel";
    EXPECT_EQ(search(*holdings, query).counts, none);
}

TEST(Search, FindsWordsInEveryTextOfASketch) {
    LibraryEntry entry = named("summer by the sea/rocky-shore", "Beach day");
    entry.facts.note = "Ribbon along\nthe strip";
    entry.labels.note = "for Emma's page";
    entry.labels.tags = {"three photos"};
    const std::vector<LibraryEntry> entries{entry, named("other", "Garden")};
    for (const char* words : {"beach", "ribbon", "strip", "emma", "three", "shore", "summer",
                              "photos beach sea", "BEACH, day!"}) {
        EXPECT_EQ(pathsWith(entries, words), Paths{"summer by the sea/rocky-shore"}) << words;
    }
    EXPECT_EQ(pathsWith(entries, "beach garden"), Paths());
    EXPECT_EQ(pathsWith(entries, "svg"), Paths());
    EXPECT_EQ(pathsWith(entries, "daynot"), Paths());
}

TEST(Search, PartsOfWordsAreFoundUnlessWholeWordsAreAskedFor) {
    const std::vector<LibraryEntry> entries{named("a", "Overseas"), named("b", "Sea"),
                                            named("c", "Search")};
    EXPECT_EQ(pathsWith(entries, "sea"), (Paths{"a", "b", "c"}));
    EXPECT_EQ(pathsWith(entries, "sea", WordMatch::Whole), Paths{"b"});
    EXPECT_EQ(pathsWith(entries, "overs"), Paths{"a"});
    EXPECT_EQ(pathsWith(entries, "seab", WordMatch::Whole), Paths());
}

TEST(Search, NeitherCaseNorAccentsCount) {
    const std::vector<LibraryEntry> entries{named("a", "Café"), named("b", "Große Reise"),
                                            named("c", "ДЕНЬ")};
    EXPECT_EQ(pathsWith(entries, "CAFE"), Paths{"a"});
    EXPECT_EQ(pathsWith(entries, "cafe\u0301"), Paths{"a"});
    EXPECT_EQ(pathsWith(entries, "grosse"), Paths{"b"});
    EXPECT_EQ(pathsWith(entries, "день"), Paths{"c"});
}

TEST(Search, WordsWithoutLettersOrDigitsFindEverything) {
    const std::vector<LibraryEntry> entries{named("a"), named("b")};
    EXPECT_EQ(pathsWith(entries, " ,.! "), (Paths{"a", "b"}));
    Query query;
    query.words = " ,.! ";
    EXPECT_FALSE(uses(query, Filter::Words));
}

TEST(Search, APhotoCountIsExactOrUpTo) {
    std::vector<LibraryEntry> entries{named("a"), named("b"), named("c"), named("d")};
    const int photos[] = {0, 2, 3, 150};
    for (std::size_t i = 0; i < entries.size(); ++i) {
        entries[i].facts.photos = entries[i].facts.squarePhotos = photos[i];
    }
    const auto with = [&](int count, bool orFewer) {
        Query query;
        query.photos = {count, orFewer};
        return pathsFound(entries, query);
    };
    EXPECT_EQ(with(2, false), Paths{"b"});
    EXPECT_EQ(with(1, false), Paths());
    EXPECT_EQ(with(2, true), (Paths{"a", "b"}));
    EXPECT_EQ(with(0, true), Paths{"a"});
    EXPECT_EQ(with(99, true), (Paths{"a", "b", "c"}));
    EXPECT_EQ(with(100, false), Paths{"d"});
    EXPECT_EQ(with(1'000, true), (Paths{"a", "b", "c", "d"}));
}

TEST(Search, EveryPrintMustBeUsedEitherWayUpAndAnyPageSizeWillDo) {
    std::vector<LibraryEntry> entries{named("a"), named("b"), named("c")};
    const PrintNeed small{{in(3), in(4)}, 2};
    const PrintNeed large{{in(4), in(6)}, 1};
    entries[0].facts.prints = {small};
    entries[1].facts.prints = {small, large};
    entries[2].facts.prints = {large};
    entries[0].facts.pageSize = {in(8), in(8)};
    entries[2].facts.pageSize = {in(6), in(8)};
    Query query;
    query.prints = {{in(4), in(3)}};
    EXPECT_EQ(pathsFound(entries, query), (Paths{"a", "b"}));
    query.prints.push_back({in(4), in(6)});
    EXPECT_EQ(pathsFound(entries, query), Paths{"b"});
    query.prints.push_back({in(5), in(7)});
    EXPECT_EQ(pathsFound(entries, query), Paths());
    query.prints.clear();
    query.pageSizes = {{in(8), in(8)}, {in(6), in(8)}};
    EXPECT_EQ(pathsFound(entries, query), (Paths{"a", "c"}));
    query.pageSizes = {{in(8), in(6)}};
    EXPECT_EQ(pathsFound(entries, query), Paths());
}

TEST(Search, AFolderHasWhatIsBelowItAndNoNamesake) {
    const std::vector<LibraryEntry> entries{named("a"), named("trip/b"), named("trip/day/c"),
                                            named("trips/d")};
    Query query;
    query.folder = "trip";
    EXPECT_EQ(pathsFound(entries, query), (Paths{"trip/b", "trip/day/c"}));
    query.folder = "trip/day";
    EXPECT_EQ(pathsFound(entries, query), Paths{"trip/day/c"});
    query.folder = "tri";
    EXPECT_EQ(pathsFound(entries, query), Paths());
}

TEST(Search, OrdersPutTheLatestOrMostFirstAndEqualsByName) {
    std::vector<LibraryEntry> entries{named("a"), named("b"), named("c"), named("d")};
    entries[1].labels.lastUsed = Timestamp(std::chrono::seconds(5));
    entries[3].labels.lastUsed = Timestamp(std::chrono::seconds(-5));
    entries[2].labels.useCount = entries[3].labels.useCount = 4;
    entries[0].modifiedNanoseconds = -1;
    entries[2].modifiedNanoseconds = 1;
    const auto ordered = [&](SearchOrder order) {
        Query query;
        query.order = order;
        return pathsFound(entries, query);
    };
    EXPECT_EQ(ordered(SearchOrder::Name), (Paths{"a", "b", "c", "d"}));
    EXPECT_EQ(ordered(SearchOrder::LastUsed), (Paths{"b", "d", "a", "c"}));
    EXPECT_EQ(ordered(SearchOrder::MostUsed), (Paths{"c", "d", "a", "b"}));
    EXPECT_EQ(ordered(SearchOrder::Newest), (Paths{"c", "b", "d", "a"}));
}

TEST(Search, AnEmptyResultNamesTheFilterThatHoldsBackMost) {
    std::vector<LibraryEntry> entries{named("a", "Beach"), named("b", "Beach"), named("c", "Lake")};
    entries[2].labels.favourite = true;
    Query query;
    query.words = "beach";
    query.favourites = true;
    const Found found = search(*Holdings::of(entries), query);
    EXPECT_TRUE(found.indices.empty());
    EXPECT_EQ(found.loosen, (Loosening{Filter::Favourites, 2}));
    query.roomForTitle = true;
    EXPECT_FALSE(search(*Holdings::of(entries), query).loosen) << "no single filter helps";
}

TEST(Search, WithoutAFilterNothingOfItIsLeft) {
    Query query;
    query.words = "a";
    query.photos = {1, false};
    query.prints = {{in(4), in(6)}};
    query.pageSizes = {{in(12), in(12)}};
    query.doublePage = false;
    query.photoWay = PhotoWay::OnlyLying;
    query.roomForTitle = query.roomForJournaling = query.favourites = true;
    query.tags = {"zoo"};
    query.folder = "f";
    query.family = 1;
    for (const Filter filter : allFilters) {
        EXPECT_TRUE(uses(query, filter));
        EXPECT_FALSE(uses(without(query, filter), filter));
        query = without(query, filter);
    }
    EXPECT_EQ(query, Query());
}

// Every filter is on in about one query of four.
Query randomQuery(test::Random& random, const Holdings& holdings) {
    const auto often = [&] { return test::below(random, 4) == 0; };
    const auto oneOf = [&](const auto& list) { return list[test::below(random, list.size())]; };
    Query query;
    if (often()) {
        const std::vector<std::string> words{"beach",  "ea", "garden with", "1", "zoo",
                                             "travel", "o"};
        query.words = oneOf(words);
        query.wordMatch = often() ? WordMatch::Whole : WordMatch::Part;
    }
    if (often()) {
        query.photos = {static_cast<int>(test::below(random, 10)), often()};
    }
    if (often()) {
        query.prints = {oneOf(holdings.printSizes()), oneOf(holdings.printSizes())};
    }
    if (often()) {
        query.pageSizes = {oneOf(holdings.pageSizes()), oneOf(holdings.pageSizes())};
    }
    if (often()) {
        query.doublePage = often();
    }
    if (often()) {
        query.photoWay = allPhotoWays[test::below(random, 4)];
    }
    query.roomForTitle = often();
    query.roomForJournaling = often();
    query.favourites = often();
    if (often()) {
        query.tags = {oneOf(holdings.tags())};
    }
    if (often()) {
        query.folder = oneOf(holdings.folders());
    }
    query.family = often() ? static_cast<int>(1 + test::below(random, 5)) : 0;
    query.order = static_cast<SearchOrder>(test::below(random, 4));
    return query;
}

TEST(SearchLaw, FindsOrdersAndCountsAsALookAtEveryEntryDoes) {
    constexpr std::uint64_t seed = 77;
    std::vector<LibraryEntry> entries = test::generatedEntries(seed, 150);
    for (std::size_t i = 0; i < entries.size(); ++i) {
        entries[i].family = static_cast<int>(i % 9);
    }
    const auto holdings = Holdings::of(entries);
    for (std::size_t i = 0; i < entries.size(); ++i) {
        entries[i] = holdings->entry(i);
    }
    test::Random random(seed);
    int found = 0;
    for (int run = 0; run < 120; ++run) {
        const Query query = randomQuery(random, *holdings);
        const Found result = search(*holdings, query);
        EXPECT_EQ(result.indices, test::plainSearch(entries, query)) << "run " << run;
        EXPECT_EQ(result.counts, test::plainCounts(*holdings, entries, query)) << "run " << run;
        found += result.indices.empty() ? 0 : 1;
        for (const Filter filter : allFilters) {
            const std::size_t left = test::plainSearch(entries, without(query, filter)).size();
            if (result.indices.empty() && uses(query, filter) && left > 0) {
                ASSERT_TRUE(result.loosen) << "run " << run;
                EXPECT_GE(result.loosen->wouldFind, left) << "run " << run;
            }
        }
        if (result.loosen) {
            EXPECT_EQ(test::plainSearch(entries, without(query, result.loosen->filter)).size(),
                      result.loosen->wouldFind);
        }
    }
    EXPECT_GT(found, 30) << "the queries find too little to mean anything";
}

}  // namespace
}  // namespace matwright
