// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>
#include <sqlite3.h>

#include <thread>

#include "core/library/index.h"
#include "core/library/search.h"
#include "tests/support/generated_library.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

namespace fs = std::filesystem;
constexpr std::uint64_t seed = 50;
constexpr std::size_t sketches = 12;

class IndexTrouble : public testing::Test {
  protected:
    fs::path library() const { return m_folder / "library"; }
    fs::path cache() const { return m_folder / "cache"; }

    void SetUp() override {
        test::setPermissions(m_folder.path(), 0755);
        test::writeGeneratedLibrary(library(), seed, sketches);
        LibraryIndex index(library(), cache());
        ASSERT_EQ(index.update().indexTrouble, "");
        m_file = index.indexFile();
        ASSERT_TRUE(fs::exists(m_file));
    }

    // Whatever became of the index file: the library is all there, now and in the next program.
    void expectAllIsThere(bool withTrouble) const {
        LibraryIndex index(library(), cache());
        index.remembered();
        for (int i = 0; i < 2; ++i) {
            const IndexUpdate update = index.update();
            EXPECT_EQ(update.holdings->size(), sketches);
            EXPECT_TRUE(update.problems.empty());
            EXPECT_EQ(!update.indexTrouble.empty(), withTrouble) << update.indexTrouble;
        }
    }
    fs::path snapshot() const { return m_file.string() + ".start"; }
    void expectMadeAnew() const {
        expectAllIsThere(false);
        EXPECT_EQ(LibraryIndex(library(), cache()).remembered()->size(), sketches);
        fs::remove(snapshot());
        EXPECT_EQ(LibraryIndex(library(), cache()).remembered()->size(), sketches);
    }

    test::TemporaryFolder m_folder;
    fs::path m_file;
};

TEST_F(IndexTrouble, ADeletedIndexIsMadeAnew) {
    fs::remove_all(cache());
    expectMadeAnew();
}

