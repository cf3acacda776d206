// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <functional>
#include <span>
#include <string>
#include <vector>

#include "core/content/content_key.h"
#include "core/error/error.h"
#include "core/filestore/file_store.h"
#include "core/library/folder_scan.h"
#include "core/library/label_record.h"
#include "core/library/labels.h"

namespace matwright {

// Where the labels of a library's sketches are kept: one small file a sketch, in
// ".matwright/labels", in the same sub-folders, "Harbour day.json" for "Harbour day.sketch.svg". So
// a cloud drive carries them along, and two computers rarely write the same file.
//
// Each record holds the path and the content of its sketch. A sketch is found by its path; one that
// another program moved or renamed is found by its content. Records of vanished sketches stay.
// Where a cloud drive made a second file for one sketch, because two computers changed it at once,
// both count: all tags, either's favourite, both notes, the higher count and the later use. Records
// that had to make way, because another sketch has that path now, lie in ".matwright/labels/
// %set-aside", without a path, to be found by content.

std::filesystem::path labelsFolder(const std::filesystem::path& library);
// The file that the record of a sketch is kept in, whether there is one or not.
std::filesystem::path labelFileOf(const std::filesystem::path& library, const std::string& sketch);

struct LabelRecords {
    std::vector<LabelRecord> records;      // in no order; several may name one sketch
    std::vector<LibraryProblem> problems;  // records that cannot be read, once each
};
// All of a library; empty where it has none. Reads the disk, without the lock: files are always
// whole.
LabelRecords readLabelRecords(const std::filesystem::path& library);

// What is known of a sketch without its labels.
struct KeyedSketch {
    std::string path;
    ContentKey content;
};
// The labels of each of the sketches (all of the library), in their order:
//   1. a record that names the sketch's path and its content;
//   2. of those without: a record of this content whose own sketch is not there any more, or has
//      become another (a rename elsewhere);
//   3. of those without: a record that names the path, whatever content (a change elsewhere), and
//      that no other sketch has taken.
// A record goes to one sketch only: a copy made by another program has no labels of its own.
std::vector<Labels> labelsFor(std::span<const KeyedSketch> sketches,
                              std::span<const LabelRecord> records);

// What a change of labels came to.
struct LabelChange {
    Labels labels;
    // One sentence for the person where something is worth saying, else empty.
    std::string said;
};
// Reads the labels of a sketch, lets `change` change them and writes them, under the library's
// lock, so that two windows never undo each other. Tags are put in order afterwards: spaces at
// their ends go, empty and double ones too. A record that cannot be read is set aside (".broken" is
// added to its name) and said; one written by a later version is left as it is (NewerVersion).
// Errors: NotFound where the sketch is not there, WriteFailed, BadText for text that is no UTF-8,
// OutOfRange for tags or notes above maxTextBytes.
Result<LabelChange> changeLabels(FileStore& store, const std::filesystem::path& library,
                                 const std::string& sketch,
                                 const std::function<void(Labels&)>& change);

}  // namespace matwright
