// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

#include "core/library/holdings.h"
#include "core/sketch/sketch.h"
#include "tests/support/random_sketch.h"

namespace matwright::test {

// A sketch as a person might have drawn it: a page of the catalogue with margins, one to nine
// photos in rows, some with mats, often on a strip, with room for a title and journaling where
// there is any, a name and perhaps a note. Sound; the same for the same random numbers.
Sketch generatedSketch(Random& random);

// A library of such sketches in memory, as an index would know it: in sub-folders, with tags, some
// favourites, uses. Entry i is the same for every count, so a larger library begins like a smaller.
std::vector<LibraryEntry> generatedEntries(std::uint64_t seed, std::size_t count);
// The path and the sketch of its entry i.
std::string generatedPath(std::uint64_t seed, std::size_t i);
Sketch generatedSketch(std::uint64_t seed, std::size_t i);
Labels generatedLabels(std::uint64_t seed, std::size_t i);

// The same library as files; makes the folders. `withLabels` writes the label files too.
void writeGeneratedLibrary(const std::filesystem::path& folder, std::uint64_t seed,
                           std::size_t count, bool withLabels = false);

}  // namespace matwright::test
