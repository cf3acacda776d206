// SPDX-License-Identifier: MIT
#include "core/library/directory_listing.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>

namespace matwright {

namespace {

DirectoryEntry::Kind kindOf(int folder, const dirent& entry) {
    if (entry.d_type == DT_DIR) {
        return DirectoryEntry::Kind::Folder;
    }
    if (entry.d_type == DT_LNK) {
        return DirectoryEntry::Kind::Link;
    }
    struct stat facts = {};
    if (entry.d_type != DT_UNKNOWN ||
        ::fstatat(folder, entry.d_name, &facts, AT_SYMLINK_NOFOLLOW) != 0) {
        return DirectoryEntry::Kind::Other;
    }
    if (S_ISDIR(facts.st_mode)) {
        return DirectoryEntry::Kind::Folder;
    }
    return S_ISLNK(facts.st_mode) ? DirectoryEntry::Kind::Link : DirectoryEntry::Kind::Other;
}

}  // namespace

DirectoryListing::DirectoryListing(int folder) {
    // The stream closes the number it is given.
    const int own = ::fcntl(folder, F_DUPFD_CLOEXEC, 0);
    m_stream = own < 0 ? nullptr : ::fdopendir(own);
    if (m_stream == nullptr) {
        m_error = errno;
        if (own >= 0) {
            ::close(own);
        }
    }
}

DirectoryListing::~DirectoryListing() {
    if (m_stream != nullptr) {
        ::closedir(m_stream);
    }
}

std::optional<DirectoryEntry> DirectoryListing::next() {
    if (m_stream == nullptr) {
        return std::nullopt;
    }
    errno = 0;
    const dirent* entry = ::readdir(m_stream);
    if (entry == nullptr) {
        m_error = errno;
        return std::nullopt;
    }
    return DirectoryEntry{entry->d_name, kindOf(::dirfd(m_stream), *entry)};
}

}  // namespace matwright
