// SPDX-License-Identifier: MIT
#include "app/starters/starters_folder.h"

#include <system_error>

namespace matwright::app {

std::filesystem::path startersFolder(const std::filesystem::path& programFolder) {
    for (const char* place : {MATWRIGHT_INSTALLED_STARTERS, "../share/matwright/starters"}) {
        const std::filesystem::path folder = (programFolder / place).lexically_normal();
        std::error_code failure;
        if (std::filesystem::is_directory(folder, failure)) {
            return folder;
        }
    }
    return {};
}

}  // namespace matwright::app
