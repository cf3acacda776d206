// SPDX-License-Identifier: MIT
#include "core/library/holdings.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <thread>

#include "core/library/search.h"
#include "tests/support/generated_library.h"

namespace matwright {
namespace {

LibraryEntry at(const std::string& path, const std::string& name = "") {
    LibraryEntry entry;
    entry.path = path;
    entry.facts.name = name;
    return entry;
}

TEST(Holdings, GiveBackEveryEntryAsItWas) {
    constexpr std::uint64_t seed = 5;
    std::vector<LibraryEntry> entries = test::generatedEntries(seed, 300);
    entries[7].path = "odd\nname \xff.sketch.svg";
    entries[8].facts.note = std::string(10'000, 'n');
    entries[9].modifiedNanoseconds = -1;
    entries[10].labels.lastUsed = Timestamp(std::chrono::seconds(-1'000'000));
    entries[11].family = 3;
    entries[12].labels = Labels();
    entries[12].facts = SketchFacts();
    const auto holdings = Holdings::of(entries);
    ASSERT_EQ(holdings->size(), entries.size());
    for (const LibraryEntry& entry : entries) {
        const auto index = holdings->indexOf(entry.path);
        ASSERT_TRUE(index) << entry.path;
        EXPECT_EQ(holdings->entry(*index), entry);
        EXPECT_EQ(holdings->path(*index), entry.path);
        EXPECT_EQ(holdings->content(*index), entry.content);
        EXPECT_EQ(holdings->family(*index), entry.family);
    }
    EXPECT_FALSE(holdings->indexOf("not there"));
    EXPECT_FALSE(Holdings::of({})->indexOf(""));
}

TEST(Holdings, AreInTheOrderOfTheirNames) {
    const std::vector<LibraryEntry> entries{
        at("z.sketch.svg", "Page 10"), at("y.sketch.svg", "page 9"),  at("x.sketch.svg", "Äpfel"),
        at("w.sketch.svg", "Banana"),  at("b/Page 9.sketch.svg"),     at("a/page 9.sketch.svg"),
        at("v.sketch.svg", "apfel"),   at("apfelmus.sketch.svg", ""),
    };
    const auto holdings = Holdings::of(entries);
    std::vector<std::string> paths;
    for (std::size_t i = 0; i < holdings->size(); ++i) {
        paths.emplace_back(holdings->path(i));
    }
    const std::vector<std::string> expected{
        "v.sketch.svg",        "x.sketch.svg",        "apfelmus.sketch.svg", "w.sketch.svg",
        "a/page 9.sketch.svg", "b/Page 9.sketch.svg", "y.sketch.svg",        "z.sketch.svg"};
    EXPECT_EQ(paths, expected);
}

TEST(Holdings, DoNotDependOnTheOrderTheyAreMadeFrom) {
    std::vector<LibraryEntry> entries = test::generatedEntries(3, 100);
    const auto one = Holdings::of(entries);
    std::ranges::reverse(entries);
    const auto other = Holdings::of(entries);
    for (std::size_t i = 0; i < entries.size(); ++i) {
        EXPECT_EQ(one->entry(i), other->entry(i));
    }
    EXPECT_EQ(one->tags(), other->tags());
    EXPECT_EQ(one->folders(), other->folders());
    EXPECT_EQ(one->printSizes(), other->printSizes());
}

TEST(Holdings, NameASketchByItsFileWhereItHasNoName) {
    EXPECT_EQ(shownName(at("a/b.sketch.svg", "Name")), "Name");
    EXPECT_EQ(shownName(at("a/b.sketch.svg")), "b");
    EXPECT_EQ(shownName(at("b\n.sketch.svg")), "b\\x0a");
    EXPECT_EQ(shownName(at("Name (2).sketch.svg", "Name")), "Name (2)");
    EXPECT_EQ(folderOf("a/b/c.svg"), "a/b");
    EXPECT_EQ(folderOf("c.svg"), "");
}

TEST(Holdings, ListWhatStandsInThemOnce) {
    std::vector<LibraryEntry> entries{at("a/b/1.sketch.svg"), at("a/2.sketch.svg"),
                                      at("c/d/e/3.sketch.svg"), at("4.sketch.svg")};
    entries[0].labels.tags = {"Zoo", "ape"};
    entries[1].labels.tags = {"Zoo", "Éte"};
    entries[0].facts.photos = entries[0].facts.lyingPhotos = 4;
    const Size lying{Length::inches(11), Length::inches(8)};
    for (LibraryEntry& entry : entries) {
        entry.facts.pageSize = lying;
    }
    entries[3].facts.pageSize = lying.turned();
    const auto holdings = Holdings::of(entries);
    EXPECT_EQ(holdings->tags(), (std::vector<std::string>{"ape", "Éte", "Zoo"}));
    EXPECT_EQ(holdings->folders(), (std::vector<std::string>{"a", "a/b", "c", "c/d", "c/d/e"}));
    EXPECT_EQ(holdings->pageSizes(), (std::vector<Size>{lying.turned(), lying}));
    EXPECT_EQ(holdings->mostPhotos(), 4);
}

TEST(Holdings, KnowTheMembersOfAFamily) {
    std::vector<LibraryEntry> entries{at("a"), at("b"), at("c"), at("d")};
    entries[0].family = entries[3].family = 2;
    entries[2].family = 1;
    const auto holdings = Holdings::of(entries);
    EXPECT_EQ(holdings->membersOf(2), (std::vector<std::size_t>{0, 3}));
    EXPECT_EQ(holdings->membersOf(1), std::vector<std::size_t>{2});
    EXPECT_TRUE(holdings->membersOf(0).empty());
}

TEST(Holdings, AreSearchedFromManyThreadsAtOnce) {
    const auto holdings = Holdings::of(test::generatedEntries(9, 200));
    Query query;
    query.words = "beach";
    query.order = SearchOrder::Newest;
    std::vector<std::vector<std::uint32_t>> results(4);
    {
        std::vector<std::jthread> threads;
        for (auto& result : results) {
            threads.emplace_back([&] { result = search(*holdings, query).indices; });
        }
    }
    for (const auto& result : results) {
        EXPECT_EQ(result, results[0]);
        EXPECT_FALSE(result.empty());
    }
}

}  // namespace
}  // namespace matwright
