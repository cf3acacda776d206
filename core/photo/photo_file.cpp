// SPDX-License-Identifier: MIT
#include "core/photo/photo_file.h"

#include <fcntl.h>

#include <array>
#include <cerrno>
#include <utility>
#include <vector>

#include "core/filestore/system_error.h"

namespace matwright {

namespace {

std::optional<Error> findNoFile(const struct stat& state, const std::filesystem::path& path) {
    if (S_ISREG(state.st_mode)) {
        return std::nullopt;
    }
    return Error{ErrorCode::ReadFailed,
                 S_ISDIR(state.st_mode) ? "This is a folder. Choose a photo inside it."
                                        : "This is a device or a pipe, not a file. Choose a photo.",
                 path.string()};
}

// Reads up to `count` bytes from `at` on; fewer only at the end of the file.
Result<std::size_t> readAt(int file, char* to, std::size_t count, std::size_t at,
                           const std::filesystem::path& path) {
    std::size_t filled = 0;
    while (filled < count) {
        const ssize_t got =
            ::pread(file, to + filled, count - filled, static_cast<off_t>(at + filled));
        if (got < 0 && errno != EINTR) {
            return std::unexpected(readError(errno, path));
        }
        if (got == 0) {
            break;
        }
        filled += got > 0 ? static_cast<std::size_t>(got) : 0;
    }
    return filled;
}

bool isSameState(const struct stat& a, const struct stat& b) {
    return a.st_dev == b.st_dev && a.st_ino == b.st_ino && a.st_size == b.st_size &&
           a.st_mtim.tv_sec == b.st_mtim.tv_sec && a.st_mtim.tv_nsec == b.st_mtim.tv_nsec;
}

}  // namespace

PhotoFile::PhotoFile(std::filesystem::path path, FileDescriptor file, const struct stat& state,
                     PhotoFormat format)
    : m_path(std::move(path)), m_file(std::move(file)), m_state(state), m_format(format) {}

Result<PhotoFile> PhotoFile::open(const std::filesystem::path& path) {
    struct stat state = {};
    // Looked at before it is opened too: opening some devices already does something.
    if (::stat(path.c_str(), &state) != 0) {
        return std::unexpected(readError(errno, path));
    }
    if (auto error = findNoFile(state, path)) {
        return std::unexpected(*std::move(error));
    }
    FileDescriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY));
    if (!file.isOpen() || ::fstat(file.number(), &state) != 0) {
        return std::unexpected(readError(errno, path));
    }
    if (auto error = findNoFile(state, path)) {
        return std::unexpected(*std::move(error));
    }
    std::array<char, formatBytes> first{};
    const auto count = readAt(file.number(), first.data(), first.size(), 0, path);
    if (!count) {
        return std::unexpected(count.error());
    }
    const auto format = formatOf({first.data(), *count}, path);
    if (!format) {
        return std::unexpected(format.error());
    }
    return PhotoFile(path, std::move(file), state, *format);
}

Result<int> PhotoFile::rewound() const {
    if (::lseek(m_file.number(), 0, SEEK_SET) != 0) {
        return std::unexpected(readError(errno, m_path));
    }
    return m_file.number();
}

Result<ContentKey> PhotoFile::content() const {
    ContentHash hash;
    std::vector<char> piece(std::size_t{1} << 20U);
    std::size_t at = 0;
    for (;;) {
        const auto count = readAt(m_file.number(), piece.data(), piece.size(), at, m_path);
        if (!count) {
            return std::unexpected(count.error());
        }
        hash.add({piece.data(), *count});
        at += *count;
        if (*count < piece.size()) {
            return hash.key();
        }
    }
}

std::optional<Error> PhotoFile::findOther(const ContentKey& known) const {
    if (known == ContentKey{}) {
        return std::nullopt;
    }
    const auto held = content();
    if (!held) {
        return held.error();
    }
    if (*held == known) {
        return std::nullopt;
    }
    return Error{ErrorCode::NotFound,
                 "This file holds another picture now, and the crop was made for the one before. "
                 "Put the photo back, or show where it is.",
                 m_path.string()};
}

Result<std::string> PhotoFile::contents(std::size_t limit) const {
    if (bytes() > limit) {
        return std::unexpected(tooLargeError(limit, m_path));
    }
    std::string all(static_cast<std::size_t>(bytes()), '\0');
    const auto count = readAt(m_file.number(), all.data(), all.size(), 0, m_path);
    if (!count) {
        return std::unexpected(count.error());
    }
    all.resize(*count);
    return all;
}

std::optional<Error> PhotoFile::findChange() const {
    struct stat open = {};
    struct stat there = {};
    if (::fstat(m_file.number(), &open) == 0 && ::stat(m_path.c_str(), &there) == 0 &&
        isSameState(open, m_state) && isSameState(there, m_state)) {
        return std::nullopt;
    }
    return Error{ErrorCode::ReadFailed,
                 "The photo was changed by another program while it was read. Wait until that has "
                 "finished, then try again.",
                 m_path.string()};
}

}  // namespace matwright
