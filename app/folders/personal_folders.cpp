// SPDX-License-Identifier: MIT
#include "app/folders/personal_folders.h"

#include <cstdlib>

namespace matwright::app {

namespace {

std::filesystem::path baseFolder(const Environment& environment, const char* variable,
                                 const char* belowHome) {
    std::filesystem::path set = environment(variable);
    if (set.is_absolute()) {
        return set;
    }
    const std::filesystem::path home = environment("HOME");
    return home.is_absolute() ? home / belowHome : std::filesystem::path();
}

std::filesystem::path ownPart(const std::filesystem::path& base, const char* below) {
    return base.empty() ? base : base / below;
}

}  // namespace

std::string systemEnvironment(const char* variable) {
    const char* value = std::getenv(variable);
    return value ? value : "";
}

std::filesystem::path personalLibraryFolder(const Environment& environment) {
    return ownPart(baseFolder(environment, "XDG_DATA_HOME", ".local/share"), "matwright/library");
}

std::filesystem::path personalDataFolder(const Environment& environment) {
    return ownPart(baseFolder(environment, "XDG_DATA_HOME", ".local/share"), "matwright");
}

std::filesystem::path personalCacheFolder(const Environment& environment) {
    return ownPart(baseFolder(environment, "XDG_CACHE_HOME", ".cache"), "matwright");
}

}  // namespace matwright::app
