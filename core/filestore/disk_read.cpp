// SPDX-License-Identifier: MIT
#include <fcntl.h>
#include <sys/stat.h>

#include <algorithm>
#include <cerrno>

#include "core/filestore/file_descriptor.h"
#include "core/filestore/file_store.h"
#include "core/filestore/system_error.h"

namespace matwright {

namespace {

Error notAFile(mode_t mode, const std::filesystem::path& path) {
    return {ErrorCode::ReadFailed,
            S_ISDIR(mode) ? "This is a folder. Choose a file inside it."
                          : "This is a device or a pipe, not a file. Choose a file.",
            path.string()};
}

// Grows as the bytes come: the size the system states may be wrong (0 for some system files) or
// change while the file is read.
Result<std::string> readAll(int file, std::size_t expected, std::size_t limit,
                            const std::filesystem::path& path) {
    constexpr std::size_t step = 65'536;
    std::string bytes(std::min(std::max(expected, step), limit) + 1, '\0');
    std::size_t filled = 0;
    for (;;) {
        const ssize_t count = ::read(file, bytes.data() + filled, bytes.size() - filled);
        if (count < 0 && errno == EINTR) {
            continue;
        }
        if (count < 0) {
            return std::unexpected(readError(errno, path));
        }
        if (count == 0) {
            bytes.resize(filled);
            return bytes;
        }
        filled += static_cast<std::size_t>(count);
        if (filled > limit) {
            return std::unexpected(tooLargeError(limit, path));
        }
        if (filled == bytes.size()) {
            bytes.resize(std::min(filled * 2, limit + 1));
        }
    }
}

}  // namespace

Result<std::string> DiskFileStore::read(const std::filesystem::path& path, std::size_t limit) {
    struct stat facts = {};
    // Looked at before it is opened too: opening some devices already does something.
    if (::stat(path.c_str(), &facts) != 0) {
        return std::unexpected(readError(errno, path));
    }
    if (!S_ISREG(facts.st_mode)) {
        return std::unexpected(notAFile(facts.st_mode, path));
    }
    // Without O_NONBLOCK a pipe put in the file's place meanwhile would hold the program up.
    const FileDescriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY));
    if (!file.isOpen() || ::fstat(file.number(), &facts) != 0) {
        return std::unexpected(readError(errno, path));
    }
    if (!S_ISREG(facts.st_mode)) {
        return std::unexpected(notAFile(facts.st_mode, path));
    }
    const auto size = static_cast<std::size_t>(facts.st_size);
    if (size > limit) {
        return std::unexpected(tooLargeError(limit, path));
    }
    return readAll(file.number(), size, limit, path);
}

}  // namespace matwright
