// SPDX-License-Identifier: MIT
#include "core/filestore/temporary_file.h"

#include <fcntl.h>
#include <gtest/gtest.h>

#include "core/filestore/file_store.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

using test::TemporaryFolder;
using test::writeFile;

FileDescriptor opened(const TemporaryFolder& folder) {
    return FileDescriptor(::open(folder.path().c_str(), O_RDONLY | O_DIRECTORY));
}

TEST(TemporaryFile, IsRecognisedForItsFileOnly) {
    EXPECT_TRUE(isTemporaryNameOf(".a.svg.matwright-0123456789abcdef.part", "a.svg"));
    for (const char* other :
         {"a.svg", ".a.svg", ".b.svg.matwright-0123456789abcdef.part",
          ".a.svg.matwright-0123456789abcde.part", ".a.svg.matwright-0123456789abcdef0.part",
          ".a.svg.matwright-0123456789ABCDEF.part", ".a.svg.matwright-0123456789abcdeg.part",
          "a.svg.matwright-0123456789abcdef.part", ".a.svg.matwright-0123456789abcdef.par",
          ".a.svg.matwright-0123456789abcdef.part~", ""}) {
        EXPECT_FALSE(isTemporaryNameOf(other, "a.svg")) << other;
    }
}

TEST(TemporaryFile, HasANameThatIsRecognised) {
    const TemporaryFolder folder;
    const FileDescriptor open = opened(folder);
    for (const std::string& target : {std::string("a"), std::string(255, 'n')}) {
        const auto made = createTemporaryFile(open.number(), target, 0600);
        ASSERT_TRUE(made);
        EXPECT_TRUE(isTemporaryNameOf(made->name, target)) << made->name;
        EXPECT_LE(made->name.size(), 255u);
    }
}

TEST(TemporaryFile, ALongNameIsNotCutInsideACharacter) {
    const TemporaryFolder folder;
    std::string target;
    for (int i = 0; i < 63; ++i) {
        target += "x\u5199";
    }
    const auto made = createTemporaryFile(opened(folder).number(), target, 0600);
    ASSERT_TRUE(made);
    const std::size_t mark = made->name.find(".matwright-");
    EXPECT_TRUE(target.starts_with(made->name.substr(1, mark - 1)));
    EXPECT_NE(static_cast<unsigned char>(target[mark - 1]) & 0xC0, 0x80) << made->name;
}

TEST(TemporaryFile, OneInUseIsNotSweptAndOneLeftBehindIs) {
    const TemporaryFolder folder;
    const FileDescriptor open = opened(folder);
    auto inUse = createTemporaryFile(open.number(), "file", 0600);
    ASSERT_TRUE(inUse);
    EXPECT_EQ(sweepLeftovers(open.number(), "file"), 0);
    EXPECT_EQ(folder.names(), std::vector{inUse->name});
    inUse->file.close();
    EXPECT_EQ(sweepLeftovers(open.number(), "another"), 0);
    EXPECT_EQ(sweepLeftovers(open.number(), "file"), 1);
    EXPECT_TRUE(folder.names().empty());
}

TEST(TemporaryFile, ASaveSweepsWhatEarlierSavesLeftAndNothingElse) {
    const TemporaryFolder folder;
    const std::string mine = ".file.matwright-0123456789abcdef.part";
    const std::vector<std::string> others{".file", ".other.matwright-0123456789abcdef.part",
                                          "file.matwright-0123456789abcdef.part"};
    writeFile(folder / mine, "left");
    for (const std::string& other : others) {
        writeFile(folder / other, "kept");
    }
    ASSERT_TRUE(DiskFileStore().replace(folder / "file", "new"));
    EXPECT_FALSE(std::filesystem::exists(folder / mine));
    for (const std::string& other : others) {
        EXPECT_TRUE(std::filesystem::exists(folder / other)) << other;
    }
}

TEST(TemporaryFile, AFolderOfSuchANameIsLeftAlone) {
    const TemporaryFolder folder;
    const std::string name = ".file.matwright-0123456789abcdef.part";
    std::filesystem::create_directory(folder / name);
    EXPECT_EQ(sweepLeftovers(opened(folder).number(), "file"), 0);
    EXPECT_TRUE(std::filesystem::exists(folder / name));
}

}  // namespace
}  // namespace matwright
