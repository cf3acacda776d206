// SPDX-License-Identifier: MIT
#include "core/library/label_moves.h"

#include <fmt/format.h>

#include "core/library/label_files.h"

namespace matwright {

namespace {

namespace fs = std::filesystem;

std::string notFollowed(const Error& error) {
    return fmt::format("Its tags and note could not be brought along: {}", error.sentence);
}

Labels unitedLabels(const FoundLabels& found) {
    Labels labels;
    for (const LabelFile& file : found.files) {
        labels = united(labels, file.record.labels);
    }
    return labels;
}

std::string written(FileStore& store, const fs::path& library, const LabelRecord& record,
                    const FoundLabels& found) {
    const auto done = writeLabels(store, library, record, found);
    return done ? "" : notFollowed(done.error());
}

// A sketch that is gone had this path before; its labels are not for the new one.
void makeWay(FileStore& store, const fs::path& library, const std::string& sketch) {
    const auto stale = labelsByPath(store, library, sketch);
    if (stale) {
        for (const LabelFile& file : stale->files) {
            setLabelsAside(store, library, file);
        }
    }
}

}  // namespace

std::string labelsAfterSave(FileStore& store, const fs::path& library, const std::string& sketch,
                            std::optional<ContentKey> before, ContentKey content) {
    if (!before) {
        makeWay(store, library, sketch);
        return "";
    }
    const auto found = labelsOnDisk(store, library, sketch, *before);
    if (!found) {
        return notFollowed(found.error());
    }
    // What cannot be read is named by whoever reads all records, and is not to be touched here.
    if (found->files.empty() || found->broken) {
        return "";
    }
    return written(store, library, {sketch, content, unitedLabels(*found)}, *found);
}

std::string labelsAfterMove(FileStore& store, const fs::path& library, const std::string& from,
                            const std::string& to, ContentKey content) {
    makeWay(store, library, to);
    const auto found = labelsOnDisk(store, library, from, content);
    if (!found) {
        return notFollowed(found.error());
    }
    if (found->files.empty()) {
        return found->broken ? notFollowed(*found->broken) : "";
    }
    return written(store, library, {to, content, unitedLabels(*found)},
                   {found->files, std::nullopt});
}

std::string labelsAfterCopy(FileStore& store, const fs::path& library, const std::string& from,
                            const std::string& to, ContentKey content) {
    makeWay(store, library, to);
    const auto found = labelsByPath(store, library, from);
    if (!found) {
        return notFollowed(found.error());
    }
    Labels labels = unitedLabels(*found);
    if (labels.tags.empty() && labels.note.empty()) {
        return "";
    }
    labels.favourite = false;
    labels.useCount = 0;
    labels.lastUsed.reset();
    return written(store, library, {to, content, labels}, {});
}

}  // namespace matwright
