// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/database/sqlite_database.h"
#include "core/filestore/file_descriptor.h"
#include "core/library/index_rows.h"

namespace matwright {

// The index file, open for as long as one look or one update takes. A file of another format or a
// damaged one is made anew, unless another program has it open. Rows carry a checksum; damaged ones
// are left out when they are loaded, so that they are read from the folder again.
//
// Where the file cannot be opened, read or written, trouble() says so in one sentence and from then
// on nothing is written; the caller goes on with the rows it has.
class IndexFile {
  public:
    // Makes the folder where it is missing.
    explicit IndexFile(const std::filesystem::path& file);

    // All rows, without traits.
    IndexRows load();

    // Adds or replaces rows, and forgets others, all or nothing. After a success the rows' traits
    // stand in the file only.
    using SketchRow = std::pair<const std::string, IndexedSketch>;
    using LabelRow = std::pair<const std::string, IndexedLabels>;
    struct Changes {
        std::vector<SketchRow*> sketches;
        std::vector<LabelRow*> labels;
        std::vector<std::string> goneSketches;
        std::vector<std::string> goneLabels;
        bool empty() const;
    };
    void write(const Changes& changes);

    // The family traits kept for a sketch, as bytes; empty where there are none.
    std::string traitsOf(std::string_view path);

    const std::string& trouble() const { return m_trouble; }

  private:
    bool open(const std::filesystem::path& file);
    bool prepare();
    bool makeAnew(const std::filesystem::path& file);
    bool loadSketches(IndexRows& rows);
    bool loadLabels(IndexRows& rows);
    bool writeAll(const Changes& changes);
    bool writeSketches(const std::vector<SketchRow*>& rows);
    bool writeLabels(const std::vector<LabelRow*>& rows);
    void setTrouble(std::string_view what);

    std::filesystem::path m_file;
    // Shared while the file is open; whoever makes it anew holds it alone.
    FileDescriptor m_lock;
    std::unique_ptr<SqliteDatabase> m_database;
    std::string m_trouble;
};

}  // namespace matwright
