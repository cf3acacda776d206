// SPDX-License-Identifier: MIT
#include "tests/support/generated_library.h"

#include <algorithm>
#include <string_view>

#include "core/content/content_key.h"
#include "core/library/label_store.h"
#include "core/library/text_fold.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/support/temporary_folder.h"

namespace matwright::test {

namespace {

constexpr std::string_view folders[] = {"",
                                        "",
                                        "2019",
                                        "2020",
                                        "2021",
                                        "2022/spring",
                                        "2022/summer",
                                        "2022/autumn",
                                        "family",
                                        "family/children",
                                        "travel",
                                        "travel/by the sea"};
constexpr std::string_view tags[] = {"baby",   "beach",      "birthday", "boys",   "christmas",
                                     "easter", "friends",    "garden",   "girls",  "pets",
                                     "quick",  "school",     "simple",   "sport",  "to try",
                                     "travel", "two photos", "wedding",  "winter", "zoo"};

// Its own random numbers for every entry, so that it does not depend on those before it.
Random randomFor(std::uint64_t seed, std::size_t i, std::uint64_t purpose) {
    return Random(seed * 1'000'003 + i * 7 + purpose);
}

}  // namespace

Sketch generatedSketch(std::uint64_t seed, std::size_t i) {
    Random random = randomFor(seed, i, 0);
    return generatedSketch(random);
}

std::string generatedPath(std::uint64_t seed, std::size_t i) {
    Random random = randomFor(seed, i, 1);
    std::string path(folders[below(random, std::size(folders))]);
    path += path.empty() ? "" : "/";
    std::string name = foldedText(generatedSketch(seed, i).name);
    std::ranges::replace(name, ' ', '-');
    return path + name + "-" + std::to_string(i) + sketchFileSuffix;
}

Labels generatedLabels(std::uint64_t seed, std::size_t i) {
    Random random = randomFor(seed, i, 2);
    Labels labels;
    for (auto n = below(random, 4); n > 0; --n) {
        labels.tags.emplace_back(tags[below(random, std::size(tags))]);
    }
    std::ranges::sort(labels.tags);
    const auto repeated = std::ranges::unique(labels.tags);
    labels.tags.erase(repeated.begin(), repeated.end());
    labels.favourite = below(random, 12) == 0;
    if (below(random, 3) == 0) {
        labels.useCount = static_cast<int>(1 + below(random, 20));
        labels.lastUsed = Timestamp(std::chrono::seconds(
            1'500'000'000 + static_cast<std::int64_t>(below(random, 200'000'000))));
    }
    return labels;
}

std::vector<LibraryEntry> generatedEntries(std::uint64_t seed, std::size_t count) {
    std::vector<LibraryEntry> entries;
    for (std::size_t i = 0; i < count; ++i) {
        const Sketch sketch = generatedSketch(seed, i);
        LibraryEntry entry;
        entry.path = generatedPath(seed, i);
        entry.content = contentKeyOf(entry.path);
        entry.size = 5'000 + i;
        entry.modifiedNanoseconds = 1'600'000'000'000'000'000 +
                                    static_cast<std::int64_t>(i * 7919 % 100'003) * 1'000'000'000;
        entry.facts = factsOf(sketch);
        entry.labels = generatedLabels(seed, i);
        entries.push_back(std::move(entry));
    }
    return entries;
}

void writeGeneratedLibrary(const std::filesystem::path& folder, std::uint64_t seed,
                           std::size_t count, bool withLabels) {
    for (std::size_t i = 0; i < count; ++i) {
        const std::string path = generatedPath(seed, i);
        const std::string bytes = writeSketch(generatedSketch(seed, i));
        std::filesystem::create_directories((folder / path).parent_path());
        writeFile(folder / path, bytes);
        const Labels labels = generatedLabels(seed, i);
        if (withLabels && labels != Labels()) {
            const std::filesystem::path file = labelFileOf(folder, path);
            std::filesystem::create_directories(file.parent_path());
            writeFile(file, writeLabelRecord({path, contentKeyOf(bytes), labels}).value());
        }
    }
}

}  // namespace matwright::test
