// SPDX-License-Identifier: MIT
#pragma once

#include <sys/stat.h>

#include <expected>
#include <filesystem>
#include <string>
#include <string_view>

#include "core/error/error.h"
#include "core/filestore/file_descriptor.h"
#include "core/filestore/temporary_file.h"

namespace matwright {

// The steps that every way of writing a file on the disk is made of. Numbers are the system's.
using SystemResult = std::expected<void, int>;

// Where a path leads, links followed, so that a link stays and what it names is written. The file
// itself need not exist.
struct WriteTarget {
    FileDescriptor folder;
    std::filesystem::path folderPath;
    std::string name;  // inside the folder
};
// Errors: WriteFailed, `where` is the path.
Result<WriteTarget> writeTargetOf(const std::filesystem::path& path);

// What is kept of the file that is replaced.
struct OldFile {
    bool exists = false;
    struct stat facts = {};
};
// EACCES where the file may not be written: renaming over it would need no such permission.
std::expected<OldFile, int> lookAt(int folder, const std::string& name);
std::int64_t modifiedNanoseconds(const struct stat& facts);

// A temporary file with these bytes, flushed, with the owner and permissions of the old file. On
// failure nothing of it is left.
std::expected<TemporaryFile, int> writeTemporary(int folder, const std::string& name,
                                                 std::string_view bytes, const OldFile& old);

// The sentence for a target that is a folder, a device or a pipe.
Error notReplaceable(mode_t mode, const std::filesystem::path& path);

}  // namespace matwright
