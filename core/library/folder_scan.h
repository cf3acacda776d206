// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <stop_token>
#include <string>
#include <string_view>
#include <vector>

#include "core/sketchfile/sketch_file.h"

namespace matwright {

// What the system says of a file without reading it. Two looks that give equal signatures saw the
// same bytes, unless the file changed within the grain of the disk's clock (see mayHaveChanged()).
struct FileSignature {
    std::uint64_t size = 0;
    std::int64_t modifiedNanoseconds = 0;  // last change of the bytes, since 1970 UTC
    std::int64_t changedNanoseconds = 0;  // last change of bytes, name or rights; set by the system
    std::uint64_t inode = 0;
    friend auto operator<=>(const FileSignature&, const FileSignature&) = default;
};

// Whether a file with this signature, read at `readNanoseconds`, may have been changed afterwards
// and still show this signature: it had last changed less than three seconds before (some disks
// count two seconds at a time). Such a file has to be read again.
bool mayHaveChanged(const FileSignature& signature, std::int64_t readNanoseconds);

struct ScannedFile {
    std::string path;  // below the scanned folder, '/' between folders, the system's own bytes
    FileSignature signature;
};

// Something in a library that could not be used. `path` is as in ScannedFile (empty for the library
// folder itself), printable() at the seam where it is shown; `sentence` is one whole sentence: what
// is wrong and what to do.
struct LibraryProblem {
    std::string path;
    std::string sentence;
    friend auto operator<=>(const LibraryProblem&, const LibraryProblem&) = default;

    // "printable path: sentence"
    std::string text() const;
};

struct FolderScan {
    std::vector<ScannedFile> files;        // by path
    std::vector<std::string> folders;      // by path; those that were read, without the top
    std::vector<LibraryProblem> problems;  // by path, one a path
    // Folders (as in `folders`, "" is the top) that exist but could not be read to the end; what
    // was in them is not known.
    std::vector<std::string> unread;
    bool cancelled = false;  // then it is only what was found so far

    // Whether `path` may be there although it was not found: it lies in an unread folder.
    bool mayHide(std::string_view path) const;
};

struct ScanOptions {
    // Only names that end so.
    std::string suffix = sketchFileSuffix;
    std::stop_token stop;
    // Larger files are named as a problem instead.
    std::uint64_t maxBytes = maxSketchFileBytes;
    // Called now and then with the number of files found so far.
    std::function<void(std::size_t)> progress;
    // Deeper folders are named as a problem.
    int maxDepth = 64;
};

// Walks a folder and everything below it; reads names only.
// - Names that begin with '.' are left out, files and folders.
// - Plain files only: a pipe, socket or device with the suffix is named as a problem and never
//   opened, as is a file above the size limit.
// - A link to a file counts as that file. A link to a folder is walked like a folder, after all
//   folders that are no links; where the folder it names was walked already or lies above it, it is
//   named as a problem instead. So every folder is walked once, and no circle is entered.
// - A dead link with the suffix, a link that leads to itself and a folder that may not be read are
//   named as problems; a file or sub-folder that vanishes during the walk counts as gone.
// Never throws and never fails as a whole. Where the folder itself is missing, cannot be read or is
// taken away during the walk, that is a problem with an empty path, and "" is in `unread`.
FolderScan scanFolder(const std::filesystem::path& folder, const ScanOptions& options = {});

}  // namespace matwright
