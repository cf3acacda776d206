// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <functional>
#include <string>

namespace matwright::app {

// Where the programs keep what is a person's own, by the XDG Base Directory Specification 0.8: a
// variable counts where it holds an absolute path, else the folder below $HOME. Nothing is made or
// looked at. Empty where there is no home folder either.

// What a variable of the environment holds; empty where it is not set.
using Environment = std::function<std::string(const char*)>;
std::string systemEnvironment(const char* variable);

// The library of sketches of a person who chose no other folder:
// $XDG_DATA_HOME/matwright/library.
std::filesystem::path personalLibraryFolder(const Environment& environment = systemEnvironment);

// What a person has told the program and nothing else knows, such as the papers on hand:
// $XDG_DATA_HOME/matwright.
std::filesystem::path personalDataFolder(const Environment& environment = systemEnvironment);

// What can be thrown away and made again, such as the indexes of libraries:
// $XDG_CACHE_HOME/matwright.
std::filesystem::path personalCacheFolder(const Environment& environment = systemEnvironment);

}  // namespace matwright::app