TEST_F(IndexTrouble, BytesThatAreNoDatabaseAreReplaced) {
    test::writeFile(m_file, std::string(100'000, 'x'));
    expectMadeAnew();
}

TEST_F(IndexTrouble, AnEmptyIndexFileIsFilled) {
    test::writeFile(m_file, "");
    expectMadeAnew();
}

TEST_F(IndexTrouble, ACutOffIndexIsMadeAnew) {
    fs::resize_file(m_file, fs::file_size(m_file) / 2);
    expectMadeAnew();
}

TEST_F(IndexTrouble, ADatabaseOfAnotherProgramIsReplaced) {
    fs::remove(m_file);
    sqlite3* other = nullptr;
    ASSERT_EQ(sqlite3_open(m_file.c_str(), &other), SQLITE_OK);
    sqlite3_exec(other, "CREATE TABLE sketch(a); PRAGMA application_id=7;", nullptr, nullptr,
                 nullptr);
    sqlite3_close(other);
    expectMadeAnew();
}

TEST_F(IndexTrouble, AnIndexOfAnotherVersionIsReplaced) {
    sqlite3* other = nullptr;
    ASSERT_EQ(sqlite3_open(m_file.c_str(), &other), SQLITE_OK);
    sqlite3_exec(other, "PRAGMA user_version=999; DROP TABLE labels;", nullptr, nullptr, nullptr);
    sqlite3_close(other);
    expectMadeAnew();
}

TEST_F(IndexTrouble, RowsWithDamagedBytesAreReadFromTheFolderAgain) {
    const std::string bytes = test::readFile(m_file);
    test::Random random(seed);
    int damaged = 0;
    for (int run = 0; run < 60; ++run) {
        std::string changed = bytes;
        for (int i = 0; i < 20; ++i) {
            changed[test::below(random, changed.size())] ^=
                static_cast<char>(1 + test::below(random, 255));
        }
        for (const char* ending : {"-wal", "-shm"}) {
            fs::remove(m_file.string() + ending);
        }
        test::writeFile(m_file, changed);
        LibraryIndex index(library(), cache());
        const IndexUpdate update = index.update();
        ASSERT_EQ(update.holdings->size(), sketches) << "seed " << seed << " run " << run;
        for (std::size_t i = 0; i < sketches; ++i) {
            const auto at = update.holdings->indexOf(test::generatedPath(seed, i));
            ASSERT_TRUE(at) << "run " << run;
            EXPECT_EQ(update.holdings->entry(*at).facts, factsOf(test::generatedSketch(seed, i)));
        }
        damaged += update.progress.read > 0 ? 1 : 0;
    }
    EXPECT_GT(damaged, 0);
}

TEST_F(IndexTrouble, ADamagedSnapshotIsNotBelieved) {
    const auto right = LibraryIndex(library(), cache()).remembered();
    const std::string bytes = test::readFile(snapshot());
    ASSERT_FALSE(bytes.empty());
    test::Random random(seed);
    for (int run = 0; run < 200; ++run) {
        std::string changed = bytes;
        changed[test::below(random, changed.size())] ^=
            static_cast<char>(1 + test::below(random, 255));
        test::writeFile(snapshot(), run % 2 == 0 ? changed : bytes.substr(0, changed.size() / 2));
        const auto remembered = LibraryIndex(library(), cache()).remembered();
        ASSERT_EQ(remembered->size(), sketches) << "seed " << seed << " run " << run;
        EXPECT_EQ(remembered->entry(3), right->entry(3));
    }
    test::writeFile(snapshot(), "");
    EXPECT_EQ(LibraryIndex(library(), cache()).remembered()->size(), sketches);
    fs::remove(m_file);
    EXPECT_EQ(LibraryIndex(library(), cache()).remembered()->size(), 0U);
    expectMadeAnew();
}

TEST_F(IndexTrouble, ASnapshotGivesTheSameAsTheRows) {
    const auto fromSnapshot = LibraryIndex(library(), cache()).remembered();
    fs::remove(snapshot());
    const auto fromRows = LibraryIndex(library(), cache()).remembered();
    ASSERT_EQ(fromSnapshot->size(), fromRows->size());
    for (std::size_t i = 0; i < fromRows->size(); ++i) {
        EXPECT_EQ(fromSnapshot->entry(i), fromRows->entry(i));
        EXPECT_EQ(fromSnapshot->indexOf(fromRows->path(i)), i);
    }
    Query query;
    query.words = "a";
    query.roomForTitle = true;
    EXPECT_EQ(search(*fromSnapshot, query).indices, search(*fromRows, query).indices);
    EXPECT_EQ(search(*fromSnapshot, query).counts, search(*fromRows, query).counts);
}

TEST_F(IndexTrouble, AFolderThatMayNotBeWrittenIsDoneWithout) {
    fs::remove_all(cache());
    fs::create_directory(cache());
    test::setPermissions(cache(), 0555);
    const test::WithoutPrivileges plain;
    expectAllIsThere(true);
    LibraryIndex index(library(), cache());
    EXPECT_EQ(index.update().progress.read, sketches);
    // The files were written moments ago, so they are read again; what matters is that they count.
    EXPECT_EQ(index.update().holdings->size(), sketches);
}

TEST_F(IndexTrouble, AFileInPlaceOfTheCacheFolderIsDoneWithout) {
    fs::remove_all(cache());
    test::writeFile(cache(), "");
    expectAllIsThere(true);
}

TEST_F(IndexTrouble, AnIndexThatIsLockedForLongIsDoneWithoutAndUsedAgainLater) {
    test::writeFile(library() / test::generatedPath(seed, 0),
                    test::readFile(library() / test::generatedPath(seed, 1)));
    sqlite3* other = nullptr;
    ASSERT_EQ(sqlite3_open(m_file.c_str(), &other), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(other, "BEGIN EXCLUSIVE", nullptr, nullptr, nullptr), SQLITE_OK);
    LibraryIndex index(library(), cache());
    const IndexUpdate locked = index.update();
    EXPECT_EQ(locked.holdings->size(), sketches);
    EXPECT_NE(locked.indexTrouble, "");
    sqlite3_exec(other, "ROLLBACK", nullptr, nullptr, nullptr);
    sqlite3_close(other);
    const IndexUpdate after = index.update();
    EXPECT_EQ(after.holdings->size(), sketches);
    EXPECT_EQ(after.indexTrouble, "");
}

TEST_F(IndexTrouble, ManyProgramsMayUseOneIndex) {
    std::vector<std::jthread> programs;
    for (std::size_t program = 0; program < 4; ++program) {
        programs.emplace_back([this, program] {
            LibraryIndex index(library(), cache());
            for (std::size_t run = 0; run < 8; ++run) {
                const std::size_t i = sketches + 4 * run + program;
                const fs::path path = library() / test::generatedPath(seed, i);
                fs::create_directories(path.parent_path());
                test::writeFile(path, test::readFile(library() / test::generatedPath(seed, 0)));
                const IndexUpdate update = index.update();
                EXPECT_EQ(update.indexTrouble, "");
                EXPECT_TRUE(update.holdings->indexOf(test::generatedPath(seed, i)));
            }
        });
    }
    programs.clear();
    // Whoever was slow may have remembered less than the others know; an update mends that.
    EXPECT_EQ(LibraryIndex(library(), cache()).update().holdings->size(), sketches + 32);
    EXPECT_EQ(LibraryIndex(library(), cache()).remembered()->size(), sketches + 32);
}

}  // namespace
}  // namespace matwright
