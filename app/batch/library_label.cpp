// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <ostream>

#include "app/batch/open_library.h"
#include "core/library/label_store.h"
#include "core/library/printable.h"

namespace matwright::app {

namespace {

void change(const LabelCommand& command, Labels& labels) {
    std::erase_if(labels.tags, [&](const std::string& tag) {
        return std::ranges::find(command.tagsOff, tag) != command.tagsOff.end();
    });
    labels.tags.insert(labels.tags.end(), command.tags.begin(), command.tags.end());
    labels.favourite = command.favourite.value_or(labels.favourite);
    labels.note = command.note.value_or(labels.note);
}

std::string labelsText(const Labels& labels) {
    std::string text;
    for (const std::string& tag : labels.tags) {
        text += (text.empty() ? "tags " : ", ") + printablePath(tag);
    }
    if (labels.favourite) {
        text += text.empty() ? "favourite" : "; favourite";
    }
    if (!labels.note.empty()) {
        text += fmt::format("{}note \"{}\"", text.empty() ? "" : "; ", printablePath(labels.note));
    }
    return text.empty() ? "no labels" : text;
}

bool changesNothing(const LabelCommand& command) {
    return command.tags.empty() && command.tagsOff.empty() && !command.favourite && !command.note;
}

std::expected<std::vector<std::size_t>, int> indicesOf(const OpenedLibrary& library,
                                                       const std::vector<std::string>& named,
                                                       BatchPorts& ports) {
    std::vector<std::size_t> indices;
    for (const std::string& name : named) {
        const Result<std::size_t> index = sketchNamed(library, name);
        if (!index) {
            return std::unexpected(fail(ports, InputRefused, index.error()));
        }
        indices.push_back(*index);
    }
    return indices;
}

int labelOne(const LabelCommand& command, const OpenedLibrary& library, std::size_t index,
             BatchPorts& ports) {
    const std::string path(library.holdings->path(index));
    Labels labels = library.holdings->entry(index).labels;
    if (!changesNothing(command)) {
        auto changed = changeLabels(ports.files, library.folder, path,
                                    [&](Labels& kept) { change(command, kept); });
        if (!changed) {
            const ErrorCode code = changed.error().code;
            const bool isTyped = code == ErrorCode::BadText || code == ErrorCode::OutOfRange;
            return fail(ports, isTyped ? WrongUse : CouldNotWrite, changed.error());
        }
        if (!changed->said.empty()) {
            complain(ports, path, changed->said);
        }
        labels = std::move(changed->labels);
    }
    ports.out << printablePath(path) << ": " << labelsText(labels) << '\n';
    return Done;
}

}  // namespace

int runLibraryLabel(const LabelCommand& command, BatchPorts& ports) {
    const auto library = openLibraryAloud(command.library, ports);
    if (!library) {
        return library.error();
    }
    const auto indices = indicesOf(*library, command.named, ports);
    if (!indices) {
        return indices.error();
    }
    for (const std::size_t index : *indices) {
        if (const int code = labelOne(command, *library, index, ports); code != Done) {
            return code;
        }
    }
    return Done;
}

}  // namespace matwright::app
