// SPDX-License-Identifier: MIT
#include "one_photo.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <cstdio>
#include <fstream>
#include <sstream>

#include "core/photo/photo_source.h"
#include "tests/support/temporary_folder.h"

namespace matwright::test {

namespace {

double peakMegabytes() {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);) {
        if (line.starts_with("VmHWM:")) {
            return std::stod(line.substr(6)) / 1024;
        }
    }
    return 0;
}

std::string answerOf(const Result<Raster>& raster) {
    return raster ? fmt::format("{} x {}", raster->size.width, raster->size.height)
                  : raster.error().sentence;
}

void startReading(const char* program, const char* file, const char* out, const char* err) {
    const int flags = O_WRONLY | O_CREAT | O_TRUNC;
    ::dup2(::open(out, flags, 0600), STDOUT_FILENO);
    ::dup2(::open(err, flags, 0600), STDERR_FILENO);
    ::execl(program, program, "one", file, nullptr);
    ::_exit(127);
}

}  // namespace

int readOnePhoto(const std::filesystem::path& file) {
    const WithoutPrivileges plain;
    const auto facts = photoFacts(file);
    const std::string small = answerOf(decodePhoto(file, 512));
    const auto whole = decodePhoto(file, 0);
    const bool isRead = whole.has_value() && facts.has_value();
    std::printf("%d %.1f\n%s; %s; %s\n", isRead ? 1 : 0, peakMegabytes(),
                facts ? facts->format.c_str() : facts.error().sentence.c_str(), small.c_str(),
                answerOf(whole).c_str());
    return 0;
}

Verdict readApart(const std::filesystem::path& program, const std::filesystem::path& file) {
    const TemporaryFolder said;
    const std::string out = said / "out";
    const std::string err = said / "err";
    const auto began = std::chrono::steady_clock::now();
    const pid_t child = ::fork();
    if (child == 0) {
        startReading(program.c_str(), file.c_str(), out.c_str(), err.c_str());
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    Verdict verdict;
    verdict.seconds =
        std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
    std::istringstream printed(readFile(out));
    verdict.hasEnded = WIFEXITED(status) && WEXITSTATUS(status) == 0 &&
                       static_cast<bool>(printed >> verdict.isRead >> verdict.megabytes >> std::ws);
    std::getline(printed, verdict.answer);
    verdict.complaints = readFile(err);
    return verdict;
}

}  // namespace matwright::test
