// SPDX-License-Identifier: MIT
#include "core/printers/printer_rows.h"

#include <fmt/format.h>

#include "core/printers/number_line.h"

namespace matwright {

namespace {

std::unexpected<Error> rowFailure(const SqliteDatabase& database) {
    return std::unexpected(storeError(database, printingKind));
}

std::optional<Correction> correctionAt(const SqliteStatement& row, int column) {
    return row.isNullAt(column) ? std::nullopt : parseCorrection(row.textAt(column));
}

Length lengthAt(const SqliteStatement& row, int column) {
    return Length::fromTicks(row.numberAt(column));
}

PrinterPaper paperAt(const SqliteStatement& row) {
    PrinterPaper paper;
    paper.id = {row.numberAt(0)};
    paper.name = row.textAt(1);
    paper.size = {lengthAt(row, 2), lengthAt(row, 3)};
    paper.borderless = row.numberAt(4) != 0;
    paper.margin = {lengthAt(row, 5), lengthAt(row, 6), lengthAt(row, 7), lengthAt(row, 8)};
    paper.price = row.numberAt(9);
    if (!row.isNullAt(10)) {
        paper.atHand = static_cast<int>(row.numberAt(10));
    }
    paper.withBorders = correctionAt(row, 11);
    paper.withoutBorders = correctionAt(row, 12);
    return paper;
}

bool readPapers(SqliteDatabase& database, Printer& printer) {
    SqliteStatement rows = database.statement(
        "SELECT id, name, width, height, borderless, margin_left, margin_top, margin_right, "
        "margin_bottom, price, at_hand, with_borders, without_borders FROM paper WHERE printer = ? "
        "ORDER BY place, id");
    rows.number(1, printer.id.value);
    while (rows.next()) {
        printer.papers.push_back(paperAt(rows));
    }
    return rows.failure() == 0;
}

// Texts that are bound have to outlive the statement's run.
bool writePaper(SqliteDatabase& database, PrinterId printer, PrinterPaper& paper, int place) {
    SqliteStatement row = database.statement(
        paper.id.value == 0
            ? "INSERT INTO paper(printer, place, name, width, height, borderless, margin_left, "
              "margin_top, margin_right, margin_bottom, price, at_hand, with_borders, "
              "without_borders) VALUES(?1,?2,?3,?4,?5,?6,?7,?8,?9,?10,?11,?12,?13,?14)"
            : "UPDATE paper SET printer=?1, place=?2, name=?3, width=?4, height=?5, borderless=?6, "
              "margin_left=?7, margin_top=?8, margin_right=?9, margin_bottom=?10, price=?11, "
              "at_hand=?12, with_borders=?13, without_borders=?14 WHERE id=?15");
    row.number(1, printer.value).number(2, place).text(3, paper.name);
    row.number(4, paper.size.width.ticks()).number(5, paper.size.height.ticks());
    row.number(6, paper.borderless ? 1 : 0);
    row.number(7, paper.margin.left.ticks()).number(8, paper.margin.top.ticks());
    row.number(9, paper.margin.right.ticks()).number(10, paper.margin.bottom.ticks());
    row.number(11, paper.price);
    if (paper.atHand) {
        row.number(12, *paper.atHand);
    }
    const std::string with = paper.withBorders ? textOf(*paper.withBorders) : "";
    const std::string without = paper.withoutBorders ? textOf(*paper.withoutBorders) : "";
    if (paper.withBorders) {
        row.text(13, with);
    }
    if (paper.withoutBorders) {
        row.text(14, without);
    }
    if (paper.id.value != 0) {
        row.number(15, paper.id.value);
        return row.run();
    }
    const bool written = row.run();
    paper.id = {database.lastId()};
    return written;
}

bool writePrinterRow(SqliteDatabase& database, Printer& printer) {
    const bool isNew = printer.id.value == 0;
    SqliteStatement row =
        database.statement(isNew ? "INSERT INTO printer(name, kind, queue) VALUES(?1,?2,?3)"
                                 : "UPDATE printer SET name=?1, kind=?2, queue=?3 WHERE id=?4");
    row.text(1, printer.name).number(2, printer.kind == PrinterKind::PrintShop ? 1 : 0);
    row.text(3, printer.queue);
    if (!isNew) {
        row.number(4, printer.id.value);
    }
    if (!row.run()) {
        return false;
    }
    if (isNew) {
        printer.id = {database.lastId()};
    }
    return true;
}

bool dropMissingPapers(SqliteDatabase& database, const Printer& printer) {
    Printer stored{printer.id, "", PrinterKind::AtHome, "", {}};
    if (!readPapers(database, stored)) {
        return false;
    }
    for (const PrinterPaper& paper : stored.papers) {
        if (find(printer, paper.id) == nullptr &&
            !database.statement("DELETE FROM paper WHERE id = ?").number(1, paper.id.value).run()) {
            return false;
        }
    }
    return true;
}

}  // namespace

std::string textOf(const Correction& correction) {
    return numberLine({correction.across.wished.ticks(), correction.across.measured.ticks(),
                       correction.down.wished.ticks(), correction.down.measured.ticks()}) +
           ' ' + correction.date;
}

std::optional<Correction> parseCorrection(std::string_view text) {
    const std::size_t space = text.rfind(' ');
    if (space == std::string_view::npos) {
        return std::nullopt;
    }
    const auto numbers = parseNumberLine(text.substr(0, space), 4);
    if (!numbers) {
        return std::nullopt;
    }
    const auto length = [&](std::size_t i) { return Length::fromTicks((*numbers)[i]); };
    return Correction{
        {length(0), length(1)}, {length(2), length(3)}, std::string(text.substr(space + 1))};
}

Result<std::vector<Printer>> readPrinters(SqliteDatabase& database) {
    std::vector<Printer> printers;
    SqliteStatement rows =
        database.statement("SELECT id, name, kind, queue FROM printer ORDER BY id");
    while (rows.next()) {
        Printer printer{{rows.numberAt(0)},
                        rows.textAt(1),
                        rows.numberAt(2) == 1 ? PrinterKind::PrintShop : PrinterKind::AtHome,
                        rows.textAt(3),
                        {}};
        if (!readPapers(database, printer)) {
            return rowFailure(database);
        }
        if (std::optional<Error> fault = findFault(printer)) {
            return std::unexpected(
                Error{ErrorCode::Malformed,
                      "The list of printers has an entry that cannot be right: " + fault->sentence,
                      printer.name});
        }
        printers.push_back(std::move(printer));
    }
    if (rows.failure() != 0) {
        return rowFailure(database);
    }
    return printers;
}

Result<Printer> writePrinter(SqliteDatabase& database, Printer printer) {
    if (!writePrinterRow(database, printer)) {
        return rowFailure(database);
    }
    int place = 0;
    // Papers that go make room first, so that what is told of the ids afterwards is whole.
    if (!dropMissingPapers(database, printer)) {
        return rowFailure(database);
    }
    for (PrinterPaper& paper : printer.papers) {
        if (!writePaper(database, printer.id, paper, place++)) {
            return rowFailure(database);
        }
    }
    return printer;
}

}  // namespace matwright
