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

Result<void> writeDone(SqliteDatabase& database, const PrintingDone& done) {
    ChangeWriter writer(database, done.when);
    if (auto begun = writer.begin(whatOf(done), done.once); !begun) {
        return begun;
    }
    for (const MadePrint& print : done.made) {
        if (const auto made = writer.made(print); !made) {
            return std::unexpected(made.error());
        }
    }
    for (const auto& [print, page] : done.taken) {
        if (auto moved = writer.moved(print, {PrintState::OnHand}, PrintState::Used, page);
            !moved) {
            return moved;
        }
    }
    for (const auto& [paper, count] : done.papersUsed) {
        if (auto used = writer.papersUsed(paper, count); !used) {
            return used;
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

// One print goes from one state to another, as a change of its own.
struct PrintMove {
    PrintOnHandId print;
    std::string what;
    std::set<PrintState> from;
    PrintState to = PrintState::OnHand;
    std::string page;
    std::string when;
};

Result<void> perform(SqliteDatabase& database, const PrintMove& move) {
    if (std::optional<Error> fault = dateFault(move.when)) {
        return std::unexpected(*std::move(fault));
    }
    StoreTransaction transaction(database);
    if (!transaction.hasBegun()) {
        return printsFailure(database);
    }
    ChangeWriter writer(database, move.when);
    if (auto begun = writer.begin(move.what, ""); !begun) {
        return begun;
    }
    if (auto moved = writer.moved(move.print, move.from, move.to, move.page); !moved) {
        return moved;
    }
    if (auto ended = writer.end(); !ended) {
        return ended;
    }
    return transaction.commit() ? Result<void>() : printsFailure(database);
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

Result<bool> PrintingStore::record(const PrintingDone& asked, std::vector<PrintOnHandId>* gone) {
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
            return false;
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
    if (const Result<void> written = writeDone(m_database, done); !written) {
        return std::unexpected(written.error());
    }
    if (!transaction.commit()) {
        return printsFailure(m_database);
    }
    if (gone != nullptr) {
        *gone = *std::move(dropped);
    }
    return true;
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

Result<void> PrintingStore::take(PrintOnHandId print, const std::string& page,
                                 const std::string& when) {
    if (std::optional<Error> fault = pageNameFault(page)) {
        return std::unexpected(*std::move(fault));
    }
    return perform(m_database, {print,
                                fmt::format("Took 1 print for \"{}\"", page),
                                {PrintState::OnHand},
                                PrintState::Used,
                                page,
                                when});
}

Result<void> PrintingStore::putBack(PrintOnHandId print, const std::string& when) {
    return perform(m_database, {print,
                                "Put 1 print back",
                                {PrintState::Used, PrintState::Wasted},
                                PrintState::OnHand,
                                "",
                                when});
}

Result<void> PrintingStore::waste(PrintOnHandId print, const std::string& when) {
    return perform(m_database, {print,
                                "1 print was wasted",
                                {PrintState::OnHand, PrintState::Used},
                                PrintState::Wasted,
                                "",
                                when});
}

}  // namespace matwright
