// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>
#include <optional>
#include <unordered_map>

#include "core/library/label_store.h"

namespace matwright {

namespace {

// Gives every record to at most one sketch, best reasons first.
class LabelMatch {
  public:
    LabelMatch(std::span<const KeyedSketch> sketches, std::span<const LabelRecord> records)
        : m_sketches(sketches),
          m_records(records),
          m_labels(sketches.size()),
          m_givenBy(sketches.size(), Given::No),
          m_isTaken(records.size()) {
        for (std::size_t i = 0; i < sketches.size(); ++i) {
            m_byPath.emplace(sketches[i].path, i);
        }
        for (std::size_t i = 0; i < records.size(); ++i) {
            m_order.push_back(i);
        }
        std::ranges::sort(m_order, {}, [&](std::size_t i) {
            return std::tie(records[i].sketch, records[i].content);
        });
    }

    std::vector<Labels> labels() {
        giveByPathAndContent();
        giveByContent();
        giveByPath();
        return std::move(m_labels);
    }

  private:
    enum class Given { No, ByPath, ByContent };

    std::optional<std::size_t> ownSketchOf(std::size_t record) const {
        const auto own = m_byPath.find(m_records[record].sketch);
        return own == m_byPath.end() ? std::nullopt : std::optional(own->second);
    }

    void give(std::size_t record, std::size_t sketch, Given reason) {
        const Labels& more = m_records[record].labels;
        m_labels[sketch] = m_givenBy[sketch] == Given::No ? more : united(m_labels[sketch], more);
        m_givenBy[sketch] = reason;
        m_isTaken[record] = true;
    }

    void giveByPathAndContent() {
        for (const std::size_t record : m_order) {
            const auto own = ownSketchOf(record);
            if (own && m_sketches[*own].content == m_records[record].content) {
                give(record, *own, Given::ByPath);
            }
        }
    }

    void giveByContent() {
        std::multimap<ContentKey, std::size_t> without;
        for (std::size_t i = 0; i < m_sketches.size(); ++i) {
            if (m_givenBy[i] == Given::No) {
                without.emplace(m_sketches[i].content, i);
            }
        }
        for (const std::size_t record : m_order) {
            const auto sketch = without.find(m_records[record].content);
            if (!m_isTaken[record] && sketch != without.end()) {
                give(record, sketch->second, Given::ByContent);
                without.erase(sketch);
            }
        }
    }

    void giveByPath() {
        for (const std::size_t record : m_order) {
            const auto own = ownSketchOf(record);
            if (!m_isTaken[record] && own && m_givenBy[*own] != Given::ByContent) {
                give(record, *own, Given::ByPath);
            }
        }
    }

    std::span<const KeyedSketch> m_sketches;
    std::span<const LabelRecord> m_records;
    std::vector<Labels> m_labels;
    std::vector<Given> m_givenBy;
    std::vector<bool> m_isTaken;
    std::unordered_map<std::string, std::size_t> m_byPath;
    std::vector<std::size_t> m_order;
};

}  // namespace

std::vector<Labels> labelsFor(std::span<const KeyedSketch> sketches,
                              std::span<const LabelRecord> records) {
    return LabelMatch(sketches, records).labels();
}

}  // namespace matwright
