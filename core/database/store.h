// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <span>
#include <string>
#include <string_view>

#include "core/database/sqlite_database.h"
#include "core/error/error.h"

namespace matwright {

// A person's own data kept in one SQLite file (not an index that can be made anew): nothing in it
// is ever thrown away because it cannot be read.

struct StoreKind {
    // For sentences: "the list of papers on hand".
    std::string_view what;
    // Stands in the file's header, so that no other database is taken for it. Not 0.
    std::int32_t applicationId = 0;
    // steps[n] makes version n + 1 out of version n, with SQL that gives no rows; version 0 is an
    // empty file. Steps are only ever added.
    std::span<const char* const> steps;
};

// How long a call waits for other programs that hold the file: where nobody sits in front of it,
// and on a window's thread, where a sentence is better than a window that does not answer.
inline constexpr std::chrono::milliseconds storePatience{5'000};
inline constexpr std::chrono::milliseconds windowPatience{100};

// Opens the store, makes the file (readable by its owner only) and its folder where they are
// missing, and brings an older version up to date in one transaction. Changes are on the disk when
// a transaction ends (rollback journal, synchronous=FULL); what a killed program had begun is taken
// back at the next opening. Several programs may have it open; each call waits up to
// `patience` for the others.
//
// Errors: ReadFailed or WriteFailed where the system refuses, WrongFormat for another database,
// something that is no database, or a damaged one; NewerVersion. The file is left as it is.
Result<SqliteDatabase> openStore(const std::filesystem::path& file, const StoreKind& kind,
                                 std::chrono::milliseconds patience = storePatience);

// Why the last statement failed, as a sentence with what to do: a full disk, another program that
// holds the file, a damaged file.
Error storeError(const SqliteDatabase& database, const StoreKind& kind);

// All or nothing: what is run between construction and commit(). Without commit() it is taken back.
class StoreTransaction {
  public:
    // Begins at once, so that what is read in it is still true when it is written.
    explicit StoreTransaction(SqliteDatabase& database);
    ~StoreTransaction();
    StoreTransaction(const StoreTransaction&) = delete;
    StoreTransaction& operator=(const StoreTransaction&) = delete;
    StoreTransaction(StoreTransaction&&) = delete;
    StoreTransaction& operator=(StoreTransaction&&) = delete;

    bool hasBegun() const { return m_isOpen; }
    // False where it failed; nothing of it is kept then. Ask storeError() first, then leave.
    bool commit();

  private:
    SqliteDatabase& m_database;
    bool m_isOpen;
};

}  // namespace matwright
