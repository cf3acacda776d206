// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/content/content_key.h"
#include "core/library/facts.h"
#include "core/library/holdings.h"
#include "core/library/labels.h"

namespace matwright {

// Facts and labels as bytes: what the index file keeps of a sketch and what Holdings are made of.
std::string packedFacts(const SketchFacts& facts);
std::string packedLabels(const Labels& labels);
// False where the bytes are not what packedLabels() gives.
bool unpackLabels(std::string_view bytes, Labels& labels);

// A whole entry: its file, then its facts, then its labels. Labels may be empty, for none.
struct PackedEntry {
    std::string_view path;
    ContentKey content;
    std::uint64_t size = 0;
    std::int64_t modifiedNanoseconds = 0;
    std::string_view facts;
    std::string_view labels;
};
void appendPacked(const PackedEntry& entry, std::string& to);

// An entry read in place: texts are views into the packed bytes.
struct EntryView {
    std::string_view path;
    ContentKey content;
    std::uint64_t size = 0;
    std::int64_t modifiedNanoseconds = 0;
    std::string_view name, note;
    Size pageSize;
    bool doublePage = false;
    int upright = 0, lying = 0, square = 0;
    std::vector<PrintNeed> prints;
    int titles = 0, journalings = 0;
    std::vector<std::string_view> tags;
    bool favourite = false;
    std::string_view labelsNote;
    int useCount = 0;
    std::optional<Timestamp> lastUsed;

    int photos() const { return upright + lying + square; }
};
// Fills `view`, whose lists keep their memory. False where the bytes are not what appendPacked()
// wrote.
bool unpack(std::string_view packed, EntryView& view);
// Only the path of a packed entry.
std::string_view packedPath(std::string_view packed);
LibraryEntry entryOf(const EntryView& view);
// As shownName(LibraryEntry).
std::string shownName(const EntryView& view);

}  // namespace matwright
