// SPDX-License-Identifier: MIT
#include "core/database/store.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <array>
#include <chrono>
#include <fstream>

#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

using test::TemporaryFolder;

constexpr std::array<const char*, 1> firstSteps{
    "CREATE TABLE thing(id INTEGER PRIMARY KEY, name TEXT)"};
constexpr std::array<const char*, 2> bothSteps{firstSteps[0],
                                               "ALTER TABLE thing ADD COLUMN size INTEGER"};
constexpr StoreKind oldKind{"the list of things", 0x4d777431, firstSteps};
constexpr StoreKind newKind{"the list of things", 0x4d777431, bothSteps};
constexpr StoreKind otherKind{"the list of others", 0x4d777432, firstSteps};

class StoreTest : public testing::Test {
  protected:
    void add(SqliteDatabase& database, std::string_view name) {
        ASSERT_TRUE(database.statement("INSERT INTO thing(name) VALUES(?)").text(1, name).run());
    }
    std::int64_t things(SqliteDatabase& database) {
        return database.number("SELECT count(*) FROM thing", -1);
    }

    TemporaryFolder m_folder;
    std::filesystem::path m_file = m_folder.path() / "new folder" / "things.sqlite";
};

TEST_F(StoreTest, IsMadeWithItsFolderAndReadableByItsOwnerOnly) {
    const auto opened = openStore(m_file, oldKind);
    ASSERT_TRUE(opened) << opened.error().text();
    struct stat status{};
    ASSERT_EQ(::stat(m_file.c_str(), &status), 0);
    EXPECT_EQ(status.st_mode & 0777U, 0600U);
}

TEST_F(StoreTest, KeepsWhatWasCommittedAndTakesBackWhatWasNot) {
    {
        auto database = openStore(m_file, oldKind);
        ASSERT_TRUE(database);
        StoreTransaction kept(*database);
        add(*database, "kept");
        ASSERT_TRUE(kept.commit());
        const StoreTransaction dropped(*database);
        add(*database, "dropped");
    }
    auto again = openStore(m_file, oldKind);
    ASSERT_TRUE(again);
    EXPECT_EQ(things(*again), 1);
}

TEST_F(StoreTest, AnOlderVersionIsBroughtUpAndKeepsItsRows) {
    {
        auto database = openStore(m_file, oldKind);
        add(*database, "old");
    }
    auto database = openStore(m_file, newKind);
    ASSERT_TRUE(database) << database.error().text();
    EXPECT_EQ(database->number("SELECT count(*) FROM thing WHERE size IS NULL", -1), 1);
}

TEST_F(StoreTest, ALaterVersionIsRefusedByNameAndLeftAsItIs) {
    {
        ASSERT_TRUE(openStore(m_file, newKind));
    }
    const auto refused = openStore(m_file, oldKind);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::NewerVersion);
    EXPECT_TRUE(openStore(m_file, newKind));
}

TEST_F(StoreTest, AnotherDatabaseIsNotTakenForIt) {
    {
        ASSERT_TRUE(openStore(m_file, otherKind));
    }
    const auto refused = openStore(m_file, oldKind);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::WrongFormat);
}

TEST_F(StoreTest, WhatIsNoDatabaseIsRefusedAndLeftAsItIs) {
    std::filesystem::create_directories(m_file.parent_path());
    const std::string text(5000, 'x');
    std::ofstream(m_file) << text;
    const auto refused = openStore(m_file, oldKind);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::WrongFormat);
    std::ifstream left(m_file);
    EXPECT_EQ(std::string(std::istreambuf_iterator<char>(left), {}), text);
}

TEST_F(StoreTest, APlaceThatCannotBeWrittenIsASentence) {
    const auto refused = openStore("/proc/nowhere/things.sqlite", oldKind);
    ASSERT_FALSE(refused);
    EXPECT_NE(refused.error().sentence.find("the list of things"), std::string::npos);
}

TEST_F(StoreTest, OpensWhileAnotherProgramIsWriting) {
    auto writing = openStore(m_file, oldKind);
    ASSERT_TRUE(writing);
    const StoreTransaction longOne(*writing);
    add(*writing, "not kept yet");
    auto opened = openStore(m_file, oldKind);
    ASSERT_TRUE(opened) << opened.error().text();
    EXPECT_EQ(things(*opened), 0);
}

TEST_F(StoreTest, ATransactionThatCannotBeginSaysSo) {
    auto database = openStore(m_file, oldKind);
    ASSERT_TRUE(database);
    const StoreTransaction first(*database);
    EXPECT_TRUE(first.hasBegun());
    StoreTransaction second(*database);
    EXPECT_FALSE(second.hasBegun());
    EXPECT_FALSE(second.commit());
}

TEST_F(StoreTest, AWindowWaitsOnlyShortlyForAnotherProgramAndSaysWhy) {
    auto other = openStore(m_file, oldKind);
    ASSERT_TRUE(other);
    ASSERT_EQ(other->run("BEGIN EXCLUSIVE"), 0);
    const auto began = std::chrono::steady_clock::now();
    const auto refused = openStore(m_file, oldKind, windowPatience);
    EXPECT_LT(std::chrono::steady_clock::now() - began, storePatience / 2);
    ASSERT_FALSE(refused);
    EXPECT_NE(refused.error().sentence.find("Another program is busy with the list of things"),
              std::string::npos)
        << refused.error().sentence;
    ASSERT_EQ(other->run("COMMIT"), 0);
    EXPECT_TRUE(openStore(m_file, oldKind, windowPatience));
}

}  // namespace
}  // namespace matwright
