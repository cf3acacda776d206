// SPDX-License-Identifier: MIT
#include "core/library/names.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/library/printable.h"
#include "core/sketch/utf8.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright {

namespace {

constexpr std::string_view sketchSuffix = sketchFileSuffix;
constexpr std::string_view pageSuffix = ".page.svg";  // core/making stands above this folder

std::string_view lastPart(std::string_view path) {
    return path.substr(path.rfind('/') + 1);
}

std::string_view withoutSpacesAround(std::string_view text) {
    const std::size_t first = text.find_first_not_of(' ');
    return first == std::string_view::npos
               ? std::string_view()
               : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

bool isWellFormed(std::string_view text) {
    while (!text.empty()) {
        const std::size_t length = utf8SequenceLength(text);
        if (length == 0) {
            return false;
        }
        text.remove_prefix(length);
    }
    return true;
}

bool isControl(char c) {
    return (c >= 0 && c < ' ') || c == 0x7F;
}

// The end of `text` is given up, never in the middle of a character.
std::string_view beginningOf(std::string_view text, std::size_t most) {
    std::size_t length = std::min(text.size(), most);
    const auto isInside = [&](std::size_t i) {
        return i < text.size() && (static_cast<unsigned char>(text[i]) & 0xC0) == 0x80;
    };
    while (length > 0 && isInside(length)) {
        --length;
    }
    return text.substr(0, length);
}

Error badName(std::string_view typed, const char* sentence) {
    return {ErrorCode::BadText, sentence, printablePath(typed)};
}

// What files and folders have in common.
Result<std::string> checkedPart(std::string_view typed, std::size_t most) {
    const std::string_view name = withoutSpacesAround(typed);
    if (name.empty()) {
        return std::unexpected(badName(typed, "There is no name. Type at least one letter."));
    }
    if (name.find('/') != std::string_view::npos) {
        return std::unexpected(badName(
            typed, "A name cannot have the sign / in it. Leave it out or write - instead."));
    }
    if (std::ranges::any_of(name, isControl)) {
        return std::unexpected(
            badName(typed,
                    "A name cannot have line breaks or other invisible signs in it. Type "
                    "it on one line."));
    }
    if (!isWellFormed(name)) {
        return std::unexpected(badName(
            typed, "The name has signs in it that are no letters of any kind. Type it again."));
    }
    if (name.starts_with('.')) {
        return std::unexpected(badName(
            typed, "A name that begins with a full stop is hidden. Begin it with something else."));
    }
    if (name.size() > most) {
        return std::unexpected(badName(typed, "The name is too long for a file. Shorten it."));
    }
    return std::string(name);
}

}  // namespace

bool hasSketchSuffix(std::string_view path) {
    const std::string_view name = lastPart(path);
    return name.size() > sketchSuffix.size() && name.ends_with(sketchSuffix);
}

std::string_view documentSuffixOf(std::string_view path) {
    const std::string_view name = lastPart(path);
    const bool isPage = name.size() > pageSuffix.size() && name.ends_with(pageSuffix);
    return isPage ? pageSuffix : sketchSuffix;
}

std::string_view stemOf(std::string_view path) {
    std::string_view name = lastPart(path);
    const std::string_view suffix = documentSuffixOf(name);
    if (name.size() > suffix.size() && name.ends_with(suffix)) {
        name.remove_suffix(suffix.size());
    }
    return name;
}

std::string shownSketchName(std::string_view ownName, std::string_view path) {
    const std::string_view stem = stemOf(path);
    const std::string_view number = stem.substr(withoutNumber(stem).size());
    return ownName.empty() ? std::string(stem) : std::string(ownName).append(number);
}

Result<std::string> checkedName(std::string_view typed) {
    return checkedPart(typed, maxFileNameBytes - sketchSuffix.size());
}

Result<std::string> checkedFolder(std::string_view typed) {
    std::string folder;
    for (std::string_view rest = withoutSpacesAround(typed); !rest.empty();) {
        const std::size_t slash = rest.find('/');
        const auto part = checkedPart(rest.substr(0, slash), maxFileNameBytes);
        if (!part) {
            return part;
        }
        folder += (folder.empty() ? "" : "/") + *part;
        rest.remove_prefix(slash == std::string_view::npos ? rest.size() : slash + 1);
    }
    return folder;
}

std::string numberedFileName(std::string_view stem, int number) {
    return numberedFileName(stem, number, sketchSuffix);
}

std::string numberedFileName(std::string_view stem, int number, std::string_view suffix) {
    const std::string end =
        number > 1 ? fmt::format(" ({}){}", number, suffix) : std::string(suffix);
    const std::string_view base = number > 1 ? withoutNumber(stem) : stem;
    return std::string(beginningOf(base, maxFileNameBytes - end.size())) + end;
}

std::string_view withoutNumber(std::string_view stem) {
    const std::size_t open = stem.rfind(" (");
    if (open == std::string_view::npos || open == 0 || !stem.ends_with(')')) {
        return stem;
    }
    const std::string_view digits = stem.substr(open + 2, stem.size() - open - 3);
    const bool isNumber = !digits.empty() && digits.size() <= 4 && digits.front() != '0' &&
                          std::ranges::all_of(digits, [](char c) { return c >= '0' && c <= '9'; });
    return isNumber ? stem.substr(0, open) : stem;
}

}  // namespace matwright
