// SPDX-License-Identifier: MIT
#include "core/library/zip_export.h"

#include <fmt/format.h>
#include <zip.h>

#include <algorithm>
#include <memory>
#include <vector>

#include "core/library/printable.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright {

namespace {

namespace fs = std::filesystem;

// 1 January 1980 as MS-DOS counts: the earliest date of a zip entry.
constexpr zip_uint16_t firstDosDate = 1 << 5 | 1;

Error notZipped(const std::string& where, const char* reason) {
    return {ErrorCode::WriteFailed,
            fmt::format("The zip archive could not be made ({}). Try again with fewer sketches.",
                        reason),
            where};
}

struct CloseSource {
    void operator()(zip_source_t* source) const { zip_source_free(source); }
};
struct DropArchive {
    void operator()(zip_t* archive) const { zip_discard(archive); }
};
using Source = std::unique_ptr<zip_source_t, CloseSource>;
using Archive = std::unique_ptr<zip_t, DropArchive>;

struct ZipEntry {
    std::string path;
    std::string bytes;
};

Result<std::vector<ZipEntry>> readEntries(FileStore& store, const fs::path& library,
                                          std::span<const std::string> sketches) {
    std::vector<std::string> paths(sketches.begin(), sketches.end());
    std::ranges::sort(paths);
    const auto repeated = std::ranges::unique(paths);
    paths.erase(repeated.begin(), repeated.end());
    std::vector<ZipEntry> entries;
    for (std::string& path : paths) {
        auto bytes = store.read(library / path, maxSketchFileBytes);
        if (!bytes) {
            return std::unexpected(std::move(bytes.error()));
        }
        entries.push_back({std::move(path), *std::move(bytes)});
    }
    return entries;
}

Result<void> addEntry(zip_t* archive, const ZipEntry& entry) {
    Source source(zip_source_buffer(archive, entry.bytes.data(), entry.bytes.size(), 0));
    const zip_int64_t index =
        source ? zip_file_add(archive, entry.path.c_str(), source.get(), ZIP_FL_ENC_UTF_8) : -1;
    if (index < 0) {
        const bool isName = zip_error_code_zip(zip_get_error(archive)) == ZIP_ER_INVAL;
        return std::unexpected(
            isName ? Error{ErrorCode::BadText,
                           "The name of this file has signs in it that a zip archive cannot hold. "
                           "Rename it and try again.",
                           printablePath(entry.path)}
                   : notZipped(printablePath(entry.path), zip_strerror(archive)));
    }
    // The archive owns it now.
    static_cast<void>(source.release());
    const auto at = static_cast<zip_uint64_t>(index);
    if (zip_set_file_compression(archive, at, ZIP_CM_DEFLATE, 9) != 0 ||
        zip_file_set_dostime(archive, at, 0, firstDosDate, 0) != 0) {
        return std::unexpected(notZipped(printablePath(entry.path), zip_strerror(archive)));
    }
    return {};
}

Result<std::string> bytesOf(zip_source_t* source) {
    zip_stat_t facts = {};
    if (zip_source_stat(source, &facts) != 0 || zip_source_open(source) != 0) {
        return std::unexpected(notZipped("", zip_error_strerror(zip_source_error(source))));
    }
    std::string bytes(facts.size, '\0');
    const zip_int64_t count = zip_source_read(source, bytes.data(), bytes.size());
    zip_source_close(source);
    if (count != static_cast<zip_int64_t>(bytes.size())) {
        return std::unexpected(notZipped("", "it could not be read back"));
    }
    return bytes;
}

}  // namespace

Result<std::string> zipOfSketches(FileStore& store, const fs::path& library,
                                  std::span<const std::string> sketches) {
    if (sketches.empty()) {
        return std::unexpected(Error{
            ErrorCode::NotFound, "No sketch is chosen. Choose at least one, then try again.", ""});
    }
    const auto entries = readEntries(store, library, sketches);
    if (!entries) {
        return std::unexpected(entries.error());
    }
    const Source made(zip_source_buffer_create(nullptr, 0, 0, nullptr));
    Archive archive(made ? zip_open_from_source(made.get(), ZIP_TRUNCATE, nullptr) : nullptr);
    if (!archive) {
        return std::unexpected(notZipped("", "there is too little memory"));
    }
    // The archive has one hold on it; this one is for reading it back.
    zip_source_keep(made.get());
    for (const ZipEntry& entry : *entries) {
        if (auto added = addEntry(archive.get(), entry); !added) {
            return std::unexpected(std::move(added.error()));
        }
    }
    if (zip_close(archive.get()) != 0) {
        return std::unexpected(notZipped("", zip_strerror(archive.get())));
    }
    static_cast<void>(archive.release());
    return bytesOf(made.get());
}

Result<void> exportZip(FileStore& store, const fs::path& library,
                       std::span<const std::string> sketches, const fs::path& zipFile) {
    const auto bytes = zipOfSketches(store, library, sketches);
    return bytes ? store.replace(zipFile, *bytes) : std::unexpected(bytes.error());
}

}  // namespace matwright
