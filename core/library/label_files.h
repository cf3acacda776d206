// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "core/error/error.h"
#include "core/filestore/file_store.h"
#include "core/library/label_record.h"

namespace matwright {

// The files behind label_store.h. Callers hold the library's lock where they write.

// One file of a record. `record.sketch` may name another sketch than the file's name does.
struct LabelFile {
    std::filesystem::path file;
    std::string bytes;
    LabelRecord record;
};

// Nothing where there is no such file. Errors: those of reading and of readLabelRecord, `where` is
// the file.
Result<std::optional<LabelFile>> readLabelFile(FileStore& store, const std::filesystem::path& file);

// Every file that holds or may hold a record, in no order.
std::vector<std::filesystem::path> allLabelFiles(const std::filesystem::path& library);

// What the library keeps about a sketch.
struct FoundLabels {
    std::vector<LabelFile> files;  // of these, the first is the sketch's own where it has one
    std::optional<Error> broken;   // why the sketch's own file cannot be read
};
// By path: the sketch's own file and what a cloud drive put beside it. Error: NewerVersion where
// one of them is.
Result<FoundLabels> labelsByPath(FileStore& store, const std::filesystem::path& library,
                                 const std::string& sketch);
// By content: a record whose own sketch is not on the disk.
std::optional<LabelFile> orphanWith(FileStore& store, const std::filesystem::path& library,
                                    ContentKey content);
// By path, else by content.
Result<FoundLabels> labelsOnDisk(FileStore& store, const std::filesystem::path& library,
                                 const std::string& sketch, ContentKey content);

// Writes the record of record.sketch where it belongs, keeping what `found` has of unknown members,
// and then removes the other files of `found`. A broken file of its own is renamed before.
Result<void> writeLabels(FileStore& store, const std::filesystem::path& library,
                         const LabelRecord& record, const FoundLabels& found);

// Takes a record out of its sketch's way: the sketch of that path is another one by now. It is kept
// for the sketch with its content, should that come back.
void setLabelsAside(FileStore& store, const std::filesystem::path& library, const LabelFile& file);

}  // namespace matwright
