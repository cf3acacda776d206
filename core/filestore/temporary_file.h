// SPDX-License-Identifier: MIT
#pragma once

#include <expected>
#include <string>
#include <string_view>

#include "core/filestore/file_descriptor.h"

namespace matwright {

// The temporary file of one save: ".NAME.matwright-0123456789abcdef.part" beside NAME (a NAME above
// 180 bytes is cut short). While the save runs its file is locked (flock); the system drops the
// lock when the program ends in whatever way, so a temporary file without a lock is a leftover.
struct TemporaryFile {
    FileDescriptor file;
    std::string name;  // inside the folder
};

// Creates and locks one in the open folder; the number of the system's error where that fails.
// `permissions` are subject to the umask.
std::expected<TemporaryFile, int> createTemporaryFile(int folder, std::string_view targetName,
                                                      unsigned permissions);

// Whether `fileName` is that of a temporary file for `targetName`, of any save.
bool isTemporaryNameOf(std::string_view fileName, std::string_view targetName);

// Removes the leftovers of interrupted saves of `targetName`; what is locked, and so belongs to a
// save that still runs, stays. Returns how many were removed. Failures are passed over: a leftover
// that stays does no harm.
int sweepLeftovers(int folder, std::string_view targetName);

}  // namespace matwright
