// SPDX-License-Identifier: MIT
#include "core/library/scan_sentences.h"

#include <fmt/format.h>

#include <cerrno>
#include <system_error>

#include "core/filestore/system_error.h"

namespace matwright {

namespace {

std::string systemWords(int number) {
    return std::generic_category().message(number);
}

}  // namespace

std::string missingTopSentence(int number) {
    switch (number) {
        case ENOENT:
            return "The library folder is not there. It may be on a disk that is not plugged in; "
                   "plug it in, or choose another folder.";
        case ENOTDIR:
            return "The library is not a folder. Choose another folder.";
        case EACCES:
        case EPERM:
            return "You are not allowed to look into the library folder. Change its permissions, "
                   "or choose another folder.";
        default:
            return fmt::format(
                "The library folder cannot be read ({}). Try again, or choose another folder.",
                systemWords(number));
    }
}

std::string vanishedTopSentence() {
    return "The library folder was taken away while it was read. Put it back, or choose another "
           "folder.";
}

std::string unreadFolderSentence(int number) {
    switch (number) {
        case EACCES:
        case EPERM:
            return "You are not allowed to look into this folder, so its sketches are missing. "
                   "Change its permissions.";
        case EMFILE:
        case ENFILE:
            return "This folder was left out, because too many files are open. Close other "
                   "programs and try again.";
        default:
            return fmt::format(
                "This folder cannot be read ({}), so its sketches are missing. Try again, or copy "
                "it to another disk.",
                systemWords(number));
    }
}

std::string tooDeepSentence() {
    return "This folder lies too deep in other folders and was left out. Move it further up.";
}

std::string selfLinkSentence() {
    return "This link leads round in a circle and was left out. Remove it.";
}

std::string deadLinkSentence() {
    return "This link leads to a file that is not there. Remove it, or put the file back.";
}

std::string circleSentence() {
    return "This link leads back to a folder it lies in and was left out. Remove it.";
}

std::string secondWaySentence() {
    return "This link leads to a folder that is shown at another place in the library and was "
           "left out. Nothing is missing.";
}

std::string notAFileSentence() {
    return "This is a device or a pipe, not a file, and was left out. Remove it, or give it "
           "another name.";
}

std::string unreadFileSentence(int number) {
    return readError(number, {}).sentence;
}

std::string tooLargeSentence(std::uint64_t limit) {
    return tooLargeError(limit, {}).sentence;
}

}  // namespace matwright
