// SPDX-License-Identifier: MIT
#include "core/library/trash.h"

#include <fcntl.h>
#include <fmt/chrono.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <system_error>

#include "core/filestore/file_descriptor.h"
#include "core/filestore/moving.h"
#include "core/library/trash_can.h"

namespace matwright {

namespace {

namespace fs = std::filesystem;

Error notTrashed(int number, const fs::path& file) {
    if (number == ENOENT) {
        return {ErrorCode::NotFound,
                "There is no such file; somebody may have moved or removed it already.",
                file.string()};
    }
    const bool isForbidden = number == EACCES || number == EPERM || number == EROFS;
    return {ErrorCode::WriteFailed,
            isForbidden
                ? std::string("The file was left where it is: you are not allowed to take it out "
                              "of its folder, or its disk has no trash you may write to. Change "
                              "the permissions, or move it by hand.")
                : fmt::format("The file was left where it is: the trash could not take it ({}). "
                              "Try again, or move it by hand.",
                              std::generic_category().message(number)),
            file.string()};
}

// The folder is resolved, the file itself is not: a link is moved as a link.
std::expected<fs::path, int> realPlace(const fs::path& file) {
    std::error_code failure;
    const fs::path folder = fs::canonical(fs::absolute(file).parent_path(), failure);
    struct stat facts = {};
    if (failure || ::lstat(file.c_str(), &facts) != 0) {
        return std::unexpected(failure ? failure.value() : errno);
    }
    return folder / file.filename();
}

std::expected<fs::path, int> moveIntoCan(const fs::path& file, const TrashCan& can,
                                         const TrashPlaces& places) {
    const FileDescriptor from(
        ::open(file.parent_path().c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    const FileDescriptor to(::open(can.files().c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (!from.isOpen() || !to.isOpen()) {
        return std::unexpected(errno);
    }
    constexpr int mostNames = 100'000;
    for (int number = 1; number < mostNames; ++number) {
        const std::string name = trashName(file.filename().string(), number);
        const auto info = makeTrashInfo(can, name, file, places.now);
        if (!info && info.error() == EEXIST) {
            continue;
        }
        if (!info) {
            return std::unexpected(info.error());
        }
        const auto moved =
            moveWithoutReplacing(from.number(), file.filename().string(), to.number(), name);
        if (moved) {
            return can.files() / name;
        }
        ::unlink(info->c_str());
        if (moved.error() != EEXIST) {
            return std::unexpected(moved.error());
        }
    }
    return std::unexpected(EEXIST);
}

}  // namespace

TrashPlaces ownTrashPlaces() {
    const char* data = std::getenv("XDG_DATA_HOME");
    const char* home = std::getenv("HOME");
    TrashPlaces places;
    if (data != nullptr && fs::path(data).is_absolute()) {
        places.dataHome = data;
    } else if (home != nullptr) {
        places.dataHome = fs::path(home) / ".local/share";
    }
    places.user = ::getuid();
    places.now = std::time(nullptr);
    return places;
}

Result<TrashedFile> moveToTrash(const fs::path& file, const TrashPlaces& places) {
    const auto place = realPlace(file);
    if (!place) {
        return std::unexpected(notTrashed(place.error(), file));
    }
    int failure = EACCES;
    for (const TrashCan& can : trashCansFor(*place, places)) {
        const auto moved = makeFolders(can) ? moveIntoCan(*place, can, places)
                                            : std::expected<fs::path, int>(std::unexpected(errno));
        if (moved) {
            return TrashedFile{*place, *moved, can.infoFileOf(moved->filename().string())};
        }
        failure = moved.error();
    }
    return std::unexpected(notTrashed(failure, file));
}

Result<bool> restoreFromTrash(const TrashedFile& trashed, const fs::path& to) {
    std::error_code ignored;
    fs::create_directories(to.parent_path(), ignored);
    const FileDescriptor from(
        ::open(trashed.file.parent_path().c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    const FileDescriptor back(::open(to.parent_path().c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    const auto moved = from.isOpen() && back.isOpen()
                           ? moveWithoutReplacing(from.number(), trashed.file.filename().string(),
                                                  back.number(), to.filename().string())
                           : std::expected<void, int>(std::unexpected(errno));
    if (!moved && moved.error() == EEXIST) {
        return false;
    }
    if (!moved && moved.error() == ENOENT) {
        return std::unexpected(Error{ErrorCode::NotFound,
                                     "The file is not in the trash any more. Look for it there "
                                     "under another name, or in a backup.",
                                     to.string()});
    }
    if (!moved) {
        return std::unexpected(
            Error{ErrorCode::WriteFailed,
                  fmt::format("The file was left in the trash: it could not be put back ({}). Take "
                              "it out by hand.",
                              std::generic_category().message(moved.error())),
                  to.string()});
    }
    ::unlink(trashed.info.c_str());
    return true;
}

}  // namespace matwright
