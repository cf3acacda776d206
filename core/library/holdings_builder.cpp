// SPDX-License-Identifier: MIT
#include "core/library/holdings_builder.h"

#include <algorithm>

#include "core/library/facet_collector.h"
#include "core/library/holdings_inside.h"
#include "core/library/text_fold.h"

namespace matwright {

namespace {

std::uint64_t firstEightBytes(std::string_view key) {
    std::uint64_t value = 0;
    for (std::size_t i = 0; i < sizeof(value); ++i) {
        value = value << 8 | (i < key.size() ? static_cast<unsigned char>(key[i]) : 0U);
    }
    return value;
}

void fillPathSlots(Holdings::Inside& inside) {
    std::size_t slots = 16;
    while (slots < 2 * inside.size()) {
        slots *= 2;
    }
    inside.pathSlots.resize(slots);
    for (std::size_t entry = 0; entry < inside.size(); ++entry) {
        std::size_t slot = inside.slotOf(packedPath(inside.packedEntry(entry)));
        while (inside.pathSlots[slot] != 0) {
            slot = (slot + 1) & (slots - 1);
        }
        inside.pathSlots[slot] = static_cast<std::uint32_t>(entry + 1);
    }
}

}  // namespace

void HoldingsBuilder::reserve(std::size_t entries, std::size_t bytes) {
    m_items.reserve(entries);
    m_packed.reserve(bytes);
    m_keys.reserve(entries * 64);
}

bool HoldingsBuilder::add(const PackedEntry& entry, int family) {
    const std::size_t start = m_packed.size();
    appendPacked(entry, m_packed);
    if (!unpack(std::string_view(m_packed).substr(start), m_view)) {
        m_packed.resize(start);
        return false;
    }
    const std::size_t key = m_keys.size();
    m_keys += orderKey(shownName(m_view));
    m_keys += '\0';
    m_keys += entry.path;
    m_items.push_back({firstEightBytes(std::string_view(m_keys).substr(key)),
                       static_cast<std::uint32_t>(key), static_cast<std::uint32_t>(m_keys.size()),
                       static_cast<std::uint32_t>(start),
                       static_cast<std::uint32_t>(m_packed.size()), family});
    return true;
}

bool HoldingsBuilder::isBefore(const Item& a, const Item& b) const {
    if (a.keyStart8 != b.keyStart8) {
        return a.keyStart8 < b.keyStart8;
    }
    const std::string_view keys = m_keys;
    return keys.substr(a.key, a.keyEnd - a.key) < keys.substr(b.key, b.keyEnd - b.key);
}

ContentKey HoldingsBuilder::fingerprint() const {
    std::string keys = contentKeyOf(m_packed).text();
    for (const Item& item : m_items) {
        keys += std::to_string(item.family);
        keys += ' ';
    }
    return contentKeyOf(keys);
}

std::shared_ptr<const Holdings> HoldingsBuilder::build() {
    std::ranges::sort(m_items, [this](const Item& a, const Item& b) { return isBefore(a, b); });
    auto inside = std::make_unique<Holdings::Inside>();
    inside->packed.reserve(m_packed.size());
    inside->starts.reserve(m_items.size() + 1);
    inside->families.reserve(m_items.size());
    FacetCollector collector(*inside);
    for (const Item& item : m_items) {
        inside->starts.push_back(static_cast<std::uint32_t>(inside->packed.size()));
        inside->packed.append(m_packed, item.packed, item.packedEnd - item.packed);
        inside->families.push_back(item.family);
        unpack(std::string_view(m_packed).substr(item.packed, item.packedEnd - item.packed),
               m_view);
        collector.add(m_view);
    }
    inside->starts.push_back(static_cast<std::uint32_t>(inside->packed.size()));
    collector.finish();
    fillPathSlots(*inside);
    return std::make_shared<const Holdings>(std::move(inside));
}

std::shared_ptr<const Holdings> Holdings::of(std::span<const LibraryEntry> entries) {
    HoldingsBuilder builder;
    for (const LibraryEntry& entry : entries) {
        const std::string facts = packedFacts(entry.facts);
        const std::string labels = packedLabels(entry.labels);
        builder.add(
            {entry.path, entry.content, entry.size, entry.modifiedNanoseconds, facts, labels},
            entry.family);
    }
    return builder.build();
}

}  // namespace matwright
