// SPDX-License-Identifier: MIT
#pragma once

#include <sys/stat.h>

#include <filesystem>
#include <optional>
#include <string>

#include "core/content/content_key.h"
#include "core/error/error.h"
#include "core/filestore/file_descriptor.h"
#include "core/photo/photo_format.h"

namespace matwright {

// A photo's file, open for reading, and how it was when it was opened. Everything that is read of a
// photo goes through one of these, so that all of it is of the same file.
class PhotoFile {
  public:
    // Never waits for a pipe or device and never opens one. Errors: NotFound, ReadFailed (not
    // allowed, a folder, a device, a faulty disk), WrongFormat.
    static Result<PhotoFile> open(const std::filesystem::path& path);

    const std::filesystem::path& path() const { return m_path; }
    PhotoFormat format() const { return m_format; }
    std::uintmax_t bytes() const { return static_cast<std::uintmax_t>(m_state.st_size); }
    // The open file, at its beginning; it stays this object's.
    Result<int> rewound() const;

    // Of the whole file, read in pieces.
    Result<ContentKey> content() const;
    // NotFound where it holds another picture than the one once known; nothing where `known` is all
    // zero, which is the picture of no file.
    std::optional<Error> findOther(const ContentKey& known) const;
    // All of it, at most `limit` bytes (TooLarge above).
    Result<std::string> contents(std::size_t limit) const;

    // ReadFailed where the file has been written to, or another has taken its place, since it was
    // opened: what was read may be half of each.
    std::optional<Error> findChange() const;

  private:
    PhotoFile(std::filesystem::path path, FileDescriptor file, const struct stat& state,
              PhotoFormat format);

    std::filesystem::path m_path;
    FileDescriptor m_file;
    struct stat m_state;
    PhotoFormat m_format;
};

}  // namespace matwright
