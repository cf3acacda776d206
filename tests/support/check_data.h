// SPDX-License-Identifier: MIT
#pragma once

#include <cstdlib>
#include <filesystem>
#include <optional>

namespace matwright::test {

// A file or folder of the outside tables and samples that some checks read, or nothing where they
// are not there: the folder is named by MATWRIGHT_CHECK_DATA and is no part of the project. Say so
// with GTEST_SKIP() << noCheckData.
inline std::optional<std::filesystem::path> checkData(const std::filesystem::path& inside) {
    const char* folder = std::getenv("MATWRIGHT_CHECK_DATA");
    if (!folder || !*folder || !std::filesystem::exists(std::filesystem::path(folder) / inside)) {
        return std::nullopt;
    }
    return std::filesystem::path(folder) / inside;
}

inline constexpr const char* noCheckData =
    "SKIPPED: MATWRIGHT_CHECK_DATA names no folder with the samples of this check.";

}  // namespace matwright::test
