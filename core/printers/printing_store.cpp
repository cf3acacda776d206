// SPDX-License-Identifier: MIT
#include "core/printers/printing_store.h"

#include <fmt/format.h>

#include <utility>

#include "core/printers/printer_rows.h"

namespace matwright {

namespace {

std::unexpected<Error> notKept(const SqliteDatabase& database) {
    return std::unexpected(storeError(database, printingKind));
}

// A store that is new; the mark stays when a person takes all printers out again.
Result<void> fillNew(SqliteDatabase& database, Unit unit) {
    if (database.number("SELECT count(*) FROM begun", 0) != 0) {
        return {};
    }
    StoreTransaction transaction(database);
    if (!transaction.hasBegun()) {
        return notKept(database);
    }
    // Another program may have come first.
    if (database.number("SELECT count(*) FROM begun", 0) != 0) {
        return {};
    }
    for (const Printer& printer : startingPrinters(unit)) {
        if (const auto written = writePrinter(database, printer); !written) {
            return std::unexpected(written.error());
        }
    }
    if (!database.statement("INSERT INTO begun(once) VALUES(1)").run() || !transaction.commit()) {
        return notKept(database);
    }
    return {};
}

Result<void> checkNumberOf(SqliteDatabase& database) {
    if (database.number("SELECT count(*) FROM printer", 0) >=
        static_cast<std::int64_t>(maxPrinters)) {
        return std::unexpected(Error{ErrorCode::OutOfRange,
                                     fmt::format("There are {} printers already. Take one out "
                                                 "first.",
                                                 maxPrinters),
                                     ""});
    }
    return {};
}

// Printers are told apart by their names, on the command line too.
Result<void> checkName(SqliteDatabase& database, const Printer& printer) {
    SqliteStatement other =
        database.statement("SELECT 1 FROM printer WHERE name = ?1 AND id <> ?2");
    if (!other.text(1, printer.name).number(2, printer.id.value).next()) {
        return other.failure() == 0 ? Result<void>() : notKept(database);
    }
    return std::unexpected(Error{ErrorCode::BadText,
                                 "There is a printer of this name already. Give one of them "
                                 "another name.",
                                 printer.name});
}

Printer withoutIds(Printer printer) {
    printer.id = {};
    for (PrinterPaper& paper : printer.papers) {
        paper.id = {};
    }
    return printer;
}

Error changedMeanwhile(const Printer& printer) {
    return {ErrorCode::BadEdit,
            "This printer was changed meanwhile, here or by another program. Look at it again, "
            "then change it.",
            printer.name};
}

bool hasOnlyKnownPapers(const Printer& before, const Printer& after) {
    for (const PrinterPaper& paper : after.papers) {
        if (paper.id.value != 0 && find(before, paper.id) == nullptr) {
            return false;
        }
    }
    return before.id == after.id;
}

}  // namespace

Result<PrintingStore> PrintingStore::open(const std::filesystem::path& file, Unit unit) {
    Result<SqliteDatabase> database = openStore(file, printingKind);
    if (!database) {
        return std::unexpected(database.error());
    }
    if (const Result<void> filled = fillNew(*database, unit); !filled) {
        return std::unexpected(filled.error());
    }
    return PrintingStore(*std::move(database));
}

Result<std::vector<Printer>> PrintingStore::printers() {
    // So that printers and their papers are of one moment.
    const StoreTransaction moment(m_database);
    return moment.hasBegun() ? readPrinters(m_database) : notKept(m_database);
}

Result<Printer> PrintingStore::add(const Printer& added) {
    const Printer printer = withoutIds(added);
    if (std::optional<Error> fault = findFault(printer)) {
        return std::unexpected(*std::move(fault));
    }
    StoreTransaction transaction(m_database);
    if (!transaction.hasBegun()) {
        return notKept(m_database);
    }
    for (const Result<void>& allowed :
         {checkNumberOf(m_database), checkName(m_database, printer)}) {
        if (!allowed) {
            return std::unexpected(allowed.error());
        }
    }
    Result<Printer> written = writePrinter(m_database, printer);
    if (written && !transaction.commit()) {
        return notKept(m_database);
    }
    return written;
}

Result<Printer> PrintingStore::change(const Printer& before, const Printer& after) {
    if (std::optional<Error> fault = findFault(after)) {
        return std::unexpected(*std::move(fault));
    }
    StoreTransaction transaction(m_database);
    if (!transaction.hasBegun()) {
        return notKept(m_database);
    }
    const Result<std::vector<Printer>> all = readPrinters(m_database);
    if (!all) {
        return std::unexpected(all.error());
    }
    const Printer* stored = find(*all, before.id);
    if (stored == nullptr || *stored != before || !hasOnlyKnownPapers(before, after)) {
        return std::unexpected(changedMeanwhile(before));
    }
    // Lists from before this rule can still be changed, one by one.
    if (const auto free = after.name == before.name ? Result<void>() : checkName(m_database, after);
        !free) {
        return std::unexpected(free.error());
    }
    Result<Printer> written = writePrinter(m_database, after);
    if (written && !transaction.commit()) {
        return notKept(m_database);
    }
    return written;
}

Result<void> PrintingStore::remove(PrinterId printer) {
    StoreTransaction transaction(m_database);
    if (!transaction.hasBegun()) {
        return notKept(m_database);
    }
    if (!m_database.statement("DELETE FROM printer WHERE id = ?").number(1, printer.value).run()) {
        return notKept(m_database);
    }
    if (m_database.number("SELECT changes()", 0) == 0) {
        return std::unexpected(
            Error{ErrorCode::NotFound, "This printer is not in the list any more.", ""});
    }
    return transaction.commit() ? Result<void>() : notKept(m_database);
}

Result<void> PrintingStore::keep(PrinterPaperId paper, bool borderless,
                                 const std::optional<Correction>& correction) {
    if (std::optional<Error> fault = correction ? findFault(*correction) : std::nullopt) {
        return std::unexpected(*std::move(fault));
    }
    StoreTransaction transaction(m_database);
    if (!transaction.hasBegun()) {
        return notKept(m_database);
    }
    const std::string text = correction ? textOf(*correction) : "";
    SqliteStatement row =
        m_database.statement(borderless ? "UPDATE paper SET without_borders=?1 WHERE id=?2"
                                        : "UPDATE paper SET with_borders=?1 WHERE id=?2");
    if (correction) {
        row.text(1, text);
    }
    if (!row.number(2, paper.value).run()) {
        return notKept(m_database);
    }
    if (m_database.number("SELECT changes()", 0) == 0) {
        return std::unexpected(
            Error{ErrorCode::NotFound, "This paper is not in the list any more.", ""});
    }
    return transaction.commit() ? Result<void>() : notKept(m_database);
}

}  // namespace matwright
