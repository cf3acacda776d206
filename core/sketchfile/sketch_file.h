// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "core/error/error.h"
#include "core/filestore/file_store.h"
#include "core/sketch/sketch.h"

namespace matwright {

// A sketch file is an SVG picture of the sketch with the model itself inside it, in the namespace
// below, as the first child of the root. The model is the truth; the picture is redrawn at each
// save and never read. The format is written down in DEVELOPERS.md. Suffix: ".sketch.svg".
inline constexpr const char* sketchNamespace = "urn:matwright:sketch";
inline constexpr int sketchFormatVersion = 1;
inline constexpr const char* sketchFileSuffix = ".sketch.svg";
// Files above these are refused before anything is built from them.
inline constexpr std::size_t maxSketchFileBytes = std::size_t{32} * 1024 * 1024;
inline constexpr int maxSketchFileDepth = 64;

struct LoadedSketch {
    Sketch sketch;
    // One sentence for each part of the model that this version does not know; they would be lost
    // on saving.
    std::vector<std::string> warnings;
};

// Never looks outside `bytes`: no link is followed, no DTD is read (a DOCTYPE is refused).
// Errors: TooLarge, NotXml, WrongFormat, NewerVersion, Malformed, with line or element in `where`.
Result<LoadedSketch> readSketch(std::string_view bytes);

// Equal sketches give equal bytes; readSketch(writeSketch(s)) gives s. Precondition: the sketch is
// sound.
std::string writeSketch(const Sketch& sketch);

// writeSketch(), or TooLarge where readSketch() would refuse so many bytes. Whatever keeps a sketch
// for later goes this way.
Result<std::string> savableBytes(const Sketch& sketch);

// Reading and writing a file; `where` of an error begins with the file's name.
Result<LoadedSketch> loadSketch(FileStore& store, const std::filesystem::path& path);
Result<void> saveSketch(FileStore& store, const std::filesystem::path& path, const Sketch& sketch);

}  // namespace matwright
