// SPDX-License-Identifier: MIT
#pragma once

#include <expected>
#include <string>

namespace matwright {

enum class ErrorCode {
    BadText,       // what a person typed cannot be read
    OutOfRange,    // readable, but outside what the program can hold
    NotFound,      // a file, piece or name that is not there
    ReadFailed,    // the system refused a read
    WriteFailed,   // the system refused a write; the old file is untouched
    TooLarge,      // larger than the documented limit
    NotXml,        // not well-formed XML (or not UTF-8)
    WrongFormat,   // well-formed, but not a file of ours
    NewerVersion,  // a file of ours from a later version of the program
    Malformed,     // a file of ours with a part that breaks its rules
    BadEdit,       // an edit that would leave an unsound sketch
    Unsupported,   // a combination the program does not offer
};

// An expected failure. `sentence` is one whole sentence: what is wrong and what to do.
// `where` names the place (a file, a line, a piece); it may be empty.
struct Error {
    ErrorCode code;
    std::string sentence;
    std::string where;

    bool operator==(const Error&) const = default;

    // "where: sentence", or the sentence alone where there is no place to name.
    std::string text() const;
};

template <typename T>
using Result = std::expected<T, Error>;

}  // namespace matwright
