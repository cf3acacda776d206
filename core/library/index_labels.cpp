// SPDX-License-Identifier: MIT
#include "core/library/index_labels.h"

#include <system_error>

#include "core/filestore/file_store.h"
#include "core/library/label_store.h"
#include "core/library/packed_entry.h"
#include "core/library/sketch_reading.h"

namespace matwright {

namespace {

// Nothing where the file is gone by now.
std::optional<IndexedLabels> readLabels(const std::filesystem::path& folder,
                                        const ScannedFile& file) {
    DiskFileStore store;
    const std::filesystem::path path = folder / file.path;
    const std::int64_t begun = nowNanoseconds();
    const Result<std::string> bytes = store.read(path, maxLabelRecordBytes);
    if (!bytes && bytes.error().code == ErrorCode::NotFound) {
        return std::nullopt;
    }
    IndexedLabels row;
    row.signature = file.signature;
    row.isSuspect = mayHaveChanged(file.signature, begun) || signatureOf(path) != file.signature;
    const Result<LabelRecord> record =
        bytes ? readLabelRecord(*bytes) : std::unexpected(bytes.error());
    if (record) {
        row.record = *record;
    } else {
        row.problem = problemSentence(record.error(), path);
    }
    return row;
}

bool isUpToDate(const IndexRows& rows, const ScannedFile& file) {
    const auto known = rows.labels.find(file.path);
    return known != rows.labels.end() && !known->second.isSuspect &&
           known->second.signature == file.signature;
}

void forgetGone(const FolderScan& scan, IndexRows& rows, IndexFile::Changes& changes) {
    auto file = scan.files.begin();
    for (auto row = rows.labels.begin(); row != rows.labels.end();) {
        while (file != scan.files.end() && file->path < row->first) {
            ++file;
        }
        const bool isThere = file != scan.files.end() && file->path == row->first;
        if (isThere || scan.mayHide(row->first)) {
            ++row;
        } else {
            changes.goneLabels.push_back(row->first);
            row = rows.labels.erase(row);
        }
    }
}

}  // namespace

void updateLabelRows(const std::filesystem::path& library, const std::stop_token& stop,
                     IndexRows& rows, IndexFile::Changes& changes) {
    const std::filesystem::path folder = labelsFolder(library);
    ScanOptions options;
    options.suffix = ".json";
    options.maxBytes = maxLabelRecordBytes;
    options.stop = stop;
    std::error_code ignored;
    FolderScan scan;
    if (std::filesystem::is_directory(folder, ignored)) {
        scan = scanFolder(folder, options);
    }
    if (scan.cancelled) {
        return;
    }
    forgetGone(scan, rows, changes);
    for (const ScannedFile& file : scan.files) {
        if (isUpToDate(rows, file)) {
            continue;
        }
        if (auto read = readLabels(folder, file)) {
            const auto row = rows.labels.insert_or_assign(file.path, std::move(*read)).first;
            changes.labels.push_back(&*row);
        }
    }
}

void assignLabels(IndexRows& rows, IndexFile::Changes& changes) {
    std::vector<IndexFile::SketchRow*> sketches;
    std::vector<KeyedSketch> keyed;
    for (auto& row : rows.sketches) {
        sketches.push_back(&row);
        keyed.push_back({row.first, row.second.content});
    }
    std::vector<LabelRecord> records;
    for (const auto& [path, row] : rows.labels) {
        if (row.problem.empty()) {
            records.push_back(row.record);
        }
    }
    const std::vector<Labels> labels = labelsFor(keyed, records);
    for (std::size_t i = 0; i < sketches.size(); ++i) {
        std::string packed = packedLabels(labels[i]);
        if (packed != sketches[i]->second.labels) {
            sketches[i]->second.labels = std::move(packed);
            changes.sketches.push_back(sketches[i]);
        }
    }
}

}  // namespace matwright
