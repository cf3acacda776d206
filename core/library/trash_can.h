// SPDX-License-Identifier: MIT
#pragma once

#include <ctime>
#include <expected>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "core/library/trash.h"

namespace matwright {

// One trash directory of the specification and its two folders.
struct TrashCan {
    std::filesystem::path folder;
    // Paths inside are told from here; empty in the home trash, where they are absolute.
    std::filesystem::path top;

    std::filesystem::path files() const { return folder / "files"; }
    std::filesystem::path infoFileOf(const std::string& name) const {
        return folder / "info" / (name + ".trashinfo");
    }
};

// The trashes that may take the file (a real place, its folder resolved), best first.
std::vector<TrashCan> trashCansFor(const std::filesystem::path& file, const TrashPlaces& places);

// The topmost folder of the mount that `folder` is on; a changed device or mount number is another
// mount.
std::filesystem::path topOfMount(const std::filesystem::path& folder);

// Makes the folders of a trash where they are missing, for their owner only. False, with errno set,
// where that fails or where they are not plain folders.
bool makeFolders(const TrashCan& can);

// "name", "name (2)", … with the number before the extension, cut at the end of a character so that
// ".trashinfo" still fits behind it.
std::string trashName(const std::string& name, int number);

// Makes the information file exclusively and whole; EEXIST where the name is taken.
std::expected<std::filesystem::path, int> makeTrashInfo(const TrashCan& can,
                                                        const std::string& name,
                                                        const std::filesystem::path& file,
                                                        std::time_t now);

// As RFC 2396, section 2, escapes them: letters, digits, "-_.!~*'()" and "/" stand for themselves.
std::string escapedPath(std::string_view path);

}  // namespace matwright
