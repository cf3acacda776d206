// SPDX-License-Identifier: MIT
#include "core/library/folder_scan.h"

#include <fcntl.h>
#include <sys/stat.h>

#include <algorithm>
#include <cerrno>
#include <set>
#include <utility>

#include "core/filestore/file_descriptor.h"
#include "core/library/directory_listing.h"
#include "core/library/printable.h"
#include "core/library/scan_sentences.h"

namespace matwright {

namespace {

using FolderId = std::pair<dev_t, ino_t>;

FolderId idOf(const struct stat& facts) {
    return {facts.st_dev, facts.st_ino};
}

std::int64_t nanoseconds(const timespec& moment) {
    return std::int64_t{moment.tv_sec} * 1'000'000'000 + moment.tv_nsec;
}

std::string joined(const std::string& folder, const std::string& name) {
    return folder.empty() ? name : folder + '/' + name;
}

FileDescriptor openedFolder(int parent, const char* name, bool throughLink) {
    return FileDescriptor(
        ::openat(parent, name,
                 O_RDONLY | O_DIRECTORY | O_CLOEXEC | O_NONBLOCK | (throughLink ? 0 : O_NOFOLLOW)));
}

class Walk {
  public:
    Walk(const std::filesystem::path& top, const ScanOptions& options)
        : m_top(top), m_options(options) {}

    FolderScan result() {
        const FileDescriptor folder = openedFolder(AT_FDCWD, m_top.c_str(), true);
        if (!folder.isOpen()) {
            nameUnread("", missingTopSentence(errno));
            return finished();
        }
        walk(folder, "", 0);
        followLinks();
        if (!isStillThere(folder)) {
            nameUnread("", vanishedTopSentence());
        }
        return finished();
    }

  private:
    struct FolderLink {
        std::string path;
        std::vector<FolderId> above;
        int depth;
    };

    FolderScan finished() {
        m_scan.cancelled = isStopped();
        std::ranges::sort(m_scan.files, {}, &ScannedFile::path);
        std::ranges::sort(m_scan.folders);
        std::ranges::sort(m_scan.problems);
        const auto repeated = std::ranges::unique(m_scan.problems, {}, &LibraryProblem::path);
        m_scan.problems.erase(repeated.begin(), repeated.end());
        return std::move(m_scan);
    }

    bool isStopped() const { return m_options.stop.stop_requested(); }

    bool isStillThere(const FileDescriptor& folder) const {
        struct stat opened = {};
        struct stat named = {};
        return ::fstat(folder.number(), &opened) == 0 && ::stat(m_top.c_str(), &named) == 0 &&
               idOf(opened) == idOf(named);
    }

    void tell(const std::string& path, std::string sentence) {
        m_scan.problems.push_back({path, std::move(sentence)});
    }

    void nameUnread(const std::string& path, std::string sentence) {
        tell(path, std::move(sentence));
        m_scan.unread.push_back(path);
    }

    void walk(const FileDescriptor& folder, const std::string& path, int depth) {
        struct stat facts = {};
        if (isStopped() || ::fstat(folder.number(), &facts) != 0 ||
            !m_walked.insert(idOf(facts)).second) {
            return;
        }
        if (!path.empty()) {
            m_scan.folders.push_back(path);
        }
        m_above.push_back(idOf(facts));
        DirectoryListing listing(folder.number());
        while (const auto entry = listing.next()) {
            if (isStopped()) {
                break;
            }
            if (entry->name[0] != '.') {
                visit(folder, joined(path, entry->name), *entry, depth);
            }
        }
        if (listing.error() != 0 && listing.error() != ENOENT) {
            nameUnread(path, unreadFolderSentence(listing.error()));
        }
        m_above.pop_back();
    }

    void visit(const FileDescriptor& folder, const std::string& path, const DirectoryEntry& entry,
               int depth) {
        if (entry.kind == DirectoryEntry::Kind::Folder) {
            enter(folder, path, entry.name, depth + 1);
        } else if (entry.kind == DirectoryEntry::Kind::Link) {
            visitLink(folder, path, entry.name, depth + 1);
        } else if (path.ends_with(m_options.suffix)) {
            visitFile(folder, path, entry.name);
        }
    }

