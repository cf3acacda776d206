// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <span>
#include <string>

#include "core/error/error.h"
#include "core/filestore/file_store.h"

namespace matwright {

// The sketch files of a selection in one zip archive, sub-folders kept, names in UTF-8. Equal files
// give equal bytes: entries are by name and all carry the date 1980-01-01 (the earliest a zip can
// say). Labels do not go along. Repeated paths count once.
// Errors: NotFound where none is chosen; those of reading for the first file that cannot be read;
// BadText for a name that is no UTF-8 (such a name has no place in a zip); WriteFailed where the
// archive cannot be made.
Result<std::string> zipOfSketches(FileStore& store, const std::filesystem::path& library,
                                  std::span<const std::string> sketches);
// The same into a file, replaced as a whole.
Result<void> exportZip(FileStore& store, const std::filesystem::path& library,
                       std::span<const std::string> sketches, const std::filesystem::path& zipFile);

}  // namespace matwright
