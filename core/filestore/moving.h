// SPDX-License-Identifier: MIT
#pragma once

#include <expected>
#include <string>

namespace matwright {

// Gives a file or folder another name, on one disk and never over anything: EEXIST where the new
// name is taken, EXDEV where it lies on another disk. `from` and `to` are names inside the open
// folders. On a disk that has neither RENAME_NOREPLACE nor hard links, something that takes the new
// name between the look and the rename is overwritten.
std::expected<void, int> moveWithoutReplacing(int fromFolder, const std::string& from, int toFolder,
                                              const std::string& to);

// Lets two names of one disk change places; EINVAL or ENOSYS where it cannot.
std::expected<void, int> exchangeNames(int folder, const std::string& one,
                                       const std::string& other);

}  // namespace matwright
