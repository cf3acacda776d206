// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <functional>
#include <span>
#include <stop_token>
#include <string>
#include <string_view>
#include <vector>

#include "core/error/error.h"
#include "core/filestore/file_store.h"
#include "core/library/label_store.h"

namespace matwright {

enum class ImportOutcome {
    Imported,
    AlreadyThere,  // the library has this very content; `sketch` is where
    NotASketch,    // a file without the suffix of sketch files, or no sketch inside
    Unreadable,    // the system did not let it be read
    NotWritten,    // it could not be written into the library
};

struct ImportedFile {
    std::filesystem::path source;
    ImportOutcome outcome = ImportOutcome::NotASketch;
    std::string sketch;  // in the library; empty where there is none
    // One sentence, for all but a plain import: what happened and why.
    std::string said;
};

struct ImportReport {
    std::vector<ImportedFile> files;  // in the order they were met
    bool cancelled = false;           // what was imported so far stays

    int count(ImportOutcome outcome) const;
};

struct ImportOptions {
    std::string intoFolder;  // of the library; made where it is missing
    // All sketches the library has, as the index knows them: same content is not taken twice. What
    // the list says is looked at on disk before it is believed.
    std::span<const KeyedSketch> known;
    std::stop_token stop;
    std::function<void(std::size_t)> progress;  // files done so far
};

// Copies sketch files into a library. A source is a file, or a folder: then all sketch files below
// it come along, in a sub-folder of that name with its own sub-folders kept; other files in it are
// passed over without a word. Files that are no sketches, or not readable ones, stay outside; each
// is named. Bytes are taken as they are. A taken name gets a number; nothing is overwritten, and
// nothing outside the library is changed.
// Errors: BadText for the folder, WriteFailed where the library cannot be locked.
Result<ImportReport> importSketches(FileStore& store, const std::filesystem::path& library,
                                    std::span<const std::filesystem::path> sources,
                                    const ImportOptions& options = {});

}  // namespace matwright
