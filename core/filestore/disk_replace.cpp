// SPDX-License-Identifier: MIT
#include <fcntl.h>
#include <sys/stat.h>

#include <cerrno>
#include <cstdio>

#include "core/filestore/file_descriptor.h"
#include "core/filestore/file_store.h"
#include "core/filestore/system_error.h"
#include "core/filestore/temporary_file.h"

namespace matwright {

namespace {

namespace fs = std::filesystem;

using SystemResult = std::expected<void, int>;

// The path with links followed, so that the link stays and what it names is replaced. The file at
// its end need not exist.
std::expected<fs::path, int> followed(fs::path path) {
    constexpr int mostLinks = 40;
    for (int links = 0; links < mostLinks; ++links) {
        std::error_code failure;
        if (!fs::is_symlink(fs::symlink_status(path, failure))) {
            return path;
        }
        const fs::path target = fs::read_symlink(path, failure);
        if (failure) {
            return std::unexpected(failure.value());
        }
        path = path.parent_path() / target;
    }
    return std::unexpected(ELOOP);
}

SystemResult writeAll(int file, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t count = ::write(file, bytes.data(), bytes.size());
        if (count < 0 && errno != EINTR) {
            return std::unexpected(errno);
        }
        bytes.remove_prefix(count > 0 ? static_cast<std::size_t>(count) : 0);
    }
    return {};
}

// What is kept of the file that is replaced.
struct OldFile {
    bool exists = false;
    struct stat facts = {};
};

std::expected<OldFile, int> lookAt(int folder, const std::string& name) {
    OldFile old;
    if (::fstatat(folder, name.c_str(), &old.facts, AT_SYMLINK_NOFOLLOW) != 0) {
        return errno == ENOENT ? std::expected<OldFile, int>(old) : std::unexpected(errno);
    }
    // Renaming needs no permission for the file itself; a write-protected file is still not to be
    // replaced.
    if (::faccessat(folder, name.c_str(), W_OK, AT_EACCESS) != 0) {
        return std::unexpected(errno);
    }
    old.exists = true;
    return old;
}

SystemResult fill(int file, std::string_view bytes, const OldFile& old) {
    if (auto written = writeAll(file, bytes); !written) {
        return written;
    }
    if (old.exists) {
        // The owner first: changing it clears permission bits. Who may not keep it goes without.
        const bool ownerKept = ::fchown(file, old.facts.st_uid, old.facts.st_gid) == 0;
        const mode_t special = S_ISUID | S_ISGID | S_ISVTX;
        const mode_t bits = old.facts.st_mode & 07777;
        if (::fchmod(file, ownerKept ? bits : bits & ~special) != 0) {
            return std::unexpected(errno);
        }
    }
    return ::fsync(file) == 0 ? SystemResult() : std::unexpected(errno);
}

SystemResult replaceInFolder(int folder, const std::string& name, std::string_view bytes,
                             const OldFile& old) {
    auto temporary = createTemporaryFile(folder, name, old.exists ? 0600 : 0666);
    if (!temporary) {
        return std::unexpected(temporary.error());
    }
    SystemResult done = fill(temporary->file.number(), bytes, old);
    if (done && ::renameat(folder, temporary->name.c_str(), folder, name.c_str()) != 0) {
        done = std::unexpected(errno);
    }
    if (!done) {
        ::unlinkat(folder, temporary->name.c_str(), 0);
        return done;
    }
    // The new file is in its place and whole; some file systems cannot flush a folder, and there is
    // nothing left to undo.
    ::fsync(folder);
    return {};
}

Error notReplaceable(mode_t mode, const fs::path& path) {
    return {ErrorCode::WriteFailed,
            S_ISDIR(mode) ? "The file was not saved: there is a folder of this name. Save it "
                            "under another name."
                          : "The file was not saved: there is a device or a pipe of this name. "
                            "Save it under another name.",
            path.string()};
}

}  // namespace

Result<void> DiskFileStore::replace(const fs::path& path, std::string_view bytes) {
    const auto target = followed(path);
    if (!target) {
        return std::unexpected(writeError(target.error(), path));
    }
    const std::string name = target->filename().string();
    if (name.empty() || name == "." || name == "..") {
        return std::unexpected(notReplaceable(S_IFDIR, path));
    }
    const fs::path parent = target->has_parent_path() ? target->parent_path() : fs::path(".");
    const FileDescriptor folder(::open(parent.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (!folder.isOpen()) {
        return std::unexpected(writeError(errno, path));
    }
    const auto old = lookAt(folder.number(), name);
    if (!old) {
        return std::unexpected(writeError(old.error(), path));
    }
    if (old->exists && !S_ISREG(old->facts.st_mode)) {
        return std::unexpected(notReplaceable(old->facts.st_mode, path));
    }
    if (const auto done = replaceInFolder(folder.number(), name, bytes, *old); !done) {
        return std::unexpected(writeError(done.error(), path));
    }
    sweepLeftovers(folder.number(), name);
    return {};
}

}  // namespace matwright
