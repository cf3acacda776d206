// SPDX-License-Identifier: MIT
#include "core/printers/change_writer.h"

#include <fmt/format.h>

#include <algorithm>

namespace matwright {

namespace {

bool isOneLine(const std::string& text) {
    return text.size() <= maxPrintNameBytes && std::ranges::none_of(text, [](char letter) {
               return static_cast<unsigned char>(letter) < ' ';
           });
}

struct Before {
    PrintState state = PrintState::OnHand;
    std::string page;
    std::string day;
};

}  // namespace

std::optional<Error> pageNameFault(const std::string& page) {
    if (!page.empty() && isOneLine(page)) {
        return std::nullopt;
    }
    return Error{ErrorCode::BadText,
                 fmt::format("The name of a page that takes prints is one line of 1 to {} bytes. "
                             "Give it another name.",
                             maxPrintNameBytes),
                 page.substr(0, page.find_first_of("\r\n"))};
}

std::optional<Error> findFault(const MadePrint& print) {
    if (!isOneLine(print.photoName)) {
        return Error{
            ErrorCode::BadText,
            fmt::format("The name of a photo is one line of at most {} bytes.", maxPrintNameBytes),
            print.photoName};
    }
    if (std::optional<Error> fault =
            print.page.empty() ? std::nullopt : pageNameFault(print.page)) {
        return fault;
    }
    if (!parsePrintLook(textOf(print.look))) {
        return Error{ErrorCode::OutOfRange, "What this print shows is not in range.",
                     print.photoName};
    }
    return std::nullopt;
}

std::optional<Error> dateFault(const std::string& when) {
    // One rule for all dates of the store.
    return findFault(Correction{{}, {}, when})
               ? std::optional(Error{ErrorCode::BadText, "A date is written 2026-07-14.", when})
               : std::nullopt;
}

Result<void> ChangeWriter::begin(const std::string& what, const std::string& once) {
    SqliteStatement row =
        m_database.statement("INSERT INTO change(what, day, once) VALUES(?1,?2,?3)");
    row.text(1, what).text(2, m_when);
    if (!once.empty()) {
        row.text(3, once);
    }
    if (!row.run()) {
        return failed();
    }
    m_change = m_database.lastId();
    if (!once.empty() &&
        !m_database.statement("INSERT INTO done(once) VALUES(?)").text(1, once).run()) {
        return failed();
    }
    return {};
}

Result<PrintOnHandId> ChangeWriter::made(const MadePrint& print) {
    if (std::optional<Error> fault = findFault(print)) {
        return std::unexpected(*std::move(fault));
    }
    const std::string look = textOf(print.look);
    SqliteStatement row = m_database.statement(
        "INSERT INTO print(content, look, photo, state, page, day) VALUES(?1,?2,?3,?4,?5,?6)");
    row.blob(1, rawBytes(print.look.photo)).text(2, look).text(3, print.photoName);
    row.number(4, static_cast<int>(print.page.empty() ? PrintState::OnHand : PrintState::Used));
    row.text(5, print.page).text(6, m_when);
    if (!row.run()) {
        return failed();
    }
    const PrintOnHandId id{m_database.lastId()};
    if (!m_database.statement("INSERT INTO change_print(change, print) VALUES(?1,?2)")
             .number(1, m_change)
             .number(2, id.value)
             .run()) {
        return failed();
    }
    return id;
}

Result<void> ChangeWriter::moved(PrintOnHandId print, const std::set<PrintState>& from,
                                 PrintState to, const std::string& page) {
    SqliteStatement found = m_database.statement("SELECT state, page, day FROM print WHERE id = ?");
    if (!found.number(1, print.value).next()) {
        return found.failure() != 0
                   ? Result<void>(failed())
                   : std::unexpected(Error{ErrorCode::NotFound,
                                           "This print is not in the list of prints any more.",
                                           fmt::format("print {}", print.value)});
    }
    const Before before{static_cast<PrintState>(found.numberAt(0)), found.textAt(1),
                        found.textAt(2)};
    if (!from.contains(before.state)) {
        return std::unexpected(
            Error{ErrorCode::NotFound,
                  fmt::format("This print is {} by now. Look at the list again.",
                              before.state == PrintState::Used && !before.page.empty()
                                  ? "used for \"" + before.page + "\""
                                  : std::string(stateWord(before.state))),
                  fmt::format("print {}", print.value)});
    }
    // A print that is told of twice in one change goes back to what it was before the first.
    SqliteStatement kept = m_database.statement(
        "INSERT INTO change_print(change, print, was_state, was_page, was_day) "
        "VALUES(?1,?2,?3,?4,?5) ON CONFLICT DO NOTHING");
    kept.number(1, m_change).number(2, print.value).number(3, static_cast<int>(before.state));
    if (!kept.text(4, before.page).text(5, before.day).run()) {
        return failed();
    }
    SqliteStatement set =
        m_database.statement("UPDATE print SET state=?1, page=?2, day=?3 WHERE id=?4");
    set.number(1, static_cast<int>(to)).text(2, page).text(3, m_when);
    return set.number(4, print.value).run() ? Result<void>() : failed();
}

Result<void> ChangeWriter::papersUsed(PrinterPaperId paper, int count) {
    SqliteStatement found = m_database.statement("SELECT at_hand FROM paper WHERE id = ?");
    if (!found.number(1, paper.value).next()) {
        return found.failure() != 0 ? Result<void>(failed()) : Result<void>();
    }
    if (found.isNullAt(0)) {
        return {};
    }
    const std::int64_t used = std::min<std::int64_t>(count, found.numberAt(0));
    SqliteStatement set =
        m_database.statement("UPDATE paper SET at_hand = at_hand - ?1 WHERE id = ?2");
    SqliteStatement kept = m_database.statement(
        "INSERT INTO change_paper(change, paper, used, left_at_hand) VALUES(?1,?2,?3,?4)");
    kept.number(1, m_change).number(2, paper.value).number(3, used);
    if (!set.number(1, used).number(2, paper.value).run() ||
        !kept.number(4, found.numberAt(0) - used).run()) {
        return failed();
    }
    return {};
}

Result<std::int64_t> ChangeWriter::end() {
    return m_database.statement("DELETE FROM change WHERE number <= ?")
                   .number(1, m_change - static_cast<std::int64_t>(keptChanges))
                   .run()
               ? Result<std::int64_t>(m_change)
               : failed();
}

}  // namespace matwright
