// SPDX-License-Identifier: MIT
#include "core/library/facet_collector.h"

#include <algorithm>
#include <limits>
#include <numeric>

#include "core/library/text_fold.h"

namespace matwright {

namespace {

// There are few sizes, so a look through the list is quick.
std::uint32_t numberIn(std::vector<Size>& values, Size value) {
    const auto at = std::ranges::find(values, value);
    if (at == values.end()) {
        values.push_back(value);
        return static_cast<std::uint32_t>(values.size() - 1);
    }
    return static_cast<std::uint32_t>(at - values.begin());
}

std::uint32_t numberIn(std::unordered_map<std::string, std::uint32_t>& numbers,
                       std::vector<std::string>& values, std::string_view value) {
    const auto [at, isNew] =
        numbers.try_emplace(std::string(value), static_cast<std::uint32_t>(values.size()));
    if (isNew) {
        values.emplace_back(value);
    }
    return at->second;
}

// Sorts the values and gives the pairs their new numbers.
template <typename Value, typename Key>
void sortValues(std::vector<Value>& values, std::vector<Facet::Has>& pairs, Key keyOf) {
    using Ranked = std::pair<decltype(keyOf(values[0])), std::uint32_t>;
    std::vector<Ranked> ranked;
    ranked.reserve(values.size());
    for (std::uint32_t i = 0; i < values.size(); ++i) {
        ranked.emplace_back(keyOf(values[i]), i);
    }
    std::ranges::sort(ranked);
    std::vector<std::uint32_t> newNumber(values.size());
    std::vector<Value> sorted;
    sorted.reserve(values.size());
    for (const Ranked& one : ranked) {
        newNumber[one.second] = static_cast<std::uint32_t>(sorted.size());
        sorted.push_back(std::move(values[one.second]));
    }
    values = std::move(sorted);
    for (Facet::Has& has : pairs) {
        has.value = newNumber[has.value];
    }
}

std::pair<std::int64_t, std::int64_t> bySize(Size size) {
    return {size.width.ticks() * size.height.ticks(), size.width.ticks()};
}

}  // namespace

void FacetCollector::add(const EntryView& entry) {
    m_pages.pairs.push_back({m_entry, numberIn(m_pages.values, entry.pageSize)});
    m_doublePages.push_back({m_entry, entry.doublePage ? 1U : 0U});
    for (const PrintNeed& need : entry.prints) {
        m_prints.pairs.push_back({m_entry, numberIn(m_prints.values, need.size)});
    }
    addPhotos(entry);
    addSwitches(entry);
    addTags(entry);
    addFolders(entry.path);
    m_inside.modified.push_back(entry.modifiedNanoseconds);
    m_inside.useCounts.push_back(entry.useCount);
    m_inside.lastUsed.push_back(entry.lastUsed ? entry.lastUsed->time_since_epoch().count()
                                               : std::numeric_limits<std::int64_t>::min());
    ++m_entry;
}

void FacetCollector::addPhotos(const EntryView& entry) {
    const auto photos = static_cast<std::uint32_t>(entry.photos());
    m_photos.push_back({m_entry, std::min(photos, photoCountLimit)});
    const bool upright = entry.upright > 0;
    const bool lying = entry.lying > 0;
    const auto addIf = [this](bool holds, PhotoWay way) {
        if (holds) {
            m_photoWays.push_back({m_entry, static_cast<std::uint32_t>(way)});
        }
    };
    addIf(upright, PhotoWay::SomeUpright);
    addIf(lying, PhotoWay::SomeLying);
    addIf(upright && !lying, PhotoWay::OnlyUpright);
    addIf(lying && !upright, PhotoWay::OnlyLying);
}

void FacetCollector::addSwitches(const EntryView& entry) {
    const auto addIf = [this](bool on, Switch which) {
        if (on) {
            m_switches.push_back({m_entry, static_cast<std::uint32_t>(which)});
        }
    };
    addIf(entry.titles > 0, Switch::RoomForTitle);
    addIf(entry.journalings > 0, Switch::RoomForJournaling);
    addIf(entry.favourite, Switch::Favourite);
}

void FacetCollector::addTags(const EntryView& entry) {
    for (const std::string_view tag : entry.tags) {
        m_tags.pairs.push_back({m_entry, numberIn(m_tagNumbers, m_tags.values, tag)});
    }
}

void FacetCollector::addFolders(std::string_view path) {
    const std::string_view folder = folderOf(path);
    if (folder != m_lastFolder) {
        m_lastFolder = folder;
        m_lastFolders.clear();
        for (std::string_view above = folder; !above.empty(); above = folderOf(above)) {
            m_lastFolders.push_back(numberIn(m_folderNumbers, m_folders.values, above));
        }
    }
    for (const std::uint32_t number : m_lastFolders) {
        m_folders.pairs.push_back({m_entry, number});
    }
}

Facet FacetCollector::facetOf(std::size_t values, const Pairs& pairs) const {
    return {m_entry, values, pairs};
}

void FacetCollector::finish() {
    sortValues(m_pages.values, m_pages.pairs, bySize);
    sortValues(m_prints.values, m_prints.pairs, bySize);
    sortValues(m_tags.values, m_tags.pairs,
               [](const std::string& tag) { return std::pair(orderKey(tag), tag); });
    sortValues(m_folders.values, m_folders.pairs, [](const std::string& folder) { return folder; });

    std::uint32_t photoValues = 1;
    for (const Facet::Has& has : m_photos) {
        photoValues = std::max(photoValues, has.value + 1);
    }
    m_inside.photos = facetOf(photoValues, m_photos);
    m_inside.prints = facetOf(m_prints.values.size(), m_prints.pairs);
    m_inside.pages = facetOf(m_pages.values.size(), m_pages.pairs);
    m_inside.doublePages = facetOf(2, m_doublePages);
    m_inside.photoWays = facetOf(std::size(allPhotoWays), m_photoWays);
    m_inside.switches = facetOf(switchCount, m_switches);
    m_inside.tags = facetOf(m_tags.values.size(), m_tags.pairs);
    m_inside.folders = facetOf(m_folders.values.size(), m_folders.pairs);
    m_inside.pageSizes = std::move(m_pages.values);
    m_inside.printSizes = std::move(m_prints.values);
    m_inside.tagNames = std::move(m_tags.values);
    m_inside.folderNames = std::move(m_folders.values);
}

}  // namespace matwright
