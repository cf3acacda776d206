// SPDX-License-Identifier: MIT
#include <fcntl.h>

#include <cerrno>
#include <cstdio>

#include "core/filestore/disk_writing.h"
#include "core/filestore/displaced_file.h"
#include "core/filestore/file_store.h"
#include "core/filestore/moving.h"
#include "core/filestore/system_error.h"

namespace matwright {

namespace {

using Replaced = std::expected<bool, int>;

// One conditional replacement, once the new bytes lie whole under a hidden name.
class Exchange {
  public:
    Exchange(const WriteTarget& target, std::string hidden, ino_t fresh,
             std::function<bool(const std::filesystem::path&)> isExpected)
        : m_folder(target.folder.number()),
          m_target(target),
          m_hidden(std::move(hidden)),
          m_fresh(fresh),
          m_isExpected(std::move(isExpected)) {}

    Replaced perform() {
        const auto exchanged = exchangeNames(m_folder, m_hidden, m_target.name);
        if (!exchanged) {
            const int failure = exchanged.error();
            const bool isUnknown = failure == EINVAL || failure == ENOSYS || failure == EOPNOTSUPP;
            return isUnknown ? performWithoutExchange() : dropped(std::unexpected(failure));
        }
        if (m_isExpected(m_target.folderPath / m_hidden)) {
            return dropped(true);
        }
        putBack();
        return false;
    }

  private:
    Replaced dropped(Replaced result) {
        ::unlinkat(m_folder, m_hidden.c_str(), 0);
        return result;
    }

    Replaced performWithoutExchange() {
        if (!m_isExpected(m_target.folderPath / m_target.name)) {
            return dropped(false);
        }
        if (::renameat(m_folder, m_hidden.c_str(), m_folder, m_target.name.c_str()) != 0) {
            return dropped(std::unexpected(errno));
        }
        return true;
    }

    // What was displaced goes to its place again. Should yet another program have written there
    // meanwhile, its file is the newest and gets the place. Whatever cannot be put back stays
    // hidden, to be found by displacedFiles().
    void putBack() {
        constexpr int attempts = 4;
        for (int i = 0; i < attempts; ++i) {
            const auto exchanged = exchangeNames(m_folder, m_hidden, m_target.name);
            if (!exchanged && exchanged.error() == ENOENT &&
                moveWithoutReplacing(m_folder, m_hidden, m_folder, m_target.name)) {
                return;
            }
            struct stat facts = {};
            if (exchanged &&
                ::fstatat(m_folder, m_hidden.c_str(), &facts, AT_SYMLINK_NOFOLLOW) == 0 &&
                facts.st_ino == m_fresh) {
                ::unlinkat(m_folder, m_hidden.c_str(), 0);
                return;
            }
        }
    }

    int m_folder;
    const WriteTarget& m_target;
    std::string m_hidden;
    ino_t m_fresh;
    std::function<bool(const std::filesystem::path&)> m_isExpected;
};

Replaced exchangeInFolder(const WriteTarget& target, std::string_view bytes, const OldFile& old,
                          std::function<bool(const std::filesystem::path&)> isExpected) {
    const int folder = target.folder.number();
    const auto temporary = writeTemporary(folder, target.name, bytes, old);
    if (!temporary) {
        return std::unexpected(temporary.error());
    }
    // Whole from its first moment under this name, unlike the temporary file, and not swept.
    const std::string hidden =
        displacedName(target.name, old.facts.st_ino, modifiedNanoseconds(old.facts));
    struct stat facts = {};
    if (::fstat(temporary->file.number(), &facts) != 0 ||
        ::renameat(folder, temporary->name.c_str(), folder, hidden.c_str()) != 0) {
        const int failure = errno;
        ::unlinkat(folder, temporary->name.c_str(), 0);
        return std::unexpected(failure);
    }
    const Replaced done = Exchange(target, hidden, facts.st_ino, std::move(isExpected)).perform();
    ::fsync(folder);
    return done;
}

}  // namespace

Result<bool> DiskFileStore::replaceIf(const std::filesystem::path& path, std::size_t limit,
                                      const ExpectedBytes& isExpected, std::string_view bytes) {
    const auto target = writeTargetOf(path);
    if (!target) {
        return std::unexpected(target.error());
    }
    const auto old = lookAt(target->folder.number(), target->name);
    if (!old) {
        return std::unexpected(writeError(old.error(), path));
    }
    if (!old->exists) {
        return std::unexpected(readError(ENOENT, path));
    }
    if (!S_ISREG(old->facts.st_mode)) {
        return std::unexpected(notReplaceable(old->facts.st_mode, path));
    }
    const auto holdsExpected = [&](const std::filesystem::path& file) {
        const auto held = read(file, limit);
        return held && isExpected(*held);
    };
    if (!holdsExpected(target->folderPath / target->name)) {
        return false;
    }
    const Replaced done = exchangeInFolder(*target, bytes, *old, holdsExpected);
    if (!done && done.error() == ENOENT) {
        return std::unexpected(readError(ENOENT, path));
    }
    if (!done) {
        return std::unexpected(writeError(done.error(), path));
    }
    sweepLeftovers(target->folder.number(), target->name);
    return *done;
}

}  // namespace matwright
