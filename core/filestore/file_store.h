// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <filesystem>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "core/error/error.h"

namespace matwright {

// Whether these bytes of a file are the ones a caller knows.
using ExpectedBytes = std::function<bool(std::string_view)>;

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

    // As replace, but never over anything: false, with nothing changed, where the name is taken (by
    // a folder or by a link, even one that leads nowhere, too).
    virtual Result<bool> create(const std::filesystem::path& path, std::string_view bytes) = 0;

    // As replace, but only while the file holds what the caller thinks: `isExpected` is asked about
    // its bytes (perhaps more than once). False, with the file as it was, where they are others,
    // where it has more than `limit` bytes or where it is not to be read; NotFound where it is
    // gone.
    virtual Result<bool> replaceIf(const std::filesystem::path& path, std::size_t limit,
                                   const ExpectedBytes& isExpected, std::string_view bytes) = 0;
};

// The real disk (POSIX).
//
// create() cannot be raced by anybody (renameat2 with RENAME_NOREPLACE, else a hard link); on a
// disk that has neither, what comes between its last look and its rename is overwritten.
//
// replaceIf() changes places with the old file (renameat2 with RENAME_EXCHANGE) and looks at it
// again: what another program wrote between the first look and the exchange is noticed and put
// back. Only what such a program does within the few microseconds until it is put back meets a file
// that is not its own. On a disk that cannot exchange (NFS, some network and FUSE disks), what is
// written in the microseconds between the last look and the rename is overwritten. A program
// killed in between leaves the old file beside the new one, hidden; see displaced_file.h.
class DiskFileStore final : public FileStore {
  public:
    Result<std::string> read(const std::filesystem::path& path, std::size_t limit) override;
    Result<void> replace(const std::filesystem::path& path, std::string_view bytes) override;
    Result<bool> create(const std::filesystem::path& path, std::string_view bytes) override;
    Result<bool> replaceIf(const std::filesystem::path& path, std::size_t limit,
                           const ExpectedBytes& isExpected, std::string_view bytes) override;
};

// In memory, for tests; `failReplacesWith` makes every write fail.
class MemoryFileStore final : public FileStore {
  public:
    Result<std::string> read(const std::filesystem::path& path, std::size_t limit) override;
    Result<void> replace(const std::filesystem::path& path, std::string_view bytes) override;
    Result<bool> create(const std::filesystem::path& path, std::string_view bytes) override;
    Result<bool> replaceIf(const std::filesystem::path& path, std::size_t limit,
                           const ExpectedBytes& isExpected, std::string_view bytes) override;

    std::map<std::filesystem::path, std::string> files;
    std::optional<Error> failReplacesWith;
};

}  // namespace matwright
