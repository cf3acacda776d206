// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

struct sqlite3;
struct sqlite3_stmt;

namespace matwright {

// One statement, prepared once and run any number of times. Texts and blobs bound to it must live
// until it has been run. A parameter that was never bound is NULL.
class SqliteStatement {
  public:
    SqliteStatement(sqlite3* database, std::string_view sql);

    // Parameters count from 1, columns from 0. Texts and blobs are not copied.
    SqliteStatement& number(int parameter, std::int64_t value);
    SqliteStatement& text(int parameter, std::string_view text);
    SqliteStatement& blob(int parameter, std::string_view bytes);
    // Runs a statement that gives no rows, and makes it ready for the next time.
    bool run();
    // Steps to the next row; false at the end or where it fails.
    bool next();
    std::int64_t numberAt(int column) const;
    bool isNullAt(int column) const;
    // Until the next step.
    std::string_view blobAt(int column) const;
    // UTF-8; a copy.
    std::string textAt(int column) const { return std::string(blobAt(column)); }
    // SQLITE_OK, or what the last step failed with.
    int failure() const { return m_failure; }

  private:
    struct Finalizer {
        void operator()(sqlite3_stmt* statement) const;
    };
    std::unique_ptr<sqlite3_stmt, Finalizer> m_statement;
    int m_failure = 0;
};

// An open SQLite database.
class SqliteDatabase {
  public:
    // Opens or makes the file; nothing is read yet. Waits at most `patienceMilliseconds` for other
    // programs at each step.
    SqliteDatabase(const std::filesystem::path& file, int patienceMilliseconds);

    bool isOpen() const { return m_isOpen; }
    // Runs statements that give no rows; SQLITE_OK or what failed.
    int run(const char* sql);
    // The single number a statement gives; `otherwise` where it fails.
    std::int64_t number(const char* sql, std::int64_t otherwise);
    SqliteStatement statement(std::string_view sql) { return {m_database.get(), sql}; }
    // Of the row that was inserted last.
    std::int64_t lastId() const;
    // SQLite's number for why the last call failed, without its extended part; SQLITE_OK (0) where
    // it did not.
    int failure() const;
    // In the system's words, for people who look for the cause.
    std::string message() const;

  private:
    struct Closer {
        void operator()(sqlite3* database) const;
    };
    std::unique_ptr<sqlite3, Closer> m_database;
    bool m_isOpen = false;
};

}  // namespace matwright
