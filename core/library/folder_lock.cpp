// SPDX-License-Identifier: MIT
#include "core/library/folder_lock.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>

#include <cerrno>
#include <thread>

#include "core/filestore/system_error.h"

namespace matwright {

namespace {

namespace fs = std::filesystem;

enum class FlockOutcome { Held, Busy, NotKnownHere };

FlockOutcome tryFlock(int file) {
    for (;;) {
        if (::flock(file, LOCK_EX | LOCK_NB) == 0) {
            return FlockOutcome::Held;
        }
        if (errno == EWOULDBLOCK) {
            return FlockOutcome::Busy;
        }
        if (errno != EINTR) {
            return FlockOutcome::NotKnownHere;
        }
    }
}

// Of a library its lock file; of any other folder, and where the lock file cannot be opened, the
// folder itself.
FileDescriptor openToLock(const fs::path& folder, bool isLibrary) {
    if (isLibrary) {
        const fs::path file = folder / libraryHiddenFolder / "lock";
        FileDescriptor made(
            ::open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK, 0666));
        if (made.isOpen()) {
            return made;
        }
        FileDescriptor opened(::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK));
        if (opened.isOpen()) {
            return opened;
        }
    }
    return FileDescriptor(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
}

// Whoever deletes the hidden folder must not leave two programs with a lock each.
bool isStillLinked(int file) {
    struct stat facts = {};
    return ::fstat(file, &facts) == 0 && facts.st_nlink > 0;
}

}  // namespace

std::optional<fs::path> libraryAround(const fs::path& path) {
    std::error_code failure;
    fs::path folder = fs::absolute(path, failure).lexically_normal();
    while (!failure && !folder.empty()) {
        if (fs::is_directory(folder / libraryHiddenFolder, failure)) {
            return folder;
        }
        failure.clear();
        const fs::path above = folder.parent_path();
        if (above == folder) {
            break;
        }
        folder = above;
    }
    return std::nullopt;
}

Result<void> makeLibrary(const fs::path& folder) {
    std::error_code failure;
    fs::create_directories(folder / libraryHiddenFolder, failure);
    if (failure) {
        return std::unexpected(
            Error{ErrorCode::WriteFailed,
                  "The library's hidden folder cannot be made. Check that you may write in this "
                  "folder, or choose another one as your library.",
                  folder.string()});
    }
    return {};
}

Result<FolderLock> FolderLock::take(const fs::path& path, std::chrono::milliseconds patience) {
    FolderLock lock;
    lock.m_library = libraryAround(path);
    std::error_code ignored;
    const fs::path folder = lock.m_library                    ? *lock.m_library
                            : fs::is_directory(path, ignored) ? path
                            : path.has_parent_path()          ? path.parent_path()
                                                              : fs::path(".");
    const auto end = std::chrono::steady_clock::now() + patience;
    for (;;) {
        lock.m_file = openToLock(folder, lock.m_library.has_value());
        if (!lock.m_file.isOpen()) {
            return lock;
        }
        const FlockOutcome outcome = tryFlock(lock.m_file.number());
        const bool isCurrent = isStillLinked(lock.m_file.number());
        if (outcome != FlockOutcome::Busy && isCurrent) {
            return lock;
        }
        if (std::chrono::steady_clock::now() >= end) {
            return std::unexpected(
                Error{ErrorCode::WriteFailed,
                      "Another window or program is busy with this folder, so nothing was "
                      "changed. Wait a moment and try again.",
                      path.string()});
        }
        std::this_thread::sleep_for(std::chrono::milliseconds(1));
    }
}

}  // namespace matwright
