// SPDX-License-Identifier: MIT
#include "tests/checks/library_speed/memory_use.h"

#include <unistd.h>

#include <cstdio>
#include <filesystem>
#include <fstream>

namespace matwright::test {

double residentBytes() {
    std::ifstream statm("/proc/self/statm");
    double pages = 0;
    double residentPages = 0;
    statm >> pages >> residentPages;
    return residentPages * static_cast<double>(::sysconf(_SC_PAGESIZE));
}

double peakBytes() {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);) {
        double kilobytes = 0;
        if (std::sscanf(line.c_str(), "VmHWM: %lf kB", &kilobytes) == 1) {
            return kilobytes * 1'024;
        }
    }
    return 0;
}

MemoryUse memoryUse(const std::string& arguments) {
    MemoryUse use;
    const std::string self = std::filesystem::read_symlink("/proc/self/exe").string();
    FILE* program = ::popen(("'" + self + "' '" + arguments + "'").c_str(), "r");
    if (program == nullptr || std::fscanf(program, "%lf %lf", &use.warm, &use.peak) != 2) {
        use = {};
    }
    if (program != nullptr) {
        ::pclose(program);
    }
    return use;
}

}  // namespace matwright::test
