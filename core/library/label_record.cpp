// SPDX-License-Identifier: MIT
#include "core/library/label_record.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <limits>
#include <nlohmann/json.hpp>

#include "core/sketch/sketch.h"
#include "core/sketch/utf8.h"

namespace matwright {

namespace {

// Keeps the order in which people read it.
using Json = nlohmann::ordered_json;

bool isPlainByte(char c) {
    return c != '%' && !(c >= 0 && c < ' ') && c != 0x7F;
}

std::string encodedPath(std::string_view path) {
    std::string text;
    while (!path.empty()) {
        const std::size_t length = utf8SequenceLength(path);
        if (length > 1 || (length == 1 && isPlainByte(path.front()))) {
            text += path.substr(0, length);
            path.remove_prefix(length);
        } else {
            text += fmt::format("%{:02X}", static_cast<unsigned char>(path.front()));
            path.remove_prefix(1);
        }
    }
    return text;
}

std::optional<std::string> decodedPath(std::string_view text) {
    std::string path;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] != '%') {
            path += text[i];
            continue;
        }
        unsigned char byte = 0;
        const auto* digits = text.data() + i + 1;
        if (i + 2 >= text.size() ||
            std::from_chars(digits, digits + 2, byte, 16).ptr != digits + 2) {
            return std::nullopt;
        }
        path += static_cast<char>(byte);
        i += 2;
    }
    return path;
}

Error malformed(const char* member) {
    return {ErrorCode::Malformed,
            fmt::format("The labels of this sketch cannot be read: \"{}\" is missing or not what "
                        "it should be.",
                        member),
            ""};
}

const Json* memberOf(const Json& object, const char* name) {
    const auto found = object.find(name);
    return found == object.end() ? nullptr : &*found;
}

std::optional<std::int64_t> wholeNumber(const Json& value) {
    if (!value.is_number_integer() ||
        (value.is_number_unsigned() &&
         value.get<std::uint64_t>() > std::numeric_limits<std::int64_t>::max())) {
        return std::nullopt;
    }
    return value.get<std::int64_t>();
}

// Whether the optional member is absent or was taken.
bool takeTags(const Json& object, Labels& labels) {
    const Json* tags = memberOf(object, "tags");
    if (tags == nullptr) {
        return true;
    }
    if (!tags->is_array() ||
        !std::ranges::all_of(*tags, [](const Json& tag) { return tag.is_string(); })) {
        return false;
    }
    labels.tags = tags->get<std::vector<std::string>>();
    return true;
}

bool takeFavourite(const Json& object, Labels& labels) {
    const Json* favourite = memberOf(object, "favourite");
    if (favourite != nullptr && favourite->is_boolean()) {
        labels.favourite = favourite->get<bool>();
    }
    return favourite == nullptr || favourite->is_boolean();
}

bool takeNote(const Json& object, Labels& labels) {
    const Json* note = memberOf(object, "note");
    if (note != nullptr && note->is_string()) {
        labels.note = note->get<std::string>();
    }
    return note == nullptr || note->is_string();
}

bool takeUses(const Json& object, Labels& labels) {
    const Json* uses = memberOf(object, "uses");
    if (uses == nullptr) {
        return true;
    }
    const auto count = wholeNumber(*uses);
    if (!count || *count < 0 || *count > std::numeric_limits<int>::max()) {
        return false;
    }
    labels.useCount = static_cast<int>(*count);
    return true;
}

bool takeLastUsed(const Json& object, Labels& labels) {
    const Json* lastUsed = memberOf(object, "lastUsed");
    if (lastUsed == nullptr) {
        return true;
    }
    const auto seconds = wholeNumber(*lastUsed);
    if (!seconds) {
        return false;
    }
    labels.lastUsed = Timestamp(std::chrono::seconds(*seconds));
    return true;
}

using Take = bool (*)(const Json&, Labels&);
struct LabelMember {
    const char* name;
    Take take;
};
constexpr LabelMember labelMembers[] = {{"tags", takeTags},
                                        {"favourite", takeFavourite},
                                        {"note", takeNote},
                                        {"uses", takeUses},
                                        {"lastUsed", takeLastUsed}};

Result<Labels> labelsIn(const Json& object) {
    Labels labels;
    for (const LabelMember& member : labelMembers) {
        if (!member.take(object, labels)) {
            return std::unexpected(malformed(member.name));
        }
    }
    return inOrder(std::move(labels));
}

