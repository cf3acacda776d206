// SPDX-License-Identifier: MIT
#include "app/batch/library_table.h"

#include <fmt/format.h>

#include <ranges>

#include "app/batch/filter_options.h"
#include "app/batch/table.h"
#include "app/batch/typed_size.h"
#include "core/library/printable.h"
#include "core/measure/length_text.h"

namespace matwright::app {

namespace {

std::string countWord(int count) {
    constexpr std::string_view words[] = {"two", "three", "four",  "five",
                                          "six", "seven", "eight", "nine"};
    return count >= 2 && count <= 9 ? std::string(words[count - 2]) : std::to_string(count);
}

// "4×6", "89×127 mm"
std::string printText(Size size) {
    std::string text = naturalSizeText(size);
    constexpr std::string_view by = " × ";
    if (const std::size_t at = text.find(by); at != std::string::npos) {
        text.replace(at, by.size(), "×");
    }
    return text.ends_with(" in") ? text.substr(0, text.size() - 3) : text;
}

std::string tagsText(const std::vector<std::string>& tags) {
    std::string text;
    for (const std::string& tag : tags) {
        text += (text.empty() ? "" : ", ") + printablePath(tag);
    }
    return text;
}

}  // namespace

std::string printsText(const std::vector<PrintNeed>& prints) {
    std::string text;
    for (const PrintNeed& need : prints | std::views::reverse) {
        text += text.empty() ? "" : ", ";
        text += need.count == 1 ? printText(need.size)
                                : countWord(need.count) + " " + printText(need.size);
    }
    return text;
}

std::string pageText(const SketchFacts& facts) {
    return naturalSizeText(facts.pageSize) + (facts.doublePage ? ", double" : "");
}

std::string entriesTable(const Holdings& holdings, std::span<const std::uint32_t> indices) {
    Table table({"Name", "Page", "Photos", "Prints", "Tags", "Path"}, {2});
    for (const std::uint32_t index : indices) {
        const LibraryEntry entry = holdings.entry(index);
        table.addRow({shownName(entry), pageText(entry.facts), std::to_string(entry.facts.photos),
                      printsText(entry.facts.prints), tagsText(entry.labels.tags),
                      printablePath(entry.path)});
    }
    return table.text();
}

namespace {

// Choices that would leave nothing are left out.
class CountRows {
  public:
    void add(std::string choice, std::uint32_t count) {
        if (count > 0) {
            m_table.addRow({std::move(choice), std::to_string(count)});
        }
    }
    template <typename Values, typename Text>
    void addAll(std::string_view option, const Values& values,
                const std::vector<std::uint32_t>& counts, const Text& typed) {
        for (std::size_t i = 0; i < counts.size(); ++i) {
            add(fmt::format("{} {}", option, shellWord(typed(values[i]))), counts[i]);
        }
    }
    std::string text() const { return m_table.text(); }

  private:
    Table m_table{{"Choice", "Sketches"}, {1}};
};

}  // namespace

std::string countsTable(const Holdings& holdings, const FilterCounts& counts) {
    CountRows rows;
    for (std::size_t i = 0; i < counts.photosExactly.size(); ++i) {
        rows.add(fmt::format("--photos {}", i), counts.photosExactly[i]);
    }
    for (std::size_t i = 0; i < counts.photosAtMost.size(); ++i) {
        rows.add(fmt::format("--photos-at-most {}", i), counts.photosAtMost[i]);
    }
    rows.addAll("--print", holdings.printSizes(), counts.prints, typedPrintSize);
    rows.addAll("--page", holdings.pageSizes(), counts.pageSizes, typedPageSize);
    rows.add("--single-page", counts.singlePages);
    rows.add("--double-page", counts.doublePages);
    for (std::size_t i = 0; i < std::size(allPhotoWays); ++i) {
        rows.add(std::string(optionOf(allPhotoWays[i])), counts.photoWays[i]);
    }
    rows.add("--room-for-title", counts.roomForTitle);
    rows.add("--room-for-journaling", counts.roomForJournaling);
    rows.add("--favourites", counts.favourites);
    rows.addAll("--tag", holdings.tags(), counts.tags, printablePath);
    rows.addAll("--in", holdings.folders(), counts.folders, printablePath);
    rows.add("without --in", counts.wholeLibrary);
    return rows.text();
}

std::string familiesTable(const Holdings& holdings, std::span<const std::vector<std::size_t>> all) {
    Table table({"Family", "Name", "Page", "Photos", "Path"}, {0, 3});
    for (std::size_t family = 0; family < all.size(); ++family) {
        for (const std::size_t member : all[family]) {
            const LibraryEntry entry = holdings.entry(member);
            table.addRow({std::to_string(family + 1), shownName(entry), pageText(entry.facts),
                          std::to_string(entry.facts.photos), printablePath(entry.path)});
        }
    }
    return table.text();
}

}  // namespace matwright::app
