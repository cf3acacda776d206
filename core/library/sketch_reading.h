// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>

#include "core/filestore/file_store.h"
#include "core/library/index_rows.h"

namespace matwright {

// Now, since 1970 UTC.
std::int64_t nowNanoseconds();
// The file's signature as it is now, links followed; nothing where it is not there.
std::optional<FileSignature> signatureOf(const std::filesystem::path& file);

struct IndexReading {
    IndexedSketch row;
    // Its content is the known one: the row has a signature and a content and nothing else.
    bool isKnownContent = false;
};
// Reads one scanned file for the index. Where its content is still `known`, nothing is worked out
// again. A file that is no readable sketch gives a row with a problem. Nothing where the file is
// gone by now.
std::optional<IndexReading> readForIndex(FileStore& store, const std::filesystem::path& library,
                                         const ScannedFile& file,
                                         const std::optional<ContentKey>& known);

// What is wrong, as one sentence without the file's name.
std::string problemSentence(const Error& error, const std::filesystem::path& file);

}  // namespace matwright
