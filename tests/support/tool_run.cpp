// SPDX-License-Identifier: MIT
#include "tests/support/tool_run.h"

#include <fcntl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <chrono>

namespace matwright::test {

namespace {

double secondsOf(const timeval& time) {
    return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) / 1e6;
}

[[noreturn]] void becomeTool(std::vector<std::string> arguments, const std::string& folder,
                             int output) {
    std::vector<char*> pointers;
    for (std::string& argument : arguments) {
        pointers.push_back(argument.data());
    }
    pointers.push_back(nullptr);
    const int nowhere = ::open("/dev/null", O_RDWR | O_CLOEXEC);
    ::dup2(nowhere, STDIN_FILENO);
    ::dup2(output, STDOUT_FILENO);
    ::dup2(nowhere, STDERR_FILENO);
    if (folder.empty() || ::chdir(folder.c_str()) == 0) {
        ::execvp(pointers.front(), pointers.data());
    }
    ::_exit(127);
}

std::string allFrom(int file) {
    std::string text;
    std::array<char, 8192> piece{};
    for (ssize_t got = ::read(file, piece.data(), piece.size()); got > 0;
         got = ::read(file, piece.data(), piece.size())) {
        text.append(piece.data(), static_cast<std::size_t>(got));
    }
    return text;
}

}  // namespace

ToolRun runTool(const std::vector<std::string>& arguments, const std::filesystem::path& folder) {
    using Clock = std::chrono::steady_clock;
    std::array<int, 2> ends{};
    if (arguments.empty() || ::pipe2(ends.data(), O_CLOEXEC) != 0) {
        return {};
    }
    const auto start = Clock::now();
    const pid_t child = ::fork();
    if (child == 0) {
        becomeTool(arguments, folder.string(), ends[1]);
    }
    ::close(ends[1]);
    ToolRun run;
    run.output = allFrom(ends[0]);
    ::close(ends[0]);
    int status = 0;
    rusage use{};
    if (child < 0 || ::wait4(child, &status, 0, &use) != child) {
        return {};
    }
    run.seconds = std::chrono::duration<double>(Clock::now() - start).count();
    run.cpuSeconds = secondsOf(use.ru_utime) + secondsOf(use.ru_stime);
    run.peakBytes = static_cast<std::size_t>(use.ru_maxrss) * 1024;
    run.code = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return run;
}

}  // namespace matwright::test
