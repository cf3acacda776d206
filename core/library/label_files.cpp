// SPDX-License-Identifier: MIT
#include "core/library/label_files.h"

#include <fmt/format.h>

#include <cstdio>
#include <string_view>

#include "core/library/label_store.h"
#include "core/library/names.h"

namespace matwright {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view recordSuffix = ".json";

fs::path setAsideFolder(const fs::path& library) {
    return labelsFolder(library) / "%set-aside";
}

void collectRecords(const fs::path& folder, std::vector<fs::path>& files) {
    std::error_code failure;
    fs::recursive_directory_iterator it(folder, failure);
    for (; !failure && it != fs::recursive_directory_iterator(); it.increment(failure)) {
        const std::string name = it->path().filename().string();
        std::error_code ignored;
        if (name.ends_with(recordSuffix) && !name.starts_with('.') &&
            it->is_regular_file(ignored)) {
            files.push_back(it->path());
        }
    }
}

bool isOnDisk(const fs::path& path) {
    std::error_code failure;
    return fs::exists(fs::symlink_status(path, failure));
}

// The sketch that a record file is called after.
fs::path sketchCalledAfter(const fs::path& library, const fs::path& file) {
    fs::path sketch = library / file.lexically_relative(labelsFolder(library));
    std::string name = sketch.filename().string();
    name.resize(name.size() - recordSuffix.size());
    return sketch.replace_filename(numberedFileName(name, 1));
}

// Under a name nothing has yet.
fs::path freeRecordFile(const fs::path& folder, const std::string& stem, std::string_view suffix) {
    fs::path file = folder / fmt::format("{}{}", stem, suffix);
    for (int number = 2; isOnDisk(file); ++number) {
        file = folder / fmt::format("{} ({}){}", stem, number, suffix);
    }
    return file;
}

void setBrokenAside(const fs::path& file) {
    const fs::path aside = freeRecordFile(file.parent_path(), file.filename().string(), ".broken");
    std::error_code ignored;
    fs::rename(file, aside, ignored);
}

Error atFile(Error error, const fs::path& file) {
    error.where = file.string();
    return error;
}

}  // namespace

Result<std::optional<LabelFile>> readLabelFile(FileStore& store, const fs::path& file) {
    auto bytes = store.read(file, maxLabelRecordBytes);
    if (!bytes && bytes.error().code == ErrorCode::NotFound) {
        return std::nullopt;
    }
    if (!bytes) {
        return std::unexpected(std::move(bytes.error()));
    }
    auto record = readLabelRecord(*bytes);
    if (!record) {
        return std::unexpected(atFile(std::move(record.error()), file));
    }
    return LabelFile{file, *std::move(bytes), *std::move(record)};
}

std::vector<fs::path> allLabelFiles(const fs::path& library) {
    std::vector<fs::path> files;
    collectRecords(labelsFolder(library), files);
    return files;
}

Result<FoundLabels> labelsByPath(FileStore& store, const fs::path& library,
                                 const std::string& sketch) {
    FoundLabels found;
    const fs::path own = labelFileOf(library, sketch);
    auto read = readLabelFile(store, own);
    if (!read && read.error().code == ErrorCode::NewerVersion) {
        return std::unexpected(std::move(read.error()));
    }
    if (!read) {
        found.broken = std::move(read.error());
    } else if (*read) {
        found.files.push_back(**std::move(read));
    }
    const std::string stem = own.stem().string();
    std::error_code failure;
    for (fs::directory_iterator it(own.parent_path(), failure), last; !failure && it != last;
         it.increment(failure)) {
        const std::string name = it->path().filename().string();
        if (it->path() == own || !name.starts_with(stem) || !name.ends_with(recordSuffix)) {
            continue;
        }
        auto beside = readLabelFile(store, it->path());
        if (beside && *beside && (*beside)->record.sketch == sketch) {
            found.files.push_back(**std::move(beside));
        }
    }
    return found;
}

std::optional<LabelFile> orphanWith(FileStore& store, const fs::path& library, ContentKey content) {
    for (const fs::path& file : allLabelFiles(library)) {
        // Most files need not be read: their sketches are there.
        if (file.parent_path() != setAsideFolder(library) &&
            isOnDisk(sketchCalledAfter(library, file))) {
            continue;
        }
        auto read = readLabelFile(store, file);
        if (read && *read && (*read)->record.content == content &&
            ((*read)->record.sketch.empty() || !isOnDisk(library / (*read)->record.sketch))) {
            return *std::move(read);
        }
    }
    return std::nullopt;
}

Result<FoundLabels> labelsOnDisk(FileStore& store, const fs::path& library,
                                 const std::string& sketch, ContentKey content) {
    auto found = labelsByPath(store, library, sketch);
    if (found && found->files.empty() && !found->broken) {
        if (auto orphan = orphanWith(store, library, content)) {
            found->files.push_back(*std::move(orphan));
        }
    }
    return found;
}

Result<void> writeLabels(FileStore& store, const fs::path& library, const LabelRecord& record,
                         const FoundLabels& found) {
    const fs::path own = labelFileOf(library, record.sketch);
    const auto bytes = writeLabelRecord(
        record, found.files.empty() ? std::string_view() : found.files.front().bytes);
    if (!bytes) {
        return std::unexpected(atFile(bytes.error(), record.sketch));
    }
    if (found.broken) {
        setBrokenAside(own);
    }
    std::error_code failure;
    fs::create_directories(own.parent_path(), failure);
    // A record that moves goes to its new place first: killed in between, it is found by content.
    if (!found.files.empty() && found.files.front().file != own) {
        fs::rename(found.files.front().file, own, failure);
    }
    if (auto written = store.replace(own, *bytes); !written) {
        return written;
    }
    for (const LabelFile& file : found.files) {
        if (file.file != own) {
            fs::remove(file.file, failure);
        }
    }
    return {};
}

void setLabelsAside(FileStore& store, const fs::path& library, const LabelFile& file) {
    LabelRecord record = file.record;
    record.sketch.clear();
    const auto bytes = writeLabelRecord(record, file.bytes);
    std::error_code failure;
    fs::create_directories(setAsideFolder(library), failure);
    const fs::path aside =
        freeRecordFile(setAsideFolder(library), record.content.text(), recordSuffix);
    if (bytes && store.create(aside, *bytes).value_or(false)) {
        fs::remove(file.file, failure);
    }
}

}  // namespace matwright