Result<void> checkVersion(const Json& object) {
    const Json* version = memberOf(object, "version");
    const auto number = version != nullptr ? wholeNumber(*version) : std::nullopt;
    if (!number || *number < 1) {
        return std::unexpected(malformed("version"));
    }
    if (*number > labelRecordVersion) {
        return std::unexpected(
            Error{ErrorCode::NewerVersion,
                  "The labels of this sketch were written by a later version of the program. "
                  "Change them there, or bring this one up to date.",
                  ""});
    }
    return {};
}

Result<void> checkText(const std::string& text, const char* what) {
    if (text.size() > maxTextBytes) {
        return std::unexpected(
            Error{ErrorCode::OutOfRange,
                  fmt::format("The {} is too long to be kept. Shorten it.", what), ""});
    }
    for (std::string_view rest = text; !rest.empty();) {
        const std::size_t length = utf8SequenceLength(rest);
        if (length == 0) {
            return std::unexpected(Error{
                ErrorCode::BadText,
                fmt::format(
                    "The {} has signs in it that are no letters of any kind. Type it again.", what),
                ""});
        }
        rest.remove_prefix(length);
    }
    return {};
}

Result<void> checkTexts(const Labels& labels) {
    for (const std::string& tag : labels.tags) {
        if (auto checked = checkText(tag, "tag"); !checked) {
            return checked;
        }
    }
    return checkText(labels.note, "note");
}

Json objectIn(std::string_view bytes) {
    Json read = Json::parse(bytes, nullptr, false);
    if (!read.is_object()) {
        read = Json::object();
    }
    return read;
}

}  // namespace

Result<LabelRecord> readLabelRecord(std::string_view bytes) {
    const Json read = Json::parse(bytes, nullptr, false);
    if (!read.is_object()) {
        return std::unexpected(Error{ErrorCode::WrongFormat,
                                     "The labels of this sketch cannot be read: their file is "
                                     "damaged or was written by something else.",
                                     ""});
    }
    if (const auto version = checkVersion(read); !version) {
        return std::unexpected(version.error());
    }
    const Json* sketch = memberOf(read, "sketch");
    const auto path = sketch != nullptr && sketch->is_string()
                          ? decodedPath(sketch->get_ref<const std::string&>())
                          : std::nullopt;
    if (!path) {
        return std::unexpected(malformed("sketch"));
    }
    const Json* content = memberOf(read, "content");
    const auto key = content != nullptr && content->is_string()
                         ? parseContentKey(content->get_ref<const std::string&>())
                         : std::nullopt;
    if (!key) {
        return std::unexpected(malformed("content"));
    }
    auto labels = labelsIn(read);
    if (!labels) {
        return std::unexpected(std::move(labels.error()));
    }
    return LabelRecord{*path, *key, *std::move(labels)};
}

Result<std::string> writeLabelRecord(const LabelRecord& record, std::string_view oldBytes) {
    if (auto checked = checkTexts(record.labels); !checked) {
        return std::unexpected(std::move(checked.error()));
    }
    Json object = objectIn(oldBytes);
    object["version"] = labelRecordVersion;
    object["sketch"] = encodedPath(record.sketch);
    object["content"] = record.content.text();
    object["tags"] = record.labels.tags;
    object["favourite"] = record.labels.favourite;
    object["note"] = record.labels.note;
    object["uses"] = record.labels.useCount;
    if (record.labels.lastUsed) {
        object["lastUsed"] = record.labels.lastUsed->time_since_epoch().count();
    } else {
        object.erase("lastUsed");
    }
    std::string bytes = object.dump(2) + "\n";
    if (bytes.size() > maxLabelRecordBytes) {
        return std::unexpected(Error{ErrorCode::OutOfRange,
                                     "These are too many tags for one sketch. Remove some.", ""});
    }
    return bytes;
}

Labels united(const Labels& a, const Labels& b) {
    Labels both = a;
    both.tags.insert(both.tags.end(), b.tags.begin(), b.tags.end());
    both.favourite = a.favourite || b.favourite;
    if (both.note.empty()) {
        both.note = b.note;
    } else if (!b.note.empty() && a.note != b.note) {
        both.note += "\n" + b.note;
    }
    both.useCount = std::max(a.useCount, b.useCount);
    both.lastUsed = std::max(a.lastUsed, b.lastUsed);
    return inOrder(std::move(both));
}

Labels inOrder(Labels labels) {
    for (std::string& tag : labels.tags) {
        tag.erase(0, std::min(tag.find_first_not_of(' '), tag.size()));
        tag.erase(tag.find_last_not_of(' ') + 1);
    }
    std::erase(labels.tags, "");
    std::ranges::sort(labels.tags);
    const auto repeated = std::ranges::unique(labels.tags);
    labels.tags.erase(repeated.begin(), repeated.end());
    labels.useCount = std::max(labels.useCount, 0);
    return labels;
}

}  // namespace matwright
