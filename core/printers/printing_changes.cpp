// SPDX-License-Identifier: MIT
#include <algorithm>

#include "core/printers/printing_store.h"
#include "core/printers/store_tables.h"

namespace matwright {

namespace {

std::unexpected<Error> changesFailure(const SqliteDatabase& database) {
    return std::unexpected(storeError(database, printingKind));
}

// Rows of the change go first: they name the prints that are to go.
constexpr const char* undoSteps[] = {
    "UPDATE print SET state = c.was_state, page = c.was_page, day = c.was_day FROM change_print c "
    "WHERE c.change = ?1 AND c.print = print.id AND c.was_state IS NOT NULL",
    "UPDATE paper SET at_hand = min(at_hand + c.used, ?2) FROM change_paper c WHERE c.change = ?1 "
    "AND c.paper = paper.id AND paper.at_hand = c.left_at_hand",
    "CREATE TEMP TABLE undone AS SELECT print FROM change_print WHERE change = ?1 AND was_state IS "
    "NULL",
    "DELETE FROM done WHERE once = (SELECT once FROM change WHERE number = ?1)",
    "DELETE FROM change WHERE number = ?1",
    "DELETE FROM print WHERE id IN (SELECT print FROM undone)",
    "DROP TABLE undone",
};

Error noChange(bool isOneMeant) {
    return {ErrorCode::NotFound,
            isOneMeant ? "The prints were changed meanwhile, perhaps by another program. Nothing "
                         "was taken back; look at the list again."
                       : "There is no change of prints to take back.",
            ""};
}

Result<void> runUndoSteps(SqliteDatabase& database, std::int64_t number) {
    for (const std::string_view step : undoSteps) {
        SqliteStatement statement = database.statement(std::string(step));
        if (step.contains("?1")) {
            statement.number(1, number);
        }
        if (step.contains("?2")) {
            statement.number(2, maxPapersAtHand);
        }
        if (!statement.run()) {
            return changesFailure(database);
        }
    }
    return {};
}

}  // namespace

Result<std::vector<PrintingChange>> PrintingStore::changes(std::size_t most) {
    std::vector<PrintingChange> changes;
    SqliteStatement rows =
        m_database.statement("SELECT number, what, day FROM change ORDER BY number DESC LIMIT ?");
    rows.number(1, static_cast<std::int64_t>(std::min(most, keptChanges)));
    while (rows.next()) {
        changes.push_back({rows.numberAt(0), rows.textAt(1), rows.textAt(2)});
    }
    return rows.failure() == 0 ? Result<std::vector<PrintingChange>>(std::move(changes))
                               : changesFailure(m_database);
}

Result<PrintingChange> PrintingStore::undo(std::optional<std::int64_t> number) {
    StoreTransaction transaction(m_database);
    if (!transaction.hasBegun()) {
        return changesFailure(m_database);
    }
    const Result<std::vector<PrintingChange>> latest = changes(1);
    if (!latest) {
        return std::unexpected(latest.error());
    }
    if (latest->empty() || (number && latest->front().number != *number)) {
        return std::unexpected(noChange(number.has_value()));
    }
    if (const auto undone = runUndoSteps(m_database, latest->front().number); !undone) {
        return std::unexpected(undone.error());
    }
    return transaction.commit() ? Result<PrintingChange>(latest->front())
                                : changesFailure(m_database);
}

}  // namespace matwright
