// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace matwright {

// A moment in UTC, in whole seconds.
using Timestamp = std::chrono::sys_seconds;

// What a person keeps about a sketch without changing the sketch: all of it stands outside the
// sketch file. A sketch without a record has the labels of a default-constructed value.
struct Labels {
    std::vector<std::string> tags;  // sorted by bytes, each once, none empty
    bool favourite = false;
    std::string note;  // not the sketch's own note
    int useCount = 0;  // how many pages were started from it; not negative
    std::optional<Timestamp> lastUsed;

    friend bool operator==(const Labels&, const Labels&) = default;
};

}  // namespace matwright
