// SPDX-License-Identifier: MIT
#pragma once

#include <cstdio>
#include <cstdlib>
#include <memory>
#include <string>

namespace matwright::test {

// Whether a program of that name can be run here.
inline bool hasTool(const std::string& name) {
    // NOLINTNEXTLINE(bugprone-command-processor): fixed names from the tests themselves
    return std::system(("command -v " + name + " >/dev/null 2>&1").c_str()) == 0;
}

// What a shell command prints; its errors go nowhere.
inline std::string outputOf(const std::string& command) {
    // NOLINTNEXTLINE(bugprone-command-processor)
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> pipe(
        ::popen((command + " 2>/dev/null").c_str(), "r"), ::pclose);
    std::string output;
    char piece[4096];
    while (pipe) {
        const std::size_t count = std::fread(piece, 1, sizeof piece, pipe.get());
        if (count == 0) {
            break;
        }
        output.append(piece, count);
    }
    return output;
}

}  // namespace matwright::test
