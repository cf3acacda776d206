// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/sketch/sketch.h"

namespace matwright::check {

// Every content that anybody writes is a version with a number of its own, which stands in the
// sketch's note: so it is found again whatever the file is called.
Sketch versionSketch(int number, const std::string& name);
std::optional<int> versionOf(std::string_view sketchFileBytes);

enum class Deed {
    TrySave,   // a worker is about to save `version`, made from `other`
    DidSave,   // and was told that it is saved; `other` is 1 where it took no other's place
    TryWrite,  // an outsider is about to write `version` over whatever is there
    DidWrite,  // and `other` was there (0: nothing of ours)
    DidTag,    // a worker was told that the tag `version` is kept
    DidOther,  // something else was done
    KeptBoth,  // the save just told of went beside
    Failed,    // something was refused that should not be; told with a sentence
};

struct JournalLine {
    Deed deed;
    int version = 0;
    int other = 0;
    std::string sentence;
};

// One line a deed, each written by one call of the system: whole or not at all, whoever is killed.
class Journal {
  public:
    explicit Journal(std::filesystem::path file) : m_file(std::move(file)) {}
    void write(const JournalLine& line) const;
    std::vector<JournalLine> read() const;

  private:
    std::filesystem::path m_file;
};

}  // namespace matwright::check
