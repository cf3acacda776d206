// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>

namespace matwright::app {

// The folder of the sketches that come with the program, to be read only: beside an installed
// program, or the one of the build tree. `programFolder` is the folder the running program lies in.
// Empty where there is none.
std::filesystem::path startersFolder(const std::filesystem::path& programFolder);

}  // namespace matwright::app
