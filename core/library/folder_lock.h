// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <filesystem>
#include <optional>

#include "core/error/error.h"
#include "core/filestore/file_descriptor.h"

namespace matwright {

// The hidden folder inside a library: the lock, and the labels of the sketches. It makes a folder a
// library; deleting it loses the labels and nothing else.
inline constexpr const char* libraryHiddenFolder = ".matwright";

// The library a file or folder lies in: `path` itself or the nearest folder above it that has a
// hidden folder. Absolute; nothing where there is none. Links are not looked through.
std::optional<std::filesystem::path> libraryAround(const std::filesystem::path& path);

// Makes the hidden folder where it is missing. Errors: WriteFailed.
Result<void> makeLibrary(const std::filesystem::path& folder);

// As long as it lives, no other Matwright on this computer, and no other thread of this one,
// changes files of the library: whoever checks and then writes does both under it.
//
// It is a lock of the system (flock on ".matwright/lock"), which the system drops when a program
// ends in whatever way. Programs that do not know it (a file manager, a cloud drive, a Matwright on
// another computer) are not kept out. On a disk without such locks it keeps nobody out either.
class FolderLock {
  public:
    // Of the library around `path` or, outside of libraries, of the folder itself that `path` is
    // in; of `path` where that is a library. A folder that is not there has nothing to lock, which
    // is no error. Error: WriteFailed where somebody else holds it all the time.
    static Result<FolderLock> take(const std::filesystem::path& path,
                                   std::chrono::milliseconds patience = std::chrono::seconds(10));

    // The library it locks; nothing outside of libraries.
    const std::optional<std::filesystem::path>& library() const { return m_library; }

  private:
    FileDescriptor m_file;
    std::optional<std::filesystem::path> m_library;
};

}  // namespace matwright
