// SPDX-License-Identifier: MIT
#include <cerrno>

#include "core/filestore/file_store.h"
#include "core/filestore/system_error.h"

namespace matwright {

namespace {

Result<bool> written(const Result<void>& replaced) {
    return replaced ? Result<bool>(true) : std::unexpected(replaced.error());
}

}  // namespace

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

Result<bool> MemoryFileStore::create(const std::filesystem::path& path, std::string_view bytes) {
    if (files.contains(path)) {
        return false;
    }
    return written(replace(path, bytes));
}

Result<bool> MemoryFileStore::replaceIf(const std::filesystem::path& path, std::size_t limit,
                                        const ExpectedBytes& isExpected, std::string_view bytes) {
    const auto held = files.find(path);
    if (held == files.end()) {
        return std::unexpected(readError(ENOENT, path));
    }
    if (held->second.size() > limit || !isExpected(held->second)) {
        return false;
    }
    return written(replace(path, bytes));
}

}  // namespace matwright
