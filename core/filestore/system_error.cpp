// SPDX-License-Identifier: MIT
#include "core/filestore/system_error.h"

#include <fmt/format.h>

#include <cerrno>
#include <system_error>

namespace matwright {

namespace {

std::string systemText(int number) {
    return std::generic_category().message(number);
}

std::string readSentence(int number) {
    switch (number) {
        case ENOENT:
        case ENOTDIR:
            return "There is no such file; it may have been moved or renamed. Look for it in "
                   "another folder.";
        case EACCES:
        case EPERM:
            return "You are not allowed to read this file. Change its permissions, or copy it to "
                   "a folder of your own.";
        case ELOOP:
            return "This is a link that leads round in a circle. Open the file itself.";
        case ENAMETOOLONG:
            return "The file's name is too long for this disk. Give it a shorter name.";
        case EIO:
            return "The disk reported a fault while the file was read. Try again, or open a copy "
                   "from another disk.";
        default:
            return fmt::format(
                "The system did not let the file be read ({}). Try again, or copy it to another "
                "folder.",
                systemText(number));
    }
}

std::string writeSentence(int number) {
    switch (number) {
        case ENOSPC:
        case EDQUOT:
            return "The file was not saved: there is no room left on the disk. Free some space, "
                   "or save it in another folder.";
        case EFBIG:
            return "The file was not saved: it is larger than the disk or your account allows. "
                   "Save it in another folder.";
        case EROFS:
            return "The file was not saved: the disk can only be read. Save it in another folder.";
        case EACCES:
        case EPERM:
            return "The file was not saved: you are not allowed to write it, or to write in its "
                   "folder. Change the permissions, or save it in another folder.";
        case ENOENT:
        case ENOTDIR:
            return "The file was not saved: its folder is not there any more. Save it in another "
                   "folder.";
        case ELOOP:
            return "The file was not saved: its name is a link that leads round in a circle. Save "
                   "it under another name.";
        case ENAMETOOLONG:
            return "The file was not saved: its name is too long for this disk. Give it a shorter "
                   "name.";
        case EIO:
            return "The file was not saved: the disk reported a fault. Save it on another disk.";
        default:
            return fmt::format(
                "The file was not saved: the system refused it ({}). Save it in another folder.",
                systemText(number));
    }
}

}  // namespace

Error readError(int number, const std::filesystem::path& path) {
    const bool isMissing = number == ENOENT || number == ENOTDIR;
    return {isMissing ? ErrorCode::NotFound : ErrorCode::ReadFailed, readSentence(number),
            path.string()};
}

Error writeError(int number, const std::filesystem::path& path) {
    return {ErrorCode::WriteFailed, writeSentence(number), path.string()};
}

Error tooLargeError(std::size_t limit, const std::filesystem::path& path) {
    constexpr std::size_t bytesPerMegabyte = 1'048'576;
    return {ErrorCode::TooLarge,
            limit < bytesPerMegabyte
                ? fmt::format("The file is larger than the {} bytes that can be opened here. "
                              "Check that it is the right file.",
                              limit)
                : fmt::format("The file is larger than the {} MB that can be opened here. Check "
                              "that it is the right file.",
                              limit / bytesPerMegabyte),
            path.string()};
}

}  // namespace matwright
