// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

#include "core/content/content_key.h"

namespace matwright {

// Photos that moved or got another name are found again by what their files hold. Nothing is
// changed on the disk; plain files only, links are not followed. May take long: not for the
// window's thread.

struct LostFile {
    std::string path;          // where it was
    ContentKey content;        // what it holds
    std::uintmax_t bytes = 0;  // how long it is; 0: not known, then its name must be the same
};

struct FindingLimits {
    std::size_t files = 200'000;  // names looked at
    std::chrono::milliseconds time = std::chrono::seconds(60);
    int depth = 16;  // folders within folders
};

enum class FindingEnd {
    Found,
    NotThere,  // everything was looked at
    GaveUp,    // a limit came first
    Stopped,   // by the stop token
};

struct Finding {
    FindingEnd end = FindingEnd::NotThere;
    std::optional<std::filesystem::path> place;  // where it is, when found
};

// For each file, in their order. First where it was; then below the folders, in their order: files
// of the same name and then any of the same length, each only believed when it holds the same.
// Hidden folders and what may not be read are passed over. One walk for all of them.
std::vector<Finding> findAgain(std::span<const LostFile> lost,
                               std::span<const std::filesystem::path> folders,
                               const FindingLimits& limits = {}, std::stop_token stop = {});

// The key of a plain file; nothing where it cannot be read or `stop` was asked for.
std::optional<ContentKey> contentKeyOfFile(const std::filesystem::path& file,
                                           const std::stop_token& stop = {});

}  // namespace matwright
