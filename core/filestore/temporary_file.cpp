// SPDX-License-Identifier: MIT
#include "core/filestore/temporary_file.h"

#include <dirent.h>
#include <fcntl.h>
#include <fmt/format.h>
#include <sys/file.h>
#include <sys/stat.h>

#include <algorithm>
#include <cerrno>
#include <cstdint>
#include <memory>
#include <random>
#include <vector>

namespace matwright {

namespace {

constexpr std::string_view suffix = ".part";
constexpr std::size_t randomDigits = 16;
constexpr std::size_t longestNamePart = 180;  // file systems allow 255 bytes for the whole

std::string prefixFor(std::string_view targetName) {
    std::size_t length = std::min(targetName.size(), longestNamePart);
    // Not in the middle of a character: some file systems take whole UTF-8 only.
    while (length > 0 && length < targetName.size() &&
           (static_cast<unsigned char>(targetName[length]) & 0xC0) == 0x80) {
        --length;
    }
    return fmt::format(".{}.matwright-", targetName.substr(0, length));
}

std::uint64_t randomNumber() {
    std::random_device device;
    return std::uint64_t{device()} << 32 | device();
}

bool isStillThere(int file) {
    struct stat facts = {};
    return ::fstat(file, &facts) == 0 && facts.st_nlink > 0;
}

bool isLeftover(int file) {
    struct stat facts = {};
    return ::fstat(file, &facts) == 0 && S_ISREG(facts.st_mode) &&
           ::flock(file, LOCK_EX | LOCK_NB) == 0;
}

std::vector<std::string> temporaryNames(int folder, std::string_view targetName) {
    std::vector<std::string> names;
    FileDescriptor again(::openat(folder, ".", O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (!again.isOpen()) {
        return names;
    }
    const std::unique_ptr<DIR, int (*)(DIR*)> listing(::fdopendir(again.number()), ::closedir);
    if (!listing) {
        return names;
    }
    again.release();
    while (const dirent* entry = ::readdir(listing.get())) {
        if (isTemporaryNameOf(entry->d_name, targetName)) {
            names.emplace_back(entry->d_name);
        }
    }
    return names;
}

}  // namespace

std::expected<TemporaryFile, int> createTemporaryFile(int folder, std::string_view targetName,
                                                      unsigned permissions) {
    constexpr int attempts = 100;
    for (int attempt = 0; attempt < attempts; ++attempt) {
        const std::string name =
            fmt::format("{}{:016x}{}", prefixFor(targetName), randomNumber(), suffix);
        const int number =
            ::openat(folder, name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW,
                     static_cast<mode_t>(permissions));
        if (number < 0 && errno == EEXIST) {
            continue;
        }
        if (number < 0) {
            return std::unexpected(errno);
        }
        TemporaryFile made{FileDescriptor(number), name};
        // A file system without locks is no reason not to save: sweeping leaves files alone there.
        static_cast<void>(::flock(made.file.number(), LOCK_EX));
        // Another save may have swept it between its creation and the lock.
        if (isStillThere(made.file.number())) {
            return made;
        }
    }
    return std::unexpected(EEXIST);
}

bool isTemporaryNameOf(std::string_view fileName, std::string_view targetName) {
    const std::string prefix = prefixFor(targetName);
    if (fileName.size() != prefix.size() + randomDigits + suffix.size() ||
        !fileName.starts_with(prefix) || !fileName.ends_with(suffix)) {
        return false;
    }
    return std::ranges::all_of(fileName.substr(prefix.size(), randomDigits), [](char c) {
        return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
    });
}

int sweepLeftovers(int folder, std::string_view targetName) {
    int removed = 0;
    for (const std::string& name : temporaryNames(folder, targetName)) {
        const FileDescriptor file(::openat(
            folder, name.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK | O_NOCTTY));
        if (file.isOpen() && isLeftover(file.number()) &&
            ::unlinkat(folder, name.c_str(), 0) == 0) {
            ++removed;
        }
    }
    return removed;
}

}  // namespace matwright
