// SPDX-License-Identifier: MIT
#include "core/library/trash_can.h"

#include <fcntl.h>
#include <fmt/chrono.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>

#include "core/filestore/file_descriptor.h"
#include "core/library/names.h"

namespace matwright {

namespace {

namespace fs = std::filesystem;

struct MountNumber {
    unsigned major = 0;
    unsigned minor = 0;
    std::uint64_t mount = 0;
    bool operator==(const MountNumber&) const = default;
};

// Of the folder, or of the nearest one above it that is there.
MountNumber mountOf(fs::path folder) {
    struct statx facts = {};
    while (::statx(AT_FDCWD, folder.c_str(), 0, STATX_BASIC_STATS | STATX_MNT_ID, &facts) != 0) {
        if (folder == folder.parent_path()) {
            return {};
        }
        folder = folder.parent_path();
    }
    return {facts.stx_dev_major, facts.stx_dev_minor,
            (facts.stx_mask & STATX_MNT_ID) != 0 ? facts.stx_mnt_id : 0};
}

bool isOwnFolder(const fs::path& folder) {
    struct stat facts = {};
    return ::lstat(folder.c_str(), &facts) == 0 && S_ISDIR(facts.st_mode);
}

// "$topdir/.Trash" counts only where it is a folder, no link, and has the sticky bit: else its
// owner could take away what others put there.
bool isSharedTrash(const fs::path& folder) {
    struct stat facts = {};
    return ::lstat(folder.c_str(), &facts) == 0 && S_ISDIR(facts.st_mode) &&
           (facts.st_mode & S_ISVTX) != 0;
}

bool makePrivateFolder(const fs::path& folder) {
    constexpr mode_t ownerOnly = 0700;
    if (::mkdir(folder.c_str(), ownerOnly) != 0 && errno != EEXIST) {
        return false;
    }
    if (!isOwnFolder(folder)) {
        errno = ENOTDIR;
        return false;
    }
    return true;
}

std::string informationText(const TrashCan& can, const fs::path& file, std::time_t now) {
    const fs::path told = can.top.empty() ? file : file.lexically_relative(can.top);
    return fmt::format("[Trash Info]\nPath={}\nDeletionDate={:%Y-%m-%dT%H:%M:%S}\n",
                       escapedPath(told.string()), fmt::localtime(now));
}

bool writeWhole(int file, std::string_view text) {
    return ::write(file, text.data(), text.size()) == static_cast<ssize_t>(text.size()) &&
           ::fsync(file) == 0;
}

std::string_view cutAtCharacter(std::string_view text, std::size_t most) {
    std::size_t length = std::min(text.size(), most);
    while (length > 0 && length < text.size() &&
           (static_cast<unsigned char>(text[length]) & 0xC0) == 0x80) {
        --length;
    }
    return text.substr(0, length);
}

}  // namespace

std::vector<TrashCan> trashCansFor(const fs::path& file, const TrashPlaces& places) {
    const fs::path folder = file.parent_path();
    if (!places.dataHome.empty() && mountOf(folder) == mountOf(places.dataHome)) {
        return {{places.dataHome / "Trash", {}}};
    }
    const fs::path top = topOfMount(folder);
    std::vector<TrashCan> cans;
    if (isSharedTrash(top / ".Trash")) {
        cans.push_back({top / ".Trash" / fmt::to_string(places.user), top});
    }
    cans.push_back({top / fmt::format(".Trash-{}", places.user), top});
    return cans;
}

fs::path topOfMount(const fs::path& folder) {
    const MountNumber mount = mountOf(folder);
    fs::path top = folder;
    while (top != top.parent_path() && mountOf(top.parent_path()) == mount) {
        top = top.parent_path();
    }
    return top;
}

bool makeFolders(const TrashCan& can) {
    if (can.top.empty()) {
        std::error_code ignored;
        fs::create_directories(can.folder.parent_path(), ignored);
    }
    return makePrivateFolder(can.folder) && makePrivateFolder(can.folder / "files") &&
           makePrivateFolder(can.folder / "info");
}

std::string trashName(const std::string& name, int number) {
    constexpr std::string_view informationSuffix = ".trashinfo";
    const std::size_t point = name.find('.', 1);
    std::string_view stem = std::string_view(name).substr(0, point);
    std::string_view extension = std::string_view(name).substr(stem.size());
    const std::string count = number > 1 ? fmt::format(" ({})", number) : std::string();
    const std::size_t room = maxFileNameBytes - informationSuffix.size() - count.size();
    // A name of one long extension is cut there.
    extension = cutAtCharacter(extension, room - std::min(room, std::size_t{1}));
    stem = cutAtCharacter(stem, room - extension.size());
    return std::string(stem) + count + std::string(extension);
}

std::expected<fs::path, int> makeTrashInfo(const TrashCan& can, const std::string& name,
                                           const fs::path& file, std::time_t now) {
    constexpr mode_t ownerOnly = 0600;
    fs::path info = can.infoFileOf(name);
    const FileDescriptor made(
        ::open(info.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, ownerOnly));
    if (!made.isOpen()) {
        return std::unexpected(errno);
    }
    if (!writeWhole(made.number(), informationText(can, file, now))) {
        const int failure = errno;
        ::unlink(info.c_str());
        return std::unexpected(failure);
    }
    return info;
}

std::string escapedPath(std::string_view path) {
    constexpr std::string_view plain = "-_.!~*'()/";
    std::string text;
    for (const char c : path) {
        const bool isAlphanumeric =
            (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
        if (isAlphanumeric || plain.find(c) != std::string_view::npos) {
            text += c;
        } else {
            text += fmt::format("%{:02X}", static_cast<unsigned char>(c));
        }
    }
    return text;
}

}  // namespace matwright
