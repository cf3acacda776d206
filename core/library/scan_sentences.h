// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>

namespace matwright {

// What a walk through a library has to say, each one whole sentence or two; `number` is the
// system's error number.
std::string missingTopSentence(int number);
std::string vanishedTopSentence();
std::string unreadFolderSentence(int number);
std::string tooDeepSentence();
std::string selfLinkSentence();
std::string deadLinkSentence();
std::string circleSentence();
std::string secondWaySentence();
std::string notAFileSentence();
std::string unreadFileSentence(int number);
std::string tooLargeSentence(std::uint64_t limit);

}  // namespace matwright
