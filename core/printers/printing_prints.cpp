// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <utility>

#include "core/printers/change_writer.h"
#include "core/printers/printing_store.h"

namespace matwright {

namespace {

std::unexpected<Error> printsFailure(const SqliteDatabase& database) {
    return std::unexpected(storeError(database, printingKind));
}

constexpr const char* printColumns = "SELECT id, look, photo, state, page, day FROM print ";

Result<std::vector<PrintOnHand>> readPrints(const SqliteDatabase& database, SqliteStatement& rows) {
    std::vector<PrintOnHand> prints;
    while (rows.next()) {
        std::optional<PrintLook> look = parsePrintLook(rows.textAt(1));
        if (!look) {
            return std::unexpected(
                Error{ErrorCode::Malformed,
                      fmt::format("Print {} in the list of prints on hand cannot be read. Put back "
                                  "a copy of the list, or move it away to begin a new one.",
                                  rows.numberAt(0)),
                      rows.textAt(2)});
        }
        prints.push_back({{rows.numberAt(0)},
                          *std::move(look),
                          rows.textAt(2),
                          static_cast<PrintState>(rows.numberAt(3)),
                          rows.textAt(4),
                          rows.textAt(5)});
    }
    return rows.failure() == 0 ? Result<std::vector<PrintOnHand>>(std::move(prints))
                               : printsFailure(database);
}

std::string countText(std::size_t count, const char* what) {
    return fmt::format("{} {}{}", count, what, count == 1 ? "" : "s");
}

std::string whatOf(const PrintingDone& done) {
    if (done.made.empty()) {
        return fmt::format("Took {}", countText(done.taken.size(), "print"));
    }
    const std::string made = fmt::format("Printed {}", countText(done.made.size(), "print"));
    return done.taken.empty() ? made : made + fmt::format(", took {} on hand", done.taken.size());
}

Result<std::int64_t> writeDone(SqliteDatabase& database, const PrintingDone& done) {
    ChangeWriter writer(database, done.when);
    if (const auto begun = writer.begin(whatOf(done), done.once); !begun) {
        return std::unexpected(begun.error());
    }
    for (const MadePrint& print : done.made) {
        if (const auto made = writer.made(print); !made) {
            return std::unexpected(made.error());
        }
    }
    for (const auto& [print, page] : done.taken) {
        if (const auto moved = writer.moved(print, {PrintState::OnHand}, PrintState::Used, page);
            !moved) {
            return std::unexpected(moved.error());
        }
    }
    for (const auto& [paper, count] : done.papersUsed) {
        if (const auto used = writer.papersUsed(paper, count); !used) {
            return std::unexpected(used.error());
        }
    }
    return writer.end();
}

std::optional<Error> doneFault(const PrintingDone& done) {
    if (done.once.size() > maxPrinterNameBytes) {
        return Error{ErrorCode::OutOfRange, "The name of an act has at most 200 bytes.", ""};
    }
    for (const auto& [print, page] : done.taken) {
        if (std::optional<Error> fault = pageNameFault(page)) {
            return fault;
        }
    }
    return dateFault(done.when);
}

// Takes those out of the act that are not on hand any more.
Result<std::vector<PrintOnHandId>> dropGone(SqliteDatabase& database, PrintingDone& done) {
    std::vector<PrintOnHandId> gone;
    for (const auto& [print, page] : done.taken) {
        SqliteStatement found =
            database.statement("SELECT 1 FROM print WHERE id = ?1 AND state = ?2");
        found.number(1, print.value).number(2, static_cast<int>(PrintState::OnHand));
        if (!found.next()) {
            if (found.failure() != 0) {
                return printsFailure(database);
            }
            gone.push_back(print);
        }
    }
    for (const PrintOnHandId print : gone) {
        done.taken.erase(print);
    }
    if (!gone.empty() && done.taken.empty() && done.made.empty() && done.papersUsed.empty()) {
        return std::unexpected(Error{ErrorCode::NotFound,
                                     "The prints on hand to be taken are all gone by now. Plan "
                                     "anew to have them printed.",
                                     ""});
    }
    return gone;
}

std::optional<Error> tooManyPrints(SqliteDatabase& database, std::size_t more) {
    const std::int64_t there = database.number("SELECT count(*) FROM print", 0);
    if (there + static_cast<std::int64_t>(more) <= static_cast<std::int64_t>(maxPrintsOnHand)) {
        return std::nullopt;
    }
    return Error{ErrorCode::OutOfRange,
                 fmt::format("The list of prints is full: it holds {}. Move its file away to begin "
                             "a new one.",
                             maxPrintsOnHand),
                 ""};
}

// Prints go from one state to another, as a change of their own.
struct PrintMove {
    const std::set<PrintOnHandId>& prints;
    std::string what;
    std::set<PrintState> from;
    PrintState to = PrintState::OnHand;
    std::string page;
    std::string when;
};

Result<std::int64_t> perform(SqliteDatabase& database, const PrintMove& move) {
    if (std::optional<Error> fault = dateFault(move.when)) {
        return std::unexpected(*std::move(fault));
    }
    if (move.prints.empty()) {
        return std::unexpected(Error{ErrorCode::NotFound, "No print is chosen.", ""});
    }
    StoreTransaction transaction(database);
    if (!transaction.hasBegun()) {
        return printsFailure(database);
    }
    ChangeWriter writer(database, move.when);
    if (const auto begun = writer.begin(move.what, ""); !begun) {
        return std::unexpected(begun.error());
    }
    for (const PrintOnHandId print : move.prints) {
        if (const auto moved = writer.moved(print, move.from, move.to, move.page); !moved) {
            return std::unexpected(moved.error());
        }
    }
    const Result<std::int64_t> number = writer.end();
    return !number || transaction.commit() ? number : printsFailure(database);
}

}  // namespace

std::string_view stateWord(PrintState state) {
    switch (state) {
        case PrintState::Used:
            return "used";
        case PrintState::Wasted:
            return "wasted";
        case PrintState::OnHand:
            break;
    }
    return "on hand";
}

Result<std::vector<PrintOnHand>> PrintingStore::prints() {
    SqliteStatement rows = m_database.statement(std::string(printColumns) + "ORDER BY id");
    return readPrints(m_database, rows);
}

Result<std::vector<PrintOnHand>> PrintingStore::prints(PrintState state) {
    SqliteStatement rows =
        m_database.statement(std::string(printColumns) + "WHERE state = ? ORDER BY id");
    rows.number(1, static_cast<int>(state));
    return readPrints(m_database, rows);
}

Result<std::set<ContentKey>> PrintingStore::printedPhotos() {
    std::set<ContentKey> photos;
    SqliteStatement rows =
        m_database.statement("SELECT DISTINCT content FROM print WHERE state <> 2");
    while (rows.next()) {
        ContentKey key;
        if (setRawBytes(rows.blobAt(0), key)) {
            photos.insert(key);
        }
    }
    return rows.failure() == 0 ? Result<std::set<ContentKey>>(std::move(photos))
                               : printsFailure(m_database);
}

Result<std::optional<std::int64_t>> PrintingStore::record(const PrintingDone& asked,
                                                          std::vector<PrintOnHandId>* gone) {
    PrintingDone done = asked;
    if (std::optional<Error> fault = doneFault(done)) {
        return std::unexpected(*std::move(fault));
    }
    StoreTransaction transaction(m_database);
    if (!transaction.hasBegun()) {
        return printsFailure(m_database);
    }
    if (!done.once.empty()) {
        SqliteStatement before = m_database.statement("SELECT 1 FROM done WHERE once = ?");
        if (before.text(1, done.once).next()) {
            return std::nullopt;
        }
    }
    if (std::optional<Error> full = tooManyPrints(m_database, done.made.size())) {
        return std::unexpected(*std::move(full));
    }
    Result<std::vector<PrintOnHandId>> dropped;
    if (gone != nullptr) {
        dropped = dropGone(m_database, done);
    }
    if (!dropped) {
        return std::unexpected(dropped.error());
    }
    const Result<std::int64_t> number = writeDone(m_database, done);
    if (!number) {
        return std::unexpected(number.error());
    }
    if (!transaction.commit()) {
        return printsFailure(m_database);
    }
    if (gone != nullptr) {
        *gone = *std::move(dropped);
    }
    return *number;
}

Result<PrintOnHandId> PrintingStore::addOnHand(const MadePrint& print, const std::string& when) {
    if (std::optional<Error> fault = dateFault(when)) {
        return std::unexpected(*std::move(fault));
    }
    StoreTransaction transaction(m_database);
    if (!transaction.hasBegun()) {
        return printsFailure(m_database);
    }
    if (std::optional<Error> full = tooManyPrints(m_database, 1)) {
        return std::unexpected(*std::move(full));
    }
    ChangeWriter writer(m_database, when);
    if (const auto begun = writer.begin("Added 1 print", ""); !begun) {
        return std::unexpected(begun.error());
    }
    Result<PrintOnHandId> made = writer.made(print);
    if (!made) {
        return made;
    }
    if (const auto ended = writer.end(); !ended) {
        return std::unexpected(ended.error());
    }
    return transaction.commit() ? made : printsFailure(m_database);
}

Result<std::int64_t> PrintingStore::take(const std::set<PrintOnHandId>& prints,
                                         const std::string& page, const std::string& when) {
    if (std::optional<Error> fault = pageNameFault(page)) {
        return std::unexpected(*std::move(fault));
    }
    return perform(m_database,
                   {prints,
                    fmt::format("Took {} for \"{}\"", countText(prints.size(), "print"), page),
                    {PrintState::OnHand},
                    PrintState::Used,
                    page,
                    when});
}

Result<std::int64_t> PrintingStore::putBack(const std::set<PrintOnHandId>& prints,
                                            const std::string& when) {
    return perform(m_database, {prints,
                                fmt::format("Put {} back", countText(prints.size(), "print")),
                                {PrintState::Used, PrintState::Wasted},
                                PrintState::OnHand,
                                "",
                                when});
}

Result<std::int64_t> PrintingStore::waste(const std::set<PrintOnHandId>& prints,
                                          const std::string& when) {
    return perform(m_database, {prints,
                                fmt::format("Threw {} away", countText(prints.size(), "print")),
                                {PrintState::OnHand, PrintState::Used},
                                PrintState::Wasted,
                                "",
                                when});
}

}  // namespace matwright
