// SPDX-License-Identifier: MIT
#include "core/papers/papers_journal.h"

#include <fmt/format.h>

#include <array>

namespace matwright {

namespace {

constexpr std::array<const char*, 2> papersSteps{R"(
CREATE TABLE paper(id INTEGER PRIMARY KEY AUTOINCREMENT, name TEXT NOT NULL, colour INTEGER NOT NULL,
    picture TEXT NOT NULL, picture_width INTEGER NOT NULL, width INTEGER NOT NULL,
    height INTEGER NOT NULL, count INTEGER NOT NULL, sides INTEGER NOT NULL,
    pattern INTEGER NOT NULL, thickness TEXT NOT NULL, kind INTEGER NOT NULL) STRICT;
CREATE TABLE change(number INTEGER PRIMARY KEY AUTOINCREMENT, label TEXT NOT NULL,
    made TEXT NOT NULL, undone INTEGER NOT NULL, kept INTEGER NOT NULL) STRICT;
CREATE TABLE paper_then(change INTEGER NOT NULL REFERENCES change(number) ON DELETE CASCADE,
    side INTEGER NOT NULL, id INTEGER NOT NULL, name TEXT NOT NULL, colour INTEGER NOT NULL,
    picture TEXT NOT NULL, picture_width INTEGER NOT NULL, width INTEGER NOT NULL,
    height INTEGER NOT NULL, count INTEGER NOT NULL, sides INTEGER NOT NULL,
    pattern INTEGER NOT NULL, thickness TEXT NOT NULL, kind INTEGER NOT NULL) STRICT;
CREATE INDEX paper_then_of_change ON paper_then(change, side);
CREATE TABLE cut_piece(change INTEGER NOT NULL REFERENCES change(number) ON DELETE CASCADE,
    name TEXT NOT NULL, paper TEXT NOT NULL, width INTEGER NOT NULL, height INTEGER NOT NULL,
    count INTEGER NOT NULL) STRICT;
CREATE INDEX cut_piece_of_change ON cut_piece(change);
CREATE TABLE version(number INTEGER NOT NULL) STRICT;
INSERT INTO version VALUES(1);
)",
                                                 R"(
ALTER TABLE change ADD COLUMN once TEXT NOT NULL DEFAULT '';
CREATE UNIQUE INDEX change_once ON change(once) WHERE once<>'';
)"};

std::int64_t colourNumber(Colour colour) {
    return colour.red << 16 | colour.green << 8 | colour.blue;
}

Colour colourOfNumber(std::int64_t number) {
    return {static_cast<std::uint8_t>(number >> 16 & 0xff),
            static_cast<std::uint8_t>(number >> 8 & 0xff),
            static_cast<std::uint8_t>(number & 0xff)};
}

}  // namespace

const StoreKind papersStoreKind{"the list of papers on hand", 0x4d777061, papersSteps};

void bindPaper(SqliteStatement& statement, int first, const PaperOnHand& paper) {
    statement.text(first, paper.name)
        .number(first + 1, colourNumber(paper.colour))
        .text(first + 2, paper.picture)
        .number(first + 3, paper.pictureWidth.ticks())
        .number(first + 4, paper.size.width.ticks())
        .number(first + 5, paper.size.height.ticks())
        .number(first + 6, paper.count)
        .number(first + 7, paper.sides == PaperSides::Two)
        .number(first + 8, paper.pattern == PaperPattern::HasUp)
        .text(first + 9, paper.thickness)
        .number(first + 10, paper.kind == PaperKind::Scrap);
}

