// SPDX-License-Identifier: MIT
#include "core/filestore/displaced_file.h"

#include <fmt/format.h>
#include <sys/stat.h>

#include <algorithm>
#include <optional>
#include <random>

#include "core/filestore/disk_writing.h"

namespace matwright {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view keptMiddle = ".matwright-";
constexpr std::string_view keptEnd = ".kept";
constexpr std::size_t keptMarkDigits = 16 + 1 + 16;  // of the replaced file
constexpr std::size_t keptRandomDigits = 1 + 8;
constexpr std::size_t keptTail =
    keptMiddle.size() + keptMarkDigits + keptRandomDigits + keptEnd.size();
constexpr std::size_t longestKeptTarget = 150;

bool isInsideCharacter(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0) == 0x80;
}

std::string_view cutShort(std::string_view name) {
    std::size_t length = std::min(name.size(), longestKeptTarget);
    while (length > 0 && length < name.size() && isInsideCharacter(name[length])) {
        --length;
    }
    return name.substr(0, length);
}

std::optional<std::string> targetIn(const std::string& name) {
    if (!name.starts_with('.') || !name.ends_with(keptEnd) || name.size() <= keptTail + 1) {
        return std::nullopt;
    }
    const std::string rest = name.substr(name.size() - keptTail);
    return rest.starts_with(keptMiddle) ? std::optional(name.substr(1, name.size() - keptTail - 1))
                                        : std::nullopt;
}

std::string markOf(std::uint64_t inode, std::int64_t modified) {
    return fmt::format("{:016x}-{:016x}", inode, static_cast<std::uint64_t>(modified));
}

}  // namespace

std::string displacedName(std::string_view targetName, std::uint64_t inode, std::int64_t modified) {
    return fmt::format(".{}{}{}-{:08x}{}", cutShort(targetName), keptMiddle,
                       markOf(inode, modified), std::random_device()(), keptEnd);
}

std::vector<DisplacedFile> displacedFiles(const fs::path& folder) {
    std::vector<DisplacedFile> found;
    std::error_code failure;
    for (fs::directory_iterator it(folder, failure), last; !failure && it != last;
         it.increment(failure)) {
        const std::string name = it->path().filename().string();
        const auto target = targetIn(name);
        struct stat facts = {};
        if (!target || ::lstat(it->path().c_str(), &facts) != 0 || !S_ISREG(facts.st_mode)) {
            continue;
        }
        const std::string mark = markOf(facts.st_ino, modifiedNanoseconds(facts));
        const bool isReplaced =
            name.substr(name.size() - keptTail + keptMiddle.size(), keptMarkDigits) == mark;
        found.push_back({it->path(), *target, isReplaced});
    }
    std::ranges::sort(found, {}, &DisplacedFile::path);
    return found;
}

}  // namespace matwright
