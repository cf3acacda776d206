// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "core/content/content_key.h"
#include "core/error/error.h"
#include "core/filestore/file_store.h"
#include "core/library/labels.h"
#include "core/library/trash.h"

namespace matwright {

// Paths of sketches and folders in here are those of LibraryEntry: from the library folder down,
// '/' between folders, the system's own bytes. Everything is done under the library's lock, never
// overwrites a file, and takes the labels along. Errors: NotFound where the sketch is gone,
// WriteFailed, BadText for a name (see names.h); `where` is the path. Then nothing has changed,
// except that a new sub-folder may be there.

struct KeptSketch {
    std::string sketch;  // where it is now
    ContentKey content;  // what its file holds now
    // One sentence for the person where something is worth saying, else empty.
    std::string said;
};

// Names the sketch and its file anew (see names.h). Where another file has that name, the file gets
// a number behind, and that is said. The sketch's own name is set as well, which writes the file
// anew; a file with parts that this version does not know, or that it cannot read, keeps its bytes
// and only its file name changes, which is said.
Result<KeptSketch> renameSketch(FileStore& store, const std::filesystem::path& library,
                                const std::string& sketch, std::string_view newName);

// Moves it into a sub-folder, which is made where it is missing ("" is the library itself), under
// its name or the next free one.
Result<KeptSketch> moveSketch(FileStore& store, const std::filesystem::path& library,
                              const std::string& sketch, std::string_view folder);

// A second file with the same bytes in the given folder, under the next free name. It takes the
// tags and the note along; favourite and uses are the first one's own.
Result<KeptSketch> copySketch(FileStore& store, const std::filesystem::path& library,
                              const std::string& sketch, std::string_view folder);

// Moves it to the desktop's trash (see trash.h). Its labels stay, in case it comes back.
Result<TrashedFile> trashSketch(const std::filesystem::path& library, const std::string& sketch,
                                const TrashPlaces& places);
// The undo of it: at its old place, or under the next free name there. Its labels are there again.
Result<KeptSketch> untrashSketch(const std::filesystem::path& library, const TrashedFile& trashed);

// One page more was started from it, at that moment.
Result<Labels> countUse(FileStore& store, const std::filesystem::path& library,
                        const std::string& sketch, Timestamp now);

}  // namespace matwright
