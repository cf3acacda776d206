// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "core/content/content_key.h"
#include "core/error/error.h"
#include "core/library/labels.h"

namespace matwright {

// The labels of one sketch as they are kept on disk, in JSON:
//
//   {
//     "version": 1,
//     "sketch": "2026/Harbour day.sketch.svg",
//     "content": "10621a89f2a23649490b6800cd1aea32",
//     "tags": ["beach", "family"],
//     "favourite": true,
//     "note": "for the blue papers",
//     "uses": 3,
//     "lastUsed": 1764075107
//   }
//
// `sketch` is the path inside the library; "%" and bytes that are no UTF-8 or are control
// characters are written as "%" and two hexadecimal digits. `lastUsed` counts seconds from
// 1970-01-01 UTC and is left out where it was never used. Members this version does not know are
// kept when the record is written again.
struct LabelRecord {
    std::string sketch;
    ContentKey content;
    Labels labels;

    friend bool operator==(const LabelRecord&, const LabelRecord&) = default;
};

inline constexpr int labelRecordVersion = 1;
inline constexpr std::size_t maxLabelRecordBytes = std::size_t{1} << 20;

// Errors: WrongFormat (no JSON object), NewerVersion, Malformed (a member that is missing or not
// what it should be).
Result<LabelRecord> readLabelRecord(std::string_view bytes);

// Equal records give equal bytes. Members of `oldBytes`, the record so far, that are not known here
// are kept; text that is no such record counts as empty. Errors: BadText where a tag or the note is
// not UTF-8, OutOfRange where one of them has more than maxTextBytes.
Result<std::string> writeLabelRecord(const LabelRecord& record, std::string_view oldBytes = {});

// Both together: see label_store.h.
Labels united(const Labels& a, const Labels& b);
// Tags sorted, each once, without spaces at their ends, none empty; a use count of at least 0.
Labels inOrder(Labels labels);

}  // namespace matwright
