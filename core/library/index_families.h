// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <map>
#include <unordered_set>
#include <utility>
#include <vector>

#include "core/library/index_file.h"
#include "core/library/index_rows.h"

namespace matwright {

// Families are worked out key by key, whenever a key has a sketch whose family is not known. Rows
// that change are appended to `changed`.

// The families of these keys are not known any more, because a sketch left them.
void forgetFamilies(IndexRows& rows, const std::unordered_set<std::uint64_t>& keys,
                    std::vector<IndexFile::SketchRow*>& changed);
// Traits come from the rows or from the index file; a sketch whose traits are in neither stays
// unknown.
void workOutFamilies(IndexRows& rows, IndexFile& file, std::vector<IndexFile::SketchRow*>& changed);

// Gives each family of the rows a number of its own: by key and number within the key.
class FamilyNumbers {
  public:
    // 0 for a sketch that is alone or whose family is not known.
    int of(const IndexedSketch& sketch);

  private:
    std::map<std::pair<std::uint64_t, int>, int> m_numbers;
};

}  // namespace matwright
