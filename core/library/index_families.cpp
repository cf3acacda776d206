// SPDX-License-Identifier: MIT
#include "core/library/index_families.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

#include "core/family/family.h"

namespace matwright {

namespace {

using Members = std::vector<IndexFile::SketchRow*>;

void setFamily(IndexFile::SketchRow* row, int family, Members& changed) {
    if (row->second.family != family) {
        row->second.family = family;
        changed.push_back(row);
    }
}

// All sketches of one key.
void workOutKey(const Members& members, IndexFile& file, Members& changed) {
    if (members.size() == 1) {
        setFamily(members.front(), 0, changed);
        return;
    }
    Members known;
    std::vector<FamilyTraits> traits;
    for (IndexFile::SketchRow* row : members) {
        const std::string& own = row->second.traits;
        auto read = FamilyTraits::fromBytes(own.empty() ? file.traitsOf(row->first) : own);
        if (read) {
            known.push_back(row);
            traits.push_back(std::move(*read));
        }
    }
    const std::vector<int> families = familiesOf(traits);
    for (std::size_t i = 0; i < known.size(); ++i) {
        setFamily(known[i], families[i], changed);
    }
}

}  // namespace

void forgetFamilies(IndexRows& rows, const std::unordered_set<std::uint64_t>& keys,
                    Members& changed) {
    for (auto& row : rows.sketches) {
        if (!keys.empty() && row.second.family > 0 && keys.contains(row.second.familyKey)) {
            setFamily(&row, unknownFamily, changed);
        }
    }
}

void workOutFamilies(IndexRows& rows, IndexFile& file, Members& changed) {
    std::unordered_set<std::uint64_t> keys;
    const auto isSketch = [](const IndexedSketch& sketch) { return sketch.problem.empty(); };
    for (const auto& [path, sketch] : rows.sketches) {
        if (isSketch(sketch) && sketch.family == unknownFamily) {
            keys.insert(sketch.familyKey);
        }
    }
    std::unordered_map<std::uint64_t, Members> members;
    for (auto& row : rows.sketches) {
        if (!keys.empty() && isSketch(row.second) && keys.contains(row.second.familyKey)) {
            members[row.second.familyKey].push_back(&row);
        }
    }
    for (const auto& [key, rowsOfKey] : members) {
        workOutKey(rowsOfKey, file, changed);
    }
}

int FamilyNumbers::of(const IndexedSketch& sketch) {
    if (sketch.family <= 0) {
        return 0;
    }
    const auto next = static_cast<int>(m_numbers.size()) + 1;
    return m_numbers.try_emplace({sketch.familyKey, sketch.family}, next).first->second;
}

}  // namespace matwright
