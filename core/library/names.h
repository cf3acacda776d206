// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "core/error/error.h"

namespace matwright {

// Names of sketches and of their files.
//
// A sketch has a name of its own inside the file, and that is the one people are shown. The file is
// called after it, "Harbour day.sketch.svg", and renaming sets both. Where two files of a folder
// would have one name, the second gets a number, "Harbour day (2).sketch.svg"; the sketch inside is
// not changed for it, so shownSketchName() adds the number.

// Names of files have at most this many bytes on the usual disks.
inline constexpr std::size_t maxFileNameBytes = 255;

// Whether the last part of the path ends as sketch files do, and has something before that.
bool hasSketchSuffix(std::string_view path);
// How a document's file is called behind its name: ".page.svg" where the path ends so, else the
// suffix of sketch files.
std::string_view documentSuffixOf(std::string_view path);
// The last part of the path without the suffix of sketch files, or of pages in the making.
std::string_view stemOf(std::string_view path);
// The name to show for a sketch in the file `path`: its own, or the file's where it has none. The
// number behind a file's name, " (2)" of a copy, is shown behind its own name too.
std::string shownSketchName(std::string_view ownName, std::string_view path);

// What a person typed as a name, without spaces at its ends. Errors, all BadText with the name as
// `where`: nothing in it, "/", control characters (line breaks too), text that is no UTF-8, a point
// at its beginning (such files are hidden), too long for a file's name.
Result<std::string> checkedName(std::string_view typed);
// The same for a sub-folder, perhaps several: "2026/Holidays". Empty is the library itself.
Result<std::string> checkedFolder(std::string_view typed);

// "stem.sketch.svg" for 1, "stem (2).sketch.svg" for 2 and so on. A stem that has a number already
// gets the new one in its place. Too long stems lose their end, at the end of a character, so that
// the whole has at most maxFileNameBytes.
std::string numberedFileName(std::string_view stem, int number);
// The same with another suffix in place of ".sketch.svg".
std::string numberedFileName(std::string_view stem, int number, std::string_view suffix);
// The stem without " (2)" or the like at its end; as it is where there is none.
std::string_view withoutNumber(std::string_view stem);

}  // namespace matwright
