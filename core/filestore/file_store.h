// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "core/error/error.h"

namespace matwright {

// Where files are read and written. One interface so that tests can use memory, or fail on demand.
class FileStore {
  public:
    virtual ~FileStore() = default;

    // The whole file, or an Error: NotFound, ReadFailed, TooLarge when it has more than `limit`
    // bytes (then nothing past the limit is read).
    virtual Result<std::string> read(const std::filesystem::path& path, std::size_t limit) = 0;

    // Replaces the file as a whole: writes a temporary file in the same folder, flushes it to the
    // disk, renames it over `path` and flushes the folder. After a crash at any moment `path` holds
    // the old or the new bytes, whole. On error (WriteFailed: full disk, no permission, no folder)
    // the old file is untouched and the temporary file is removed. A link is followed: what it
    // names is replaced.
    virtual Result<void> replace(const std::filesystem::path& path, std::string_view bytes) = 0;
};

// The real disk (POSIX).
class DiskFileStore final : public FileStore {
  public:
    Result<std::string> read(const std::filesystem::path& path, std::size_t limit) override;
    Result<void> replace(const std::filesystem::path& path, std::string_view bytes) override;
};

// In memory, for tests; `failReplacesWith` makes every replace fail.
class MemoryFileStore final : public FileStore {
  public:
    Result<std::string> read(const std::filesystem::path& path, std::size_t limit) override;
    Result<void> replace(const std::filesystem::path& path, std::string_view bytes) override;

    std::map<std::filesystem::path, std::string> files;
    std::optional<Error> failReplacesWith;
};

}  // namespace matwright
