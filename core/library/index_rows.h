// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <string>

#include "core/content/content_key.h"
#include "core/library/folder_scan.h"
#include "core/library/label_record.h"

namespace matwright {

// What the index remembers of one sketch file. Texts are packed (see packed_entry.h).
struct IndexedSketch {
    FileSignature signature;
    bool isSuspect = false;  // it may have changed since it was read and show the same signature
    std::string problem;     // why it is no sketch; empty for a good one
    ContentKey content;
    std::string facts;
    std::string labels;
    // Sketches of one key that have the same number above 0 are one family; unknownFamily: not
    // worked out yet.
    std::uint64_t familyKey = 0;
    int family = 0;

    // Only while it was read but is not in the index file yet.
    std::string traits;
    // Its folder cannot be read at the moment.
    bool isHidden = false;
};
inline constexpr int unknownFamily = -1;

// What the index remembers of one file of labels.
struct IndexedLabels {
    FileSignature signature;
    bool isSuspect = false;
    std::string problem;
    LabelRecord record;
};

// By path, in the library and in its folder of labels.
struct IndexRows {
    std::map<std::string, IndexedSketch, std::less<>> sketches;
    std::map<std::string, IndexedLabels, std::less<>> labels;
};

}  // namespace matwright
