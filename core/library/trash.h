// SPDX-License-Identifier: MIT
#pragma once

#include <ctime>
#include <filesystem>

#include "core/error/error.h"

namespace matwright {

// The desktop's trash, by the freedesktop.org Trash specification 1.0
// (https://specifications.freedesktop.org/trash-spec/trashspec-1.0.html).
//
// A file on the disk of the home trash, $XDG_DATA_HOME/Trash, goes there. A file on another mount
// goes to the trash at its top: $topdir/.Trash/$uid where an administrator has made $topdir/.Trash
// (a folder, no link, with the sticky bit), else $topdir/.Trash-$uid. The way back stands in a file
// of info/, which is made first and exclusively; a name that is taken there or in files/ gets a
// number. Nothing is copied between disks and nothing is ever deleted: where no trash can be used,
// the file stays where it is.

struct TrashPlaces {
    std::filesystem::path dataHome;  // $XDG_DATA_HOME, absolute
    unsigned user = 0;               // the $uid of trashes on other mounts
    std::time_t now = 0;             // written as local time
};
// Of the person who runs the program, now. XDG_DATA_HOME counts where it is absolute, else
// $HOME/.local/share (XDG Base Directory Specification 0.8).
TrashPlaces ownTrashPlaces();

struct TrashedFile {
    std::filesystem::path original;  // absolute
    std::filesystem::path file;      // where it lies in the trash
    std::filesystem::path info;
};

// `file` may be a file or a link (the link itself is moved). Errors: NotFound, WriteFailed.
Result<TrashedFile> moveToTrash(const std::filesystem::path& file, const TrashPlaces& places);

// Puts it back to `to`, for example its old place; false, with nothing changed, where something
// else has that name by now. Folders above it are made again. Errors: NotFound where it is not in
// the trash any more, WriteFailed.
Result<bool> restoreFromTrash(const TrashedFile& trashed, const std::filesystem::path& to);

}  // namespace matwright
