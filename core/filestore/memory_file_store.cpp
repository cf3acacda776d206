// SPDX-License-Identifier: MIT
#include <cerrno>

#include "core/filestore/file_store.h"
#include "core/filestore/system_error.h"

namespace matwright {

Result<std::string> MemoryFileStore::read(const std::filesystem::path& path, std::size_t limit) {
    const auto file = files.find(path);
    if (file == files.end()) {
        return std::unexpected(readError(ENOENT, path));
    }
    if (file->second.size() > limit) {
        return std::unexpected(tooLargeError(limit, path));
    }
    return file->second;
}

Result<void> MemoryFileStore::replace(const std::filesystem::path& path, std::string_view bytes) {
    if (failReplacesWith) {
        return std::unexpected(*failReplacesWith);
    }
    files[path] = bytes;
    return {};
}

}  // namespace matwright
