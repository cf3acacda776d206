// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <filesystem>
#include <memory>
#include <unordered_set>
#include <vector>

#include "core/library/folder_scan.h"
#include "core/library/holdings.h"
#include "core/library/index.h"
#include "core/library/index_file.h"
#include "core/library/index_rows.h"
#include "core/library/parallel_reading.h"

namespace matwright {

// The sketches of the rows that are there and readable. `before`, where it was made of the same
// rows, is given back instead of a new value; `fingerprint` says what it was made of and is brought
// up to date.
std::shared_ptr<const Holdings> holdingsOf(const IndexRows& rows,
                                           const std::shared_ptr<const Holdings>& before,
                                           ContentKey& fingerprint);

// One update from beginning to end: walk, read, match labels and families. The rows are right for
// what was done so far at any moment, and written every so often.
class IndexUpdateRun {
  public:
    IndexUpdateRun(const std::filesystem::path& library, const IndexOptions& options,
                   IndexFile& file, IndexRows& rows)
        : m_library(library), m_options(options), m_file(file), m_rows(rows) {}

    // All but the holdings.
    IndexUpdate run();

  private:
    void walk();
    void forgetGone();
    std::vector<ReadJob> jobs() const;
    void readFiles();
    void take(ReadResult result);
    void save();
    void report(bool withInterim);
    std::vector<LibraryProblem> problems() const;

    const std::filesystem::path& m_library;
    const IndexOptions& m_options;
    IndexFile& m_file;
    IndexRows& m_rows;
    FolderScan m_scan;
    IndexProgress m_progress;
    IndexFile::Changes m_changes;
    std::unordered_set<std::uint64_t> m_leftKeys;  // of families that a sketch left
    std::chrono::steady_clock::time_point m_lastReport;
    ContentKey m_interimPrint;
    std::shared_ptr<const Holdings> m_interim;
};

}  // namespace matwright
