// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/filestore/file_store.h"

namespace matwright {
namespace {

TEST(MemoryFileStore, GivesBackWhatWasPutIn) {
    MemoryFileStore store;
    ASSERT_TRUE(store.replace("a", "1"));
    ASSERT_TRUE(store.replace("a", "22"));
    EXPECT_EQ(store.read("a", 2), "22");
    EXPECT_EQ(store.read("a", 1).error().code, ErrorCode::TooLarge);
    EXPECT_EQ(store.read("b", 2).error().code, ErrorCode::NotFound);
}

TEST(MemoryFileStore, FailsOnDemandAndKeepsTheOldFile) {
    MemoryFileStore store;
    store.files["a"] = "old";
    store.failReplacesWith = Error{ErrorCode::WriteFailed, "No room.", "a"};
    EXPECT_EQ(store.replace("a", "new").error(), *store.failReplacesWith);
    EXPECT_EQ(store.read("a", 10), "old");
}

TEST(MemoryFileStore, MakesAFileOnlyWhereThereIsNone) {
    MemoryFileStore store;
    EXPECT_TRUE(store.create("file", "a").value());
    EXPECT_FALSE(store.create("file", "b").value());
    EXPECT_EQ(store.files.at("file"), "a");
}

TEST(MemoryFileStore, ReplacesOnlyWhatIsExpected) {
    MemoryFileStore store;
    const auto isA = [](std::string_view bytes) { return bytes == "a"; };
    EXPECT_EQ(store.replaceIf("file", 10, isA, "b").error().code, ErrorCode::NotFound);
    store.files["file"] = "a";
    EXPECT_FALSE(store.replaceIf("file", 0, isA, "b").value());
    EXPECT_TRUE(store.replaceIf("file", 10, isA, "b").value());
    EXPECT_FALSE(store.replaceIf("file", 10, isA, "c").value());
    EXPECT_EQ(store.files.at("file"), "b");
}

}  // namespace
}  // namespace matwright
