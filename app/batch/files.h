// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <optional>
#include <string_view>

#include "app/batch/ports.h"
#include "core/making/making.h"

namespace matwright::app {

// The sketch, or that of a page in the making; the reader's warnings said on `err`; on failure says
// so and gives the exit code.
std::expected<Sketch, int> readInput(const std::filesystem::path& input, BatchPorts& ports);

// The same of a page in the making; a sketch comes as a page without photos.
std::expected<Making, int> readPage(const std::filesystem::path& input, BatchPorts& ports);

// Whether the path ends in this suffix (".svg"), in upper or lower case.
bool hasSuffix(const std::filesystem::path& path, std::string_view suffix);

// Writes one result, unless that is the input itself, and says its name on `out`. `what` tells
// what it is and may be empty.
int writeResult(const std::filesystem::path& input, const std::filesystem::path& output,
                std::string_view bytes, std::string_view what, BatchPorts& ports);

// The same for a result that cannot be an input.
int writeFile(const std::filesystem::path& output, std::string_view bytes, std::string_view what,
              BatchPorts& ports);
// The same, but never over a file that is there. Without `what` it says nothing of it.
int writeNewFile(const std::filesystem::path& output, std::string_view bytes,
                 std::optional<std::string_view> what, BatchPorts& ports);
// What a new file is told as, but beside JSON on `out` a sentence would be in the way.
std::optional<std::string_view> toldUnless(bool json, std::string_view what);
// The same for a sketch. `output` ends in ".sketch.svg".
int writeNewSketch(const std::filesystem::path& output, const Sketch& sketch, std::string_view what,
                   BatchPorts& ports);

// Complains of the name of a result.
int refuseSuffix(const std::filesystem::path& output, std::string_view wanted, BatchPorts& ports);

}  // namespace matwright::app
