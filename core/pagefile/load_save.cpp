// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "core/pagefile/page_file.h"

namespace matwright {

namespace {

std::string folderOf(const std::filesystem::path& path) {
    std::error_code error;
    const auto whole = std::filesystem::absolute(path, error);
    return error ? std::string() : whole.lexically_normal().parent_path().string();
}

}  // namespace

Result<LoadedPage> loadPage(FileStore& store, const std::filesystem::path& path) {
    const auto bytes = store.read(path, maxPageFileBytes);
    if (!bytes) {
        return std::unexpected(bytes.error());
    }
    auto loaded = readPage(*bytes, folderOf(path));
    if (!loaded) {
        Error& error = loaded.error();
        error.where = error.where.empty() ? path.string() : path.string() + ", " + error.where;
    }
    return loaded;
}

Result<std::string> savablePageBytes(const Making& making, const SmallPictures& pictures,
                                     const std::string& folder) {
    std::string bytes = writePage(making, pictures, folder);
    if (bytes.size() > maxPageFileBytes) {
        return std::unexpected(Error{
            ErrorCode::TooLarge,
            fmt::format("The file was not saved: the page would take more than the {} MB that can "
                        "be opened again. Shorten its notes or take photos out.",
                        maxPageFileBytes >> 20),
            ""});
    }
    return bytes;
}

Result<void> savePage(FileStore& store, const std::filesystem::path& path, const Making& making,
                      const SmallPictures& pictures) {
    auto bytes = savablePageBytes(making, pictures, folderOf(path));
    if (!bytes) {
        bytes.error().where = path.string();
        return std::unexpected(std::move(bytes.error()));
    }
    return store.replace(path, *bytes);
}

}  // namespace matwright
