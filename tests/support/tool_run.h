// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace matwright::test {

// Programs of others that some checks compare with.

struct ToolRun {
    int code = -1;              // what it answered; -1 where it could not be started or was killed
    std::string output;         // of standard output
    double seconds = 0;         // from its start to its end
    double cpuSeconds = 0;      // of all its threads
    std::size_t peakBytes = 0;  // the most memory it had at one time
};
// Runs a program to its end, with `arguments` as they are (no shell), its complaints thrown away.
// `folder` is where it works; empty: where this program does.
ToolRun runTool(const std::vector<std::string>& arguments,
                const std::filesystem::path& folder = {});

}  // namespace matwright::test
