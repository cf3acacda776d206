// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/content/content_key.h"
#include "core/library/facts.h"
#include "core/library/labels.h"

namespace matwright {

// One sketch of a library.
struct LibraryEntry {
    // From the library folder down, with '/' between folders; the file's own bytes, which need not
    // be UTF-8. Show it as printablePath(path).
    std::string path;
    ContentKey content;
    std::uint64_t size = 0;                // of the file, in bytes
    std::int64_t modifiedNanoseconds = 0;  // of the file, since 1970-01-01 UTC
    SketchFacts facts;
    Labels labels;
    // Sketches of one Holdings with the same number above 0 are one family (equal but for mirror,
    // turn or tiny shifts); 0 is in no family with another. Numbers of different Holdings have
    // nothing to do with each other.
    int family = 0;

    friend bool operator==(const LibraryEntry&, const LibraryEntry&) = default;
};

// What to call a sketch: shownSketchName() of its own name and its path (see names.h), printable
// where it comes from the file.
std::string shownName(const LibraryEntry& entry);
// The folder part of a path, without a '/' at its end; empty at the top.
std::string_view folderOf(std::string_view path);

// All sketches of a library at one moment, as one immutable value: safe to read from any number of
// threads. Kept small (a few hundred bytes a sketch): entries are packed and made when asked for.
//
// Entries are numbered from 0 to size() - 1 in the order of their names: shownName() without regard
// to case and accents of Latin letters, runs of digits by their value ("Page 9" before "Page 10"),
// then by path. Numbers hold for this value only.
class Holdings {
  public:
    // Of entries in any order; paths must differ from each other.
    static std::shared_ptr<const Holdings> of(std::span<const LibraryEntry> entries);

    ~Holdings();
    Holdings(const Holdings&) = delete;
    Holdings& operator=(const Holdings&) = delete;

    std::size_t size() const;
    // The whole entry; about a microsecond. index < size().
    LibraryEntry entry(std::size_t index) const;
    // Without making the entry. The view holds as long as the Holdings.
    std::string_view path(std::size_t index) const;
    ContentKey content(std::size_t index) const;
    int family(std::size_t index) const;

    std::optional<std::size_t> indexOf(std::string_view path) const;
    // All sketches of one family, in order; empty for 0.
    std::vector<std::size_t> membersOf(int family) const;

    // What stands in the library, each value once. The lists of FilterCounts are in step with them.
    const std::vector<std::string>& tags() const;     // by name, as entries are ordered
    const std::vector<std::string>& folders() const;  // by bytes; every folder with sketches in it
                                                      // or below it, without the top
    const std::vector<Size>& pageSizes() const;       // small to large
    const std::vector<Size>& printSizes() const;      // short side first, small to large
    // In one sketch, at most 100: sketches with more photos count with 100. 0 in an empty library.
    int mostPhotos() const;

    // Makes what a search for words needs (some milliseconds for 10,000 sketches). Done by the
    // first such search if nobody asked for it before; a background thread may do it early.
    void prepareWords() const;

    // What search() works on.
    struct Inside;
    const Inside& inside() const { return *m_inside; }
    explicit Holdings(std::unique_ptr<const Inside> inside);

  private:
    std::unique_ptr<const Inside> m_inside;
};

}  // namespace matwright
