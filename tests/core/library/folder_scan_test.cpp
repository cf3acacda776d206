// SPDX-License-Identifier: MIT
#include "core/library/folder_scan.h"

#include <gtest/gtest.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>
#include <unistd.h>

#include <algorithm>
#include <cstring>

#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

namespace fs = std::filesystem;
using test::TemporaryFolder;
using Names = std::vector<std::string>;

void touch(const fs::path& path) {
    fs::create_directories(path.parent_path());
    test::writeFile(path, "x");
}

Names filesOf(const FolderScan& scan) {
    Names names;
    for (const ScannedFile& file : scan.files) {
        names.push_back(file.path);
    }
    return names;
}

Names troubled(const FolderScan& scan) {
    Names names;
    for (const LibraryProblem& problem : scan.problems) {
        EXPECT_FALSE(problem.sentence.empty()) << problem.path;
        names.push_back(problem.path);
    }
    return names;
}

TEST(FolderScan, FindsSketchesInAllSubFoldersInOrder) {
    const TemporaryFolder folder;
    for (const char* name : {"b.sketch.svg", "a/z.sketch.svg", "a/b/c.sketch.svg", "a.txt",
                             "plain.svg", "a/notes.sketch.svg.bak", "x.sketch.svg/y.sketch.svg"}) {
        touch(folder / name);
    }
    fs::create_directory(folder / "empty");
    const FolderScan scan = scanFolder(folder.path());
    EXPECT_EQ(filesOf(scan), (Names{"a/b/c.sketch.svg", "a/z.sketch.svg", "b.sketch.svg",
                                    "x.sketch.svg/y.sketch.svg"}));
    EXPECT_EQ(scan.folders, (Names{"a", "a/b", "empty", "x.sketch.svg"}));
    EXPECT_TRUE(scan.problems.empty());
    EXPECT_TRUE(scan.unread.empty());
    EXPECT_FALSE(scan.cancelled);
}

