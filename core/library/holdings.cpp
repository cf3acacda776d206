// SPDX-License-Identifier: MIT
#include "core/library/holdings.h"

#include <xxhash.h>

#include <algorithm>
#include <functional>

#include "core/library/holdings_inside.h"
#include "core/library/packed_entry.h"
#include "core/library/text_fold.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright {

namespace {

// The texts an entry is found by, with a break between one and the next.
void appendFoldedTexts(const EntryView& entry, std::string& to) {
    std::string_view path = entry.path;
    if (path.ends_with(sketchFileSuffix)) {
        path.remove_suffix(std::string_view(sketchFileSuffix).size());
    }
    for (const std::string_view text : {entry.name, entry.note, entry.labelsNote, path}) {
        appendFolded(text, to);
        to += '\n';
    }
    for (const std::string_view tag : entry.tags) {
        appendFolded(tag, to);
        to += '\n';
    }
}

WordTable wordsOf(const Holdings::Inside& inside) {
    std::string texts;
    std::vector<std::size_t> starts{0};
    EntryView view;
    for (std::size_t entry = 0; entry < inside.size(); ++entry) {
        unpack(inside.packedEntry(entry), view);
        appendFoldedTexts(view, texts);
        starts.push_back(texts.size());
    }
    std::vector<WordTable::Has> pairs;
    for (std::size_t entry = 0; entry < inside.size(); ++entry) {
        const auto text =
            std::string_view(texts).substr(starts[entry], starts[entry + 1] - starts[entry]);
        for (const std::string_view word : wordsIn(text)) {
            pairs.push_back({word, static_cast<std::uint32_t>(entry)});
        }
    }
    return {inside.size(), std::move(pairs)};
}

std::vector<std::uint32_t> sortedOrder(const Holdings::Inside& inside, SearchOrder order) {
    std::vector<std::uint32_t> entries(order == SearchOrder::Name ? 0 : inside.size());
    for (std::uint32_t entry = 0; entry < entries.size(); ++entry) {
        entries[entry] = entry;
    }
    const auto latestFirst = [&](const auto& column) {
        std::ranges::stable_sort(entries, std::greater<>(),
                                 [&](std::uint32_t entry) { return column[entry]; });
    };
    if (order == SearchOrder::LastUsed) {
        latestFirst(inside.lastUsed);
    } else if (order == SearchOrder::MostUsed) {
        latestFirst(inside.useCounts);
    } else if (order == SearchOrder::Newest) {
        latestFirst(inside.modified);
    }
    return entries;
}

}  // namespace

std::size_t Holdings::Inside::slotOf(std::string_view path) const {
    return XXH3_64bits(path.data(), path.size()) & (pathSlots.size() - 1);
}

std::optional<std::size_t> Holdings::Inside::indexOf(std::string_view path) const {
    const std::size_t mask = pathSlots.size() - 1;
    std::size_t slot = slotOf(path);
    for (; pathSlots[slot] != 0; slot = (slot + 1) & mask) {
        if (packedPath(packedEntry(pathSlots[slot] - 1)) == path) {
            return pathSlots[slot] - 1;
        }
    }
    return std::nullopt;
}

const WordTable& Holdings::Inside::words() const {
    std::call_once(m_wordsOnce, [this] { m_words = wordsOf(*this); });
    return m_words;
}

const Holdings::Inside::Order& Holdings::Inside::order(SearchOrder order) const {
    Order& made = m_orders[static_cast<std::size_t>(order)];
    std::call_once(made.once, [&] {
        made.entries = sortedOrder(*this, order);
        made.places.resize(made.entries.size());
        for (std::uint32_t place = 0; place < made.entries.size(); ++place) {
            made.places[made.entries[place]] = place;
        }
    });
    return made;
}

Holdings::Holdings(std::unique_ptr<const Inside> inside) : m_inside(std::move(inside)) {}
Holdings::~Holdings() = default;

std::size_t Holdings::size() const {
    return m_inside->size();
}

LibraryEntry Holdings::entry(std::size_t index) const {
    EntryView view;
    unpack(m_inside->packedEntry(index), view);
    LibraryEntry entry = entryOf(view);
    entry.family = m_inside->families[index];
    return entry;
}

std::string_view Holdings::path(std::size_t index) const {
    return packedPath(m_inside->packedEntry(index));
}

ContentKey Holdings::content(std::size_t index) const {
    EntryView view;
    unpack(m_inside->packedEntry(index), view);
    return view.content;
}

int Holdings::family(std::size_t index) const {
    return m_inside->families[index];
}

std::optional<std::size_t> Holdings::indexOf(std::string_view path) const {
    return m_inside->indexOf(path);
}

std::vector<std::size_t> Holdings::membersOf(int family) const {
    std::vector<std::size_t> members;
    for (std::size_t i = 0; family != 0 && i < size(); ++i) {
        if (m_inside->families[i] == family) {
            members.push_back(i);
        }
    }
    return members;
}

const std::vector<std::string>& Holdings::tags() const {
    return m_inside->tagNames;
}
const std::vector<std::string>& Holdings::folders() const {
    return m_inside->folderNames;
}
const std::vector<Size>& Holdings::pageSizes() const {
    return m_inside->pageSizes;
}
const std::vector<Size>& Holdings::printSizes() const {
    return m_inside->printSizes;
}
int Holdings::mostPhotos() const {
    return static_cast<int>(m_inside->photos.values()) - 1;
}

void Holdings::prepareWords() const {
    m_inside->words();
}

}  // namespace matwright
