// SPDX-License-Identifier: MIT
#include "core/library/label_store.h"

#include "core/library/folder_lock.h"
#include "core/library/label_files.h"
#include "core/library/names.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright {

namespace {

namespace fs = std::filesystem;

LibraryProblem problemOf(const fs::path& library, const fs::path& file, const Error& error) {
    return {file.lexically_relative(library).string(), error.sentence};
}

constexpr const char* brokenSentence =
    "The labels this sketch had cannot be read, so it starts with new ones. The old file is kept "
    "beside them with \".broken\" behind its name.";

}  // namespace

fs::path labelsFolder(const fs::path& library) {
    return library / libraryHiddenFolder / "labels";
}

fs::path labelFileOf(const fs::path& library, const std::string& sketch) {
    const fs::path beside = labelsFolder(library) / sketch;
    return beside.parent_path() / (std::string(stemOf(sketch)) + ".json");
}

LabelRecords readLabelRecords(const fs::path& library) {
    LabelRecords all;
    DiskFileStore store;
    for (const fs::path& file : allLabelFiles(library)) {
        auto read = readLabelFile(store, file);
        if (!read) {
            all.problems.push_back(problemOf(library, file, read.error()));
        } else if (*read) {
            all.records.push_back(std::move((*read)->record));
        }
    }
    return all;
}

Result<LabelChange> changeLabels(FileStore& store, const fs::path& library,
                                 const std::string& sketch,
                                 const std::function<void(Labels&)>& change) {
    if (auto made = makeLibrary(library); !made) {
        return std::unexpected(std::move(made.error()));
    }
    const auto lock = FolderLock::take(library);
    if (!lock) {
        return std::unexpected(lock.error());
    }
    const auto bytes = store.read(library / sketch, maxSketchFileBytes);
    if (!bytes) {
        return std::unexpected(bytes.error());
    }
    const ContentKey content = contentKeyOf(*bytes);
    const auto found = labelsOnDisk(store, library, sketch, content);
    if (!found) {
        return std::unexpected(found.error());
    }
    Labels labels;
    for (const LabelFile& file : found->files) {
        labels = united(labels, file.record.labels);
    }
    change(labels);
    labels = inOrder(std::move(labels));
    if (auto written = writeLabels(store, library, {sketch, content, labels}, *found); !written) {
        return std::unexpected(std::move(written.error()));
    }
    return LabelChange{labels, found->broken ? brokenSentence : ""};
}

}  // namespace matwright