TEST(FolderScan, GivesTheSignatureOfEachFile) {
    const TemporaryFolder folder;
    test::writeFile(folder / "a.sketch.svg", "12345");
    struct stat facts = {};
    ASSERT_EQ(::stat((folder / "a.sketch.svg").c_str(), &facts), 0);
    const FileSignature signature = scanFolder(folder.path()).files.at(0).signature;
    EXPECT_EQ(signature.size, 5U);
    EXPECT_EQ(signature.inode, facts.st_ino);
    EXPECT_EQ(signature.modifiedNanoseconds / 1'000'000'000, facts.st_mtim.tv_sec);
    EXPECT_EQ(signature.changedNanoseconds % 1'000'000'000, facts.st_ctim.tv_nsec);
}

TEST(FolderScan, LeavesHiddenNamesOut) {
    const TemporaryFolder folder;
    touch(folder / ".hidden.sketch.svg");
    touch(folder / ".matwright/labels/a.sketch.svg");
    touch(folder / ".sketch.svg");
    const FolderScan scan = scanFolder(folder.path());
    EXPECT_TRUE(scan.files.empty());
    EXPECT_TRUE(scan.folders.empty());
}

TEST(FolderScan, KeepsNamesOfAnyBytes) {
    const TemporaryFolder folder;
    const std::string end = ".sketch.svg";
    const Names names{"caf\xe9" + end, "tab\tnew\nline" + end,
                      std::string(255 - end.size(), 'n') + end, "\\ \" % ' ;" + end};
    for (const std::string& name : names) {
        touch(folder / name);
    }
    Names sorted = names;
    std::ranges::sort(sorted);
    EXPECT_EQ(filesOf(scanFolder(folder.path())), sorted);
}

TEST(FolderScan, WalksALinkedFolderOnceAndEntersNoCircle) {
    const TemporaryFolder folder;
    const TemporaryFolder other;
    touch(other / "far.sketch.svg");
    touch(folder / "in/near.sketch.svg");
    fs::create_directory_symlink(other.path(), folder / "a-way-out");
    fs::create_directory_symlink(folder.path(), folder / "in/circle");
    fs::create_directory_symlink(folder.path(), other / "back");
    fs::create_directory_symlink(folder / "in", folder / "a-second-way");
    const FolderScan scan = scanFolder(folder.path());
    EXPECT_EQ(filesOf(scan), (Names{"a-way-out/far.sketch.svg", "in/near.sketch.svg"}));
    EXPECT_EQ(troubled(scan), (Names{"a-second-way", "a-way-out/back", "in/circle"}));
    EXPECT_TRUE(scan.unread.empty());
    EXPECT_NE(scan.problems[0].sentence, scan.problems[1].sentence) << "no circle, only a repeat";
    EXPECT_EQ(scan.problems[1].sentence, scan.problems[2].sentence);
}

TEST(FolderScan, TakesALinkToAFileAsTheFileAndNamesDeadOnes) {
    const TemporaryFolder folder;
    const TemporaryFolder other;
    touch(other / "real");
    fs::create_symlink(other / "real", folder / "good.sketch.svg");
    fs::create_symlink(other / "gone", folder / "dead.sketch.svg");
    fs::create_symlink(other / "gone", folder / "dead but no sketch");
    fs::create_symlink("self.sketch.svg", folder / "self.sketch.svg");
    fs::create_symlink("loop", folder / "loop");
    const FolderScan scan = scanFolder(folder.path());
    EXPECT_EQ(filesOf(scan), Names{"good.sketch.svg"});
    EXPECT_EQ(troubled(scan), (Names{"dead.sketch.svg", "loop", "self.sketch.svg"}));
}

TEST(FolderScan, NamesWhatIsNoFileWithoutOpeningIt) {
    const TemporaryFolder folder;
    ASSERT_EQ(::mkfifo((folder / "pipe.sketch.svg").c_str(), 0600), 0);
    const int socket = ::socket(AF_UNIX, SOCK_STREAM, 0);
    sockaddr_un address = {};
    address.sun_family = AF_UNIX;
    const std::string path = folder / "socket.sketch.svg";
    ASSERT_LT(path.size(), sizeof(address.sun_path));
    std::memcpy(address.sun_path, path.c_str(), path.size() + 1);
    ASSERT_EQ(::bind(socket, reinterpret_cast<const sockaddr*>(&address), sizeof(address)), 0);
    ::close(socket);
    fs::create_symlink("/dev/zero", folder / "zero.sketch.svg");
    ASSERT_EQ(::mkfifo((folder / "pipe").c_str(), 0600), 0);
    const FolderScan scan = scanFolder(folder.path());
    EXPECT_TRUE(scan.files.empty());
    EXPECT_EQ(troubled(scan), (Names{"pipe.sketch.svg", "socket.sketch.svg", "zero.sketch.svg"}));
}

TEST(FolderScan, NamesAFileThatIsTooLargeAndNotOneOfExactlyTheLimit) {
    const TemporaryFolder folder;
    touch(folder / "limit.sketch.svg");
    touch(folder / "over.sketch.svg");
    touch(folder / "huge.sketch.svg");
    fs::resize_file(folder / "limit.sketch.svg", maxSketchFileBytes);
    fs::resize_file(folder / "over.sketch.svg", maxSketchFileBytes + 1);
    fs::resize_file(folder / "huge.sketch.svg", std::uintmax_t{2} << 30);
    const FolderScan scan = scanFolder(folder.path());
    EXPECT_EQ(filesOf(scan), Names{"limit.sketch.svg"});
    EXPECT_EQ(troubled(scan), (Names{"huge.sketch.svg", "over.sketch.svg"}));
}

TEST(FolderScan, NamesAFolderThatMayNotBeReadAndWhatMayHideInIt) {
    const TemporaryFolder folder;
    test::setPermissions(folder.path(), 0755);
    touch(folder / "shut/a.sketch.svg");
    touch(folder / "open/b.sketch.svg");
    test::setPermissions(folder / "shut", 0);
    const test::WithoutPrivileges plain;
    const FolderScan scan = scanFolder(folder.path());
    EXPECT_EQ(filesOf(scan), Names{"open/b.sketch.svg"});
    EXPECT_EQ(troubled(scan), Names{"shut"});
    EXPECT_TRUE(scan.mayHide("shut/a.sketch.svg"));
    EXPECT_TRUE(scan.mayHide("shut/deep/a.sketch.svg"));
    EXPECT_FALSE(scan.mayHide("shutter/a.sketch.svg"));
    EXPECT_FALSE(scan.mayHide("open/a.sketch.svg"));
}

TEST(FolderScan, OfAMissingFolderIsOneProblem) {
    const TemporaryFolder folder;
    const FolderScan scan = scanFolder(folder / "nothing");
    EXPECT_EQ(troubled(scan), Names{""});
    EXPECT_TRUE(scan.mayHide("anything"));
    touch(folder / "file");
    EXPECT_EQ(troubled(scanFolder(folder / "file")), Names{""});
}

TEST(FolderScan, NoticesThatTheFolderIsTakenAwayMeanwhile) {
    const TemporaryFolder folder;
    for (int i = 0; i < 600; ++i) {
        touch(folder / ("library/" + std::to_string(i) + ".sketch.svg"));
    }
    ScanOptions options;
    options.progress = [&](std::size_t) { fs::remove_all(folder / "library"); };
    const FolderScan scan = scanFolder(folder / "library", options);
    EXPECT_EQ(troubled(scan), Names{""});
    EXPECT_TRUE(scan.mayHide("1.sketch.svg"));
}

TEST(FolderScan, TakesASubFolderThatVanishesMeanwhileAsGone) {
    const TemporaryFolder folder;
    for (int i = 0; i < 600; ++i) {
        touch(folder / ("library/a/" + std::to_string(i) + ".sketch.svg"));
    }
    touch(folder / "library/b.sketch.svg");
    ScanOptions options;
    options.progress = [&](std::size_t) { fs::remove_all(folder / "library/a"); };
    const FolderScan scan = scanFolder(folder / "library", options);
    EXPECT_TRUE(scan.problems.empty()) << scan.problems[0].text();
    EXPECT_FALSE(scan.mayHide("a/1.sketch.svg"));
    EXPECT_EQ(filesOf(scan).back(), "b.sketch.svg");
}

TEST(FolderScan, NamesFoldersThatLieTooDeepOnce) {
    const TemporaryFolder folder;
    touch(folder / "1/2/3/4/deep.sketch.svg");
    touch(folder / "1/2/good.sketch.svg");
    ScanOptions options;
    options.maxDepth = 2;
    const FolderScan scan = scanFolder(folder.path(), options);
    EXPECT_EQ(filesOf(scan), Names{"1/2/good.sketch.svg"});
    EXPECT_EQ(troubled(scan), Names{"1/2/3"});
}

TEST(FolderScan, StopsWhenAsked) {
    const TemporaryFolder folder;
    touch(folder / "a.sketch.svg");
    std::stop_source stop;
    stop.request_stop();
    ScanOptions options;
    options.stop = stop.get_token();
    const FolderScan scan = scanFolder(folder.path(), options);
    EXPECT_TRUE(scan.cancelled);
    EXPECT_TRUE(scan.files.empty());
}

TEST(FolderScan, SuspectsAFileThatChangedShortlyBeforeItWasRead) {
    constexpr std::int64_t second = 1'000'000'000;
    FileSignature signature;
    signature.changedNanoseconds = 100 * second;
    EXPECT_TRUE(mayHaveChanged(signature, 100 * second));
    EXPECT_TRUE(mayHaveChanged(signature, 103 * second - 1));
    EXPECT_FALSE(mayHaveChanged(signature, 103 * second));
    EXPECT_TRUE(mayHaveChanged(signature, 50 * second)) << "from a clock ahead of ours";
}

TEST(LibraryProblem, ShowsItsPathOnOneLine) {
    EXPECT_EQ((LibraryProblem{"a\nb", "It is odd."}).text(), "a\\x0ab: It is odd.");
    EXPECT_EQ((LibraryProblem{"", "It is odd."}).text(), "It is odd.");
}

}  // namespace
}  // namespace matwright
