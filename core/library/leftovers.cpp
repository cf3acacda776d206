// SPDX-License-Identifier: MIT
#include "core/library/leftovers.h"

#include <fcntl.h>

#include <cerrno>

#include "core/filestore/displaced_file.h"
#include "core/filestore/file_descriptor.h"
#include "core/filestore/file_store.h"
#include "core/filestore/moving.h"
#include "core/filestore/temporary_file.h"
#include "core/library/folder_lock.h"
#include "core/library/names.h"
#include "core/library/saving.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright {

namespace {

namespace fs = std::filesystem;

FileDescriptor openedFolder(const fs::path& folder) {
    return FileDescriptor(
        ::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
}

bool holdsTheSame(const fs::path& one, const fs::path& other) {
    DiskFileStore store;
    const auto a = store.read(one, maxSketchFileBytes);
    const auto b = store.read(other, maxSketchFileBytes);
    return a && b && *a == *b;
}

// Halves of files that nobody writes any more.
void sweepTemporaries(const fs::path& folder) {
    constexpr std::string_view mark = ".matwright-";
    const FileDescriptor open = openedFolder(folder);
    std::vector<std::string> targets;
    std::error_code failure;
    for (fs::directory_iterator it(folder, failure), last; !failure && it != last;
         it.increment(failure)) {
        const std::string name = it->path().filename().string();
        const std::size_t at = name.rfind(mark);
        if (name.starts_with('.') && name.ends_with(".part") && at != std::string::npos && at > 0) {
            targets.push_back(name.substr(1, at - 1));
        }
    }
    for (const std::string& target : targets) {
        sweepLeftovers(open.number(), target);
    }
}

}  // namespace

std::expected<fs::path, int> moveToFreeName(const fs::path& file, const fs::path& folder,
                                            std::string_view stem, int number,
                                            std::string_view suffix) {
    const FileDescriptor from = openedFolder(file.parent_path());
    const FileDescriptor to = openedFolder(folder);
    if (!from.isOpen() || !to.isOpen()) {
        return std::unexpected(errno);
    }
    for (;; ++number) {
        const std::string name = numberedFileName(stem, number, suffix);
        if (folder / name == file) {
            return file;
        }
        const auto moved =
            moveWithoutReplacing(from.number(), file.filename().string(), to.number(), name);
        if (moved) {
            return folder / name;
        }
        if (moved.error() != EEXIST) {
            return std::unexpected(moved.error());
        }
    }
}

std::vector<fs::path> rescueIn(const fs::path& folder) {
    std::vector<fs::path> rescued;
    for (const DisplacedFile& left : displacedFiles(folder)) {
        std::error_code ignored;
        if (left.isReplaced || holdsTheSame(left.path, folder / left.targetName)) {
            fs::remove(left.path, ignored);
            continue;
        }
        if (const auto shown = moveToFreeName(left.path, folder, stemOf(left.targetName), 1,
                                              documentSuffixOf(left.targetName))) {
            rescued.push_back(*shown);
        }
    }
    return rescued;
}

Result<std::vector<fs::path>> rescueLeftovers(const fs::path& folder) {
    const auto lock = FolderLock::take(folder);
    if (!lock) {
        return std::unexpected(lock.error());
    }
    std::vector<fs::path> folders{folder};
    std::error_code failure;
    fs::recursive_directory_iterator it(folder, fs::directory_options::skip_permission_denied,
                                        failure);
    for (; !failure && it != fs::recursive_directory_iterator(); it.increment(failure)) {
        std::error_code ignored;
        if (!it->is_directory(ignored) || it->is_symlink(ignored)) {
            continue;
        }
        if (it->path().filename().string().starts_with('.')) {
            it.disable_recursion_pending();
        } else {
            folders.push_back(it->path());
        }
    }
    std::vector<fs::path> rescued;
    for (const fs::path& each : folders) {
        sweepTemporaries(each);
        const auto shown = rescueIn(each);
        rescued.insert(rescued.end(), shown.begin(), shown.end());
    }
    return rescued;
}

}  // namespace matwright
