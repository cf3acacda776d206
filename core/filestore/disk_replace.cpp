// SPDX-License-Identifier: MIT
#include <cerrno>
#include <cstdio>

#include "core/filestore/disk_writing.h"
#include "core/filestore/file_store.h"
#include "core/filestore/moving.h"
#include "core/filestore/system_error.h"

namespace matwright {

namespace {

SystemResult replaceInFolder(int folder, const std::string& name, std::string_view bytes,
                             const OldFile& old) {
    const auto temporary = writeTemporary(folder, name, bytes, old);
    if (!temporary) {
        return std::unexpected(temporary.error());
    }
    if (::renameat(folder, temporary->name.c_str(), folder, name.c_str()) != 0) {
        const int failure = errno;
        ::unlinkat(folder, temporary->name.c_str(), 0);
        return std::unexpected(failure);
    }
    // The new file is in its place and whole; some file systems cannot flush a folder, and there is
    // nothing left to undo.
    ::fsync(folder);
    return {};
}

SystemResult createInFolder(int folder, const std::string& name, std::string_view bytes) {
    const auto temporary = writeTemporary(folder, name, bytes, {});
    if (!temporary) {
        return std::unexpected(temporary.error());
    }
    const SystemResult moved = moveWithoutReplacing(folder, temporary->name, folder, name);
    if (!moved) {
        ::unlinkat(folder, temporary->name.c_str(), 0);
    }
    ::fsync(folder);
    return moved;
}

// Unlike the target of replace(), a link is not followed: it takes the name.
bool isTaken(const std::filesystem::path& path) {
    struct stat facts = {};
    return ::lstat(path.c_str(), &facts) == 0;
}

}  // namespace

Result<void> DiskFileStore::replace(const std::filesystem::path& path, std::string_view bytes) {
    const auto target = writeTargetOf(path);
    if (!target) {
        return std::unexpected(target.error());
    }
    const int folder = target->folder.number();
    const auto old = lookAt(folder, target->name);
    if (!old) {
        return std::unexpected(writeError(old.error(), path));
    }
    if (old->exists && !S_ISREG(old->facts.st_mode)) {
        return std::unexpected(notReplaceable(old->facts.st_mode, path));
    }
    if (const auto done = replaceInFolder(folder, target->name, bytes, *old); !done) {
        return std::unexpected(writeError(done.error(), path));
    }
    sweepLeftovers(folder, target->name);
    return {};
}

Result<bool> DiskFileStore::create(const std::filesystem::path& path, std::string_view bytes) {
    if (isTaken(path)) {
        return false;
    }
    const auto target = writeTargetOf(path);
    if (!target) {
        return std::unexpected(target.error());
    }
    const auto done = createInFolder(target->folder.number(), target->name, bytes);
    if (!done && done.error() == EEXIST) {
        return false;
    }
    if (!done) {
        return std::unexpected(writeError(done.error(), path));
    }
    sweepLeftovers(target->folder.number(), target->name);
    return true;
}

}  // namespace matwright
