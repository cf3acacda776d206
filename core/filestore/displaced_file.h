// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace matwright {

// What a program left when it was killed within DiskFileStore::replaceIf: a whole file, hidden
// beside its target as ".NAME.matwright-<inode>-<time>-<random>.kept" (hexadecimal digits;
// inode and time of the file that was to be replaced; a NAME above 150 bytes is cut short).
struct DisplacedFile {
    std::filesystem::path path;
    std::string targetName;  // perhaps cut short
    // It is the file that was to be replaced, unchanged since: the new one is in its place and this
    // one is of no more use. Else it is new work that was never put in its place, or what another
    // program wrote in that moment: something to keep.
    bool isReplaced = false;
};

// Those in the folder, by name; none where it cannot be read. While a replaceIf runs in the folder
// its file may be among them, so callers keep others from saving there meanwhile.
std::vector<DisplacedFile> displacedFiles(const std::filesystem::path& folder);

// A new name for one; `inode` and `modifiedNanoseconds` are of the file that is to be replaced.
std::string displacedName(std::string_view targetName, std::uint64_t inode,
                          std::int64_t modifiedNanoseconds);

}  // namespace matwright
