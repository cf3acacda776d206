// SPDX-License-Identifier: MIT
#include "core/papers/papers_journal.h"

namespace matwright {

namespace {

constexpr const char* lastDone =
    "SELECT number,label,made FROM change WHERE undone=0 AND kept=1 ORDER BY number DESC LIMIT 1";
constexpr const char* firstUndone =
    "SELECT number,label,made FROM change WHERE undone=1 ORDER BY number LIMIT 1";

Result<std::optional<PapersChange>> changeOf(SqliteDatabase& database, SqliteStatement& asked) {
    if (asked.next()) {
        return PapersChange{asked.numberAt(0), asked.textAt(1), asked.textAt(2)};
    }
    if (asked.failure() != 0) {
        return std::unexpected(storeError(database, papersStoreKind));
    }
    return std::nullopt;
}

Result<std::optional<PapersChange>> changeBy(SqliteDatabase& database, const char* sql) {
    SqliteStatement asked = database.statement(sql);
    return changeOf(database, asked);
}

Error notTheLast() {
    return {ErrorCode::NotFound,
            "The list was changed meanwhile, perhaps by another program. Nothing was taken back; "
            "look at the list again.",
            {}};
}

// Takes back (side 0) or brings back (side 1) the change that `sql` finds.
Result<std::optional<PapersChange>> restore(SqliteDatabase& database, const char* sql, int side,
                                            std::optional<std::int64_t> number) {
    StoreTransaction transaction(database);
    if (!transaction.hasBegun()) {
        return std::unexpected(storeError(database, papersStoreKind));
    }
    const Result<std::optional<PapersChange>> found = changeBy(database, sql);
    if (!found) {
        return found;
    }
    if (number && (!*found || (*found)->number != *number)) {
        return std::unexpected(notTheLast());
    }
    if (!*found) {
        return std::nullopt;
    }
    const std::int64_t change = (*found)->number;
    const bool good = restorePapers(database, change, side) &&
                      database.statement("UPDATE change SET undone=? WHERE number=?")
                          .number(1, side == 0)
                          .number(2, change)
                          .run() &&
                      countVersion(database) && transaction.commit();
    if (!good) {
        return std::unexpected(storeError(database, papersStoreKind));
    }
    return found;
}

}  // namespace

Result<std::optional<PapersChange>> PapersStore::undoable() {
    return changeBy(m_database, lastDone);
}

Result<std::optional<PapersChange>> PapersStore::redoable() {
    return changeBy(m_database, firstUndone);
}

Result<std::optional<PapersChange>> PapersStore::lastCut(std::string_view once) {
    SqliteStatement asked = m_database.statement(
        "SELECT number,label,made FROM change WHERE undone=0 AND once<>'' AND "
        "(once=?1 OR substr(once,1,length(?1)+1)=?1||' ') ORDER BY number DESC LIMIT 1");
    asked.text(1, once);
    return changeOf(m_database, asked);
}

Result<std::optional<PapersChange>> PapersStore::undo(std::optional<std::int64_t> number) {
    return restore(m_database, lastDone, 0, number);
}

Result<std::optional<PapersChange>> PapersStore::redo(std::optional<std::int64_t> number) {
    return restore(m_database, firstUndone, 1, number);
}

}  // namespace matwright