    void enter(const FileDescriptor& parent, const std::string& path, const std::string& name,
               int depth) {
        if (depth > m_options.maxDepth) {
            nameUnread(path, tooDeepSentence());
            return;
        }
        const FileDescriptor folder = openedFolder(parent.number(), name.c_str(), false);
        if (folder.isOpen()) {
            walk(folder, path, depth);
        } else if (errno != ENOENT && errno != ENOTDIR && errno != ELOOP) {
            nameUnread(path, unreadFolderSentence(errno));
        }
    }

    void visitLink(const FileDescriptor& folder, const std::string& path, const std::string& name,
                   int depth) {
        struct stat facts = {};
        if (::fstatat(folder.number(), name.c_str(), &facts, 0) != 0) {
            if (errno == ELOOP) {
                tell(path, selfLinkSentence());
            } else if (path.ends_with(m_options.suffix)) {
                tell(path, deadLinkSentence());
            }
        } else if (S_ISDIR(facts.st_mode)) {
            m_links.push_back({path, m_above, depth});
        } else if (path.ends_with(m_options.suffix)) {
            take(path, facts);
        }
    }

    void visitFile(const FileDescriptor& folder, const std::string& path, const std::string& name) {
        struct stat facts = {};
        if (::fstatat(folder.number(), name.c_str(), &facts, AT_SYMLINK_NOFOLLOW) == 0) {
            take(path, facts);
        } else if (errno != ENOENT) {
            tell(path, unreadFileSentence(errno));
        }
    }

    void take(const std::string& path, const struct stat& facts) {
        if (!S_ISREG(facts.st_mode)) {
            tell(path, notAFileSentence());
            return;
        }
        const auto size = static_cast<std::uint64_t>(facts.st_size);
        if (size > m_options.maxBytes) {
            tell(path, tooLargeSentence(m_options.maxBytes));
            return;
        }
        m_scan.files.push_back(
            {path, {size, nanoseconds(facts.st_mtim), nanoseconds(facts.st_ctim), facts.st_ino}});
        constexpr std::size_t step = 256;
        if (m_options.progress && m_scan.files.size() % step == 0) {
            m_options.progress(m_scan.files.size());
        }
    }

    // Links met on the way are appended, so the list grows while it is gone through.
    void followLinks() {
        for (std::size_t i = 0; i < m_links.size() && !isStopped(); ++i) {
            const FolderLink link = m_links[i];
            const FileDescriptor folder = openedFolder(AT_FDCWD, (m_top / link.path).c_str(), true);
            struct stat facts = {};
            if (!folder.isOpen() || ::fstat(folder.number(), &facts) != 0) {
                if (errno != ENOENT) {
                    nameUnread(link.path, unreadFolderSentence(errno));
                }
                continue;
            }
            if (m_walked.contains(idOf(facts))) {
                const bool isAbove = std::ranges::find(link.above, idOf(facts)) != link.above.end();
                tell(link.path, isAbove ? circleSentence() : secondWaySentence());
            } else if (link.depth > m_options.maxDepth) {
                nameUnread(link.path, tooDeepSentence());
            } else {
                m_above = link.above;
                walk(folder, link.path, link.depth);
            }
        }
    }

    const std::filesystem::path& m_top;
    const ScanOptions& m_options;
    FolderScan m_scan;
    std::set<FolderId> m_walked;
    std::vector<FolderId> m_above;  // the folder that is walked and those it lies in
    std::vector<FolderLink> m_links;
};

}  // namespace

bool mayHaveChanged(const FileSignature& signature, std::int64_t readNanoseconds) {
    constexpr std::int64_t grain = 3'000'000'000;
    return signature.changedNanoseconds > readNanoseconds - grain;
}

std::string LibraryProblem::text() const {
    return path.empty() ? sentence : printablePath(path) + ": " + sentence;
}

bool FolderScan::mayHide(std::string_view path) const {
    return std::ranges::any_of(unread, [&](const std::string& folder) {
        return folder.empty() ||
               (path.starts_with(folder) && path.substr(folder.size()).starts_with('/'));
    });
}

FolderScan scanFolder(const std::filesystem::path& folder, const ScanOptions& options) {
    return Walk(folder, options).result();
}

}  // namespace matwright