PaperOnHand paperOf(const SqliteStatement& row) {
    PaperOnHand paper;
    paper.id = {row.numberAt(0)};
    paper.name = row.textAt(1);
    paper.colour = colourOfNumber(row.numberAt(2));
    paper.picture = row.textAt(3);
    paper.pictureWidth = Length::fromTicks(row.numberAt(4));
    paper.size = {Length::fromTicks(row.numberAt(5)), Length::fromTicks(row.numberAt(6))};
    // A number that is out of range stays out of range, for findFault().
    const std::int64_t count = row.numberAt(7);
    paper.count = count < 0 || count > maxPaperCount ? -1 : static_cast<int>(count);
    paper.sides = row.numberAt(8) != 0 ? PaperSides::Two : PaperSides::One;
    paper.pattern = row.numberAt(9) != 0 ? PaperPattern::HasUp : PaperPattern::None;
    paper.thickness = row.textAt(10);
    paper.kind = row.numberAt(11) != 0 ? PaperKind::Scrap : PaperKind::WholeSheet;
    return paper;
}

PapersChanging::PapersChanging(SqliteDatabase& database, std::string_view label)
    : m_database(database), m_transaction(database) {
    m_good = m_transaction.hasBegun() && m_database.run("DELETE FROM change WHERE undone=1") == 0 &&
             m_database
                 .statement(
                     "INSERT INTO change(label,made,undone,kept) "
                     "VALUES(?,datetime('now'),0,1)")
                 .text(1, label)
                 .run();
    m_number = m_good ? m_database.lastId() : 0;
}

bool PapersChanging::rememberSides(PaperId id, int side) {
    return m_database
        .statement(fmt::format("INSERT INTO paper_then(change,side,{0}) "
                               "SELECT ?,?,{0} FROM paper WHERE id=?",
                               paperColumns))
        .number(1, m_number)
        .number(2, side)
        .number(3, id.value)
        .run();
}

bool PapersChanging::willChange(PaperId id) {
    return !m_touched.insert(id).second || rememberSides(id, 0);
}

bool PapersChanging::nameIt(std::string_view once) {
    return m_database.statement("UPDATE change SET once=? WHERE number=?")
        .text(1, once)
        .number(2, m_number)
        .run();
}

PaperId PapersChanging::insert(const PaperOnHand& paper) {
    const std::string columns(std::string_view(paperColumns).substr(3));
    SqliteStatement inserting = m_database.statement(
        fmt::format("INSERT INTO paper({}) VALUES(?,?,?,?,?,?,?,?,?,?,?)", columns));
    bindPaper(inserting, 1, paper);
    if (!inserting.run()) {
        return {};
    }
    const PaperId id{m_database.lastId()};
    m_touched.insert(id);
    return id;
}

// What was cut stays written down, and that it was, but can no longer be taken back.
bool PapersChanging::forgetOldChanges() {
    return m_database.run(
               fmt::format("UPDATE change SET kept=0 WHERE kept=1 AND number<="
                           "(SELECT number FROM change ORDER BY number DESC LIMIT 1 OFFSET {});"
                           "DELETE FROM paper_then WHERE change IN (SELECT number FROM change "
                           "WHERE kept=0);"
                           "DELETE FROM change WHERE kept=0 AND once='' AND number NOT IN "
                           "(SELECT change FROM cut_piece);",
                           keptPapersChanges)
                   .c_str()) == 0;
}

bool PapersChanging::commit() {
    bool good = m_good;
    for (const PaperId id : m_touched) {
        good = good && rememberSides(id, 1);
    }
    return good && forgetOldChanges() && countVersion(m_database) && m_transaction.commit();
}

bool restorePapers(SqliteDatabase& database, std::int64_t change, int side) {
    return database
               .statement(
                   "DELETE FROM paper WHERE id IN "
                   "(SELECT id FROM paper_then WHERE change=?)")
               .number(1, change)
               .run() &&
           database
               .statement(fmt::format("INSERT INTO paper({0}) SELECT {0} FROM paper_then "
                                      "WHERE change=? AND side=?",
                                      paperColumns))
               .number(1, change)
               .number(2, side)
               .run();
}

bool countVersion(SqliteDatabase& database) {
    return database.run("UPDATE version SET number=number+1") == 0;
}

}  // namespace matwright
