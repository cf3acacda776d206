// SPDX-License-Identifier: MIT
#include "core/filestore/disk_writing.h"

#include <fcntl.h>

#include <cerrno>
#include <cstdio>

#include "core/filestore/system_error.h"

namespace matwright {

namespace {

namespace fs = std::filesystem;

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

}  // namespace

Result<WriteTarget> writeTargetOf(const fs::path& path) {
    const auto end = followed(path);
    if (!end) {
        return std::unexpected(writeError(end.error(), path));
    }
    WriteTarget target;
    target.name = end->filename().string();
    if (target.name.empty() || target.name == "." || target.name == "..") {
        return std::unexpected(notReplaceable(S_IFDIR, path));
    }
    target.folderPath = end->has_parent_path() ? end->parent_path() : fs::path(".");
    target.folder =
        FileDescriptor(::open(target.folderPath.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (!target.folder.isOpen()) {
        return std::unexpected(writeError(errno, path));
    }
    return target;
}

std::expected<OldFile, int> lookAt(int folder, const std::string& name) {
    OldFile old;
    if (::fstatat(folder, name.c_str(), &old.facts, AT_SYMLINK_NOFOLLOW) != 0) {
        return errno == ENOENT ? std::expected<OldFile, int>(old) : std::unexpected(errno);
    }
    if (::faccessat(folder, name.c_str(), W_OK, AT_EACCESS) != 0) {
        return std::unexpected(errno);
    }
    old.exists = true;
    return old;
}

std::int64_t modifiedNanoseconds(const struct stat& facts) {
    return std::int64_t{facts.st_mtim.tv_sec} * 1'000'000'000 + facts.st_mtim.tv_nsec;
}

std::expected<TemporaryFile, int> writeTemporary(int folder, const std::string& name,
                                                 std::string_view bytes, const OldFile& old) {
    auto temporary = createTemporaryFile(folder, name, old.exists ? 0600 : 0666);
    if (!temporary) {
        return temporary;
    }
    if (const auto done = fill(temporary->file.number(), bytes, old); !done) {
        ::unlinkat(folder, temporary->name.c_str(), 0);
        return std::unexpected(done.error());
    }
    return temporary;
}

Error notReplaceable(mode_t mode, const fs::path& path) {
    return {ErrorCode::WriteFailed,
            S_ISDIR(mode) ? "The file was not saved: there is a folder of this name. Save it "
                            "under another name."
                          : "The file was not saved: there is a device or a pipe of this name. "
                            "Save it under another name.",
            path.string()};
}

}  // namespace matwright
