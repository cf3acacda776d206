// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>

namespace matwright::test {

// What became of one photo that was read in a program of its own.
struct Verdict {
    bool hasEnded = false;   // by itself and with an answer
    bool isRead = false;     // its pixels were decoded
    std::string answer;      // size or sentence
    std::string complaints;  // what came on stderr
    double megabytes = 0;    // the most memory that program had
    double seconds = 0;
};

// The part that runs in the program of its own: facts, a 512 pixel picture, the whole picture.
int readOnePhoto(const std::filesystem::path& file);

// Starts this program again to read one photo, as a person with no more rights than others.
Verdict readApart(const std::filesystem::path& program, const std::filesystem::path& file);

}  // namespace matwright::test
