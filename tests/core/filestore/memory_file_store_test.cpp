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

}  // namespace
}  // namespace matwright
