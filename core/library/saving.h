// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/content/content_key.h"
#include "core/error/error.h"
#include "core/filestore/file_store.h"
#include "core/sketch/sketch.h"

namespace matwright {

// What a save came to.
struct SavedSketch {
    std::filesystem::path path;  // where the work lies now
    ContentKey content;          // of the file there: what the next save was opened from
    // Somebody else changed the file meanwhile, so the work went beside it.
    bool keptBoth = false;
    // One sentence for the person where something is worth saying, else empty.
    std::string said;
};

// Saves work that was opened from a file without overwriting anybody else's.
//
// `openedFrom` is the content the work goes back to: what was read from the file, or what the last
// save returned. Nothing means that no file is meant to be replaced (a new sketch). What happens:
//   - the file holds that content: it is replaced;
//   - it holds the new bytes already: nothing is written;
//   - it is gone, or was never there: it is made (somebody else may have moved it; that is said);
//   - it holds anything else, or cannot be read: it is left alone, and the work goes beside it
//     under a free name, "Harbour day (2).sketch.svg". That is said. If a file of such a name holds
//     the new bytes already, that one is meant, so saving again makes no third.
//
// The look and the replacement are under the lock of the library (outside of one: of the folder),
// so two windows or programs of ours never come between. A program that knows no such lock, a cloud
// drive for example, can: then see FileStore::replaceIf, which notices it on the usual disks; its
// header says what is left.
//
// A page in the making (".page.svg") is saved in the same way and keeps its own suffix.
//
// In a library the labels stay with the sketch: its record gets the new content. Labels that cannot
// be kept up to date are said; the save has succeeded all the same. A work that goes beside takes
// the tags and the note along.
//
// Errors: those of FileStore::replace and FolderLock::take; then nothing has changed.
Result<SavedSketch> saveKeepingBoth(FileStore& store, const std::filesystem::path& path,
                                    std::optional<ContentKey> openedFrom, std::string_view bytes);
Result<SavedSketch> saveKeepingBoth(FileStore& store, const std::filesystem::path& path,
                                    std::optional<ContentKey> openedFrom, const Sketch& sketch);

// Makes visible again what a program left hidden when it was killed in the middle of a save: new
// work, or another program's file, gets a free name beside its target. What was replaced for good
// is removed. Returns the files made visible. Every save does so in its own folder; whoever opens
// a library calls it once for all of it, sub-folders too.
Result<std::vector<std::filesystem::path>> rescueLeftovers(const std::filesystem::path& folder);

}  // namespace matwright
