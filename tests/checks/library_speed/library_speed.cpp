// SPDX-License-Identifier: MIT
// How a library of 10,000 generated sketches does against one of 100 and of 1,000, in ratios of one
// run:
//   - the first indexing prints its rate;
//   - warm start: from nothing to the sketches of the first screen, read and worked out into
//     pictures, against 100 sketches. The bar of 1.3 is for thumbnails on the screen; painting them
//     is most of a start and not here, so this check fails only above 2;
//   - a search with three filters, with its counts and the entries of the first screen, at most
//     twice as long as with 1,000;
//   - what the library adds to the memory of a program.
// What the window adds to both sides of a ratio is not here.
#include <algorithm>
#include <cstdio>
#include <map>
#include <thread>
#include <vector>

#include "core/library/index.h"
#include "core/library/search.h"
#include "core/picture/picture.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/checks/library_speed/memory_use.h"
#include "tests/support/generated_library.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/timed_bar.h"

namespace {

using namespace matwright;
namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

constexpr std::uint64_t seed = 2026;
constexpr std::size_t firstScreen = 40;
constexpr double warmStartBar = 2;
constexpr double searchBar = 2;

double microsecondsSince(Clock::time_point start) {
    return std::chrono::duration<double, std::micro>(Clock::now() - start).count();
}

double median(std::vector<double> values) {
    std::ranges::sort(values);
    return values[values.size() / 2];
}

struct Library {
    fs::path folder;
    fs::path cache;
};

Library madeLibrary(const test::TemporaryFolder& place, std::size_t count) {
    const Library library{place / std::to_string(count), place / "cache"};
    test::writeGeneratedLibrary(library.folder, seed, count, true);
    IndexOptions options;
    options.threads = static_cast<int>(std::max(1U, std::thread::hardware_concurrency()));
    const IndexUpdate update = LibraryIndex(library.folder, library.cache).update(options);
    std::printf("first indexing of %zu sketches: %.0f a second (%.2f s in all, %d threads)\n",
                update.holdings->size(),
                static_cast<double>(update.progress.read) / update.readSeconds, update.seconds,
                options.threads);
    return library;
}

// Sums up what was made, so that nothing is left out as unused.
std::size_t shownFirstScreen(const Holdings& holdings, const Found& found) {
    std::size_t sum = 0;
    for (std::size_t i = 0; i < std::min(firstScreen, found.indices.size()); ++i) {
        const LibraryEntry entry = holdings.entry(found.indices[i]);
        sum += shownName(entry).size() + entry.facts.prints.size();
    }
    return sum;
}

struct WarmStart {
    double index = 0;   // until the first screen's entries are known, in microseconds
    double screen = 0;  // until its sketches are pictures
};

WarmStart warmStart(const Library& library) {
    const auto start = Clock::now();
    LibraryIndex index(library.folder, library.cache);
    const auto holdings = index.remembered();
    const Found found = search(*holdings, {});
    std::size_t sum = shownFirstScreen(*holdings, found);
    WarmStart result{microsecondsSince(start), 0};
    DiskFileStore store;
    for (std::size_t i = 0; i < firstScreen; ++i) {
        const auto loaded = loadSketch(store, library.folder / holdings->path(found.indices[i]));
        sum += loaded ? sketchPicture(loaded->sketch).layers.size() : 0;
    }
    result.screen = microsecondsSince(start);
    return sum == 0 ? WarmStart{} : result;
}

double warmStartRatio(const Library& small, const Library& large) {
    std::vector<double> smallIndex, smallScreen, largeIndex, largeScreen;
    for (int run = 0; run < 21; ++run) {
        const WarmStart a = warmStart(small);
        const WarmStart b = warmStart(large);
        smallIndex.push_back(a.index);
        smallScreen.push_back(a.screen);
        largeIndex.push_back(b.index);
        largeScreen.push_back(b.screen);
    }
    const double ratio = median(largeScreen) / median(smallScreen);
    std::printf(
        "warm start: the index %.1f ms (100: %.1f ms); with the first screen of sketches "
        "%.1f ms (100: %.1f ms): ratio %.2f before painting, limit %.0f\n",
        median(largeIndex) / 1'000, median(smallIndex) / 1'000, median(largeScreen) / 1'000,
        median(smallScreen) / 1'000, ratio, warmStartBar);
    return ratio;
}

// Each leaves more than a first screen, of both libraries.
std::vector<std::pair<const char*, Query>> queries() {
    const auto size = [](std::int64_t width, std::int64_t height) {
        return Size{Length::inches(width), Length::inches(height)};
    };
    Query facts;
    facts.photos = {4, true};
    facts.prints = {size(4, 6)};
    facts.pageSizes = {size(12, 12)};
    Query words;
    words.words = "beach";
    words.roomForTitle = true;
    words.doublePage = false;
    Query labels;
    labels.tags = {"travel"};
    labels.photoWay = PhotoWay::SomeLying;
    labels.doublePage = false;
    labels.order = SearchOrder::MostUsed;
    return {{"up to 4 photos, 4x6, 12x12", facts},
            {"\"beach\", title, single page", words},
            {"tag, lying photos, single page, most used first", labels}};
}

double searchTime(const Holdings& holdings, const Query& query) {
    std::vector<double> times;
    std::size_t sum = 0;
    for (int run = 0; run < 201; ++run) {
        const auto start = Clock::now();
        sum += shownFirstScreen(holdings, search(holdings, query));
        times.push_back(microsecondsSince(start));
    }
    return sum == 0 ? 0 : median(times);
}

double searchRatio(const Holdings& small, const Holdings& large) {
    double worst = 0;
    for (const auto& [name, query] : queries()) {
        const double few = searchTime(small, query);
        const double many = searchTime(large, query);
        const double ratio = few > 0 ? many / few : 99;
        std::printf(
            "search by %s: %zu of %zu in %.0f us, %zu of %zu in %.0f us: ratio %.2f, bar %.0f\n",
            name, search(large, query).indices.size(), large.size(), many,
            search(small, query).indices.size(), small.size(), few, ratio, searchBar);
        worst = std::max(worst, ratio);
    }
    return worst;
}

double longestSearch(const Holdings& holdings) {
    Query query;
    query.words = "e";
    query.order = SearchOrder::Newest;
    return std::max(searchTime(holdings, query), searchTime(holdings, {}));
}

// What runs behind the window once it stands: nothing to read, then one file.
void printUpdate(const Library& library) {
    LibraryIndex index(library.folder, library.cache);
    index.update();
    const IndexUpdate idle = index.update();
    test::writeFile(library.folder / "one more.sketch.svg",
                    writeSketch(test::generatedSketch(seed, 1)));
    const IndexUpdate one = index.update();
    std::printf("update of 10,000 sketches: %.0f ms with %zu files to read, %.0f ms with %zu\n",
                idle.seconds * 1'000, idle.progress.read, one.seconds * 1'000, one.progress.read);
}

// In a program of its own, started anew, so that nothing done before counts.
int measureMemory(const Library& library) {
    const double before = test::residentBytes();
    LibraryIndex index(library.folder, library.cache);
    const auto holdings = index.remembered();
    Query query;
    query.words = "beach";
    const Found found = search(*holdings, query);
    const double warm = test::residentBytes() - before;
    index.update();
    std::printf("%.0f %.0f %zu\n", warm, test::peakBytes() - before, found.indices.size());
    return 0;
}

test::MemoryUse memoryOf(const Library& library) {
    return test::memoryUse(library.folder.string() + "' '" + library.cache.string());
}

void printMemory(const Library& small, const Library& large) {
    constexpr double megabyte = 1'048'576;
    const test::MemoryUse few = memoryOf(small);
    const test::MemoryUse many = memoryOf(large);
    std::printf(
        "memory a library adds to a program: 10,000 sketches %.1f MB after a warm start and a "
        "search, at most %.1f MB during an update; 100 sketches %.1f MB and %.1f MB\n",
        many.warm / megabyte, many.peak / megabyte, few.warm / megabyte, few.peak / megabyte);
    std::printf("  a program of 60 MB: ratio %.2f, bar 1.5\n",
                (60 * megabyte + many.peak) / (60 * megabyte + few.peak));
}

}  // namespace

int main(int count, char** arguments) {
    if (count == 3) {
        return measureMemory({arguments[1], arguments[2]});
    }
    if (test::timingsMeanNothing()) {
        return test::skippedBar;
    }
    const test::TemporaryFolder place;
    const Library hundred = madeLibrary(place, 100);
    const Library tenThousand = madeLibrary(place, 10'000);
    printMemory(hundred, tenThousand);
    printUpdate(tenThousand);
    const double start =
        test::bestRatio(warmStartBar, [&] { return warmStartRatio(hundred, tenThousand); });
    const auto small = Holdings::of(test::generatedEntries(seed, 1'000));
    const auto large = Holdings::of(test::generatedEntries(seed, 10'000));
    const double found = test::bestRatio(searchBar, [&] { return searchRatio(*small, *large); });
    std::printf("the longest search (one letter, or none, by time): %.0f us\n",
                longestSearch(*large));
    return start <= warmStartBar && found <= searchBar ? 0 : 1;
}
