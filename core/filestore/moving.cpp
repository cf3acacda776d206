// SPDX-License-Identifier: MIT
#include "core/filestore/moving.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>

namespace matwright {

namespace {

using Moved = std::expected<void, int>;

Moved outcome(int result) {
    return result == 0 ? Moved() : std::unexpected(errno);
}

bool isUnknownHere(int failure) {
    return failure == EINVAL || failure == ENOSYS || failure == EOPNOTSUPP;
}

Moved moveByLink(int fromFolder, const char* from, int toFolder, const char* to) {
    const Moved linked = outcome(::linkat(fromFolder, from, toFolder, to, 0));
    return linked ? outcome(::unlinkat(fromFolder, from, 0)) : linked;
}

Moved moveAfterALook(int fromFolder, const char* from, int toFolder, const char* to) {
    struct stat facts = {};
    if (::fstatat(toFolder, to, &facts, AT_SYMLINK_NOFOLLOW) == 0) {
        return std::unexpected(EEXIST);
    }
    return outcome(::renameat(fromFolder, from, toFolder, to));
}

}  // namespace

Moved moveWithoutReplacing(int fromFolder, const std::string& from, int toFolder,
                           const std::string& to) {
    const Moved moved =
        outcome(::renameat2(fromFolder, from.c_str(), toFolder, to.c_str(), RENAME_NOREPLACE));
    if (moved || !isUnknownHere(moved.error())) {
        return moved;
    }
    const Moved linked = moveByLink(fromFolder, from.c_str(), toFolder, to.c_str());
    // Folders have no hard links, and some disks know none at all.
    if (linked || (linked.error() != EPERM && !isUnknownHere(linked.error()))) {
        return linked;
    }
    return moveAfterALook(fromFolder, from.c_str(), toFolder, to.c_str());
}

Moved exchangeNames(int folder, const std::string& one, const std::string& other) {
    return outcome(::renameat2(folder, one.c_str(), folder, other.c_str(), RENAME_EXCHANGE));
}

}  // namespace matwright
