// SPDX-License-Identifier: MIT
#include "core/papers/papers_store.h"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>

#include "core/papers/papers_journal.h"
#include "core/sketch/soundness.h"

namespace matwright {

namespace {

Error changedMeanwhile(const PaperOnHand& paper) {
    return {ErrorCode::BadEdit,
            "This paper was changed or removed meanwhile, perhaps by another program. Nothing was "
            "changed; look at the list again.",
            paper.name};
}

Error tooManyPapers() {
    return {ErrorCode::TooLarge,
            fmt::format("The list holds at most {} papers. Remove some first.", maxPapersOnHand),
            {}};
}

Error damagedRow(const Error& fault) {
    return {ErrorCode::WrongFormat,
            "The list of papers on hand has an entry that cannot be right: " + fault.sentence +
                " Put back a copy of the file.",
            fault.where};
}

std::string counted(std::string_view verb, std::span<const PaperOnHand> papers) {
    return papers.size() == 1 ? fmt::format("{} {}", verb, papers.front().name)
                              : fmt::format("{} {} papers", verb, papers.size());
}

std::optional<PaperOnHand> paperWithId(SqliteDatabase& database, PaperId id) {
    SqliteStatement asked =
        database.statement(fmt::format("SELECT {} FROM paper WHERE id=?", paperColumns));
    asked.number(1, id.value);
    return asked.next() ? std::optional(paperOf(asked)) : std::nullopt;
}

bool setCount(SqliteDatabase& database, PaperId id, int count) {
    return database.statement("UPDATE paper SET count=? WHERE id=?")
        .number(1, count)
        .number(2, id.value)
        .run();
}

bool removePaper(SqliteDatabase& database, PaperId id) {
    return database.statement("DELETE FROM paper WHERE id=?").number(1, id.value).run();
}

// An entry that is the same but for its count, which may be 0.
std::optional<PaperOnHand> alike(SqliteDatabase& database, const PaperOnHand& paper) {
    SqliteStatement asked = database.statement(
        fmt::format("SELECT {} FROM paper WHERE name=?1 AND colour=?2 AND picture=?3 AND "
                    "picture_width=?4 AND width=?5 AND height=?6 AND ?7>0 AND sides=?8 AND "
                    "pattern=?9 AND thickness=?10 AND kind=?11 ORDER BY id LIMIT 1",
                    paperColumns));
    bindPaper(asked, 1, paper);
    return asked.next() ? std::optional(paperOf(asked)) : std::nullopt;
}

std::optional<Error> findFaultOfCut(const PapersCut& cut) {
    const auto bad = [](const char* sentence) {
        return Error{ErrorCode::Malformed, sentence, "cutting"};
    };
    if (cut.label.empty() || !isValidText(cut.label, false)) {
        return bad("A change needs a name of one line.");
    }
    if (cut.once.size() > maxCutNameBytes || !isValidText(cut.once, false)) {
        return bad("What a cut is known by is one line of at most 200 letters.");
    }
    std::vector<PaperId> ids;
    for (const PapersCut::Taken& taken : cut.taken) {
        if (taken.count <= 0 || std::ranges::find(ids, taken.id) != ids.end()) {
            return bad("Every paper is taken once, and at least one sheet of it.");
        }
        if (taken.planned.id != taken.id) {
            return bad("Of every paper that is taken it has to be said how it was when planned.");
        }
        ids.push_back(taken.id);
    }
    for (const PapersCut::Piece& piece : cut.pieces) {
        if (piece.count <= 0 || !piece.size.isPositive() || !isValidText(piece.name, false) ||
            !isValidText(piece.paper, false)) {
            return bad("A piece that was cut has a size, a count and words of one line.");
        }
    }
    for (const PaperOnHand& paper : cut.putBack) {
        if (auto fault = findFault(paper)) {
            return fault;
        }
    }
    return std::nullopt;
}

// All but the count.
bool isAsPlanned(PaperOnHand paper, const PaperOnHand& planned) {
    paper.count = planned.count;
    return paper == planned;
}

// Nothing where it is done; an error that says why not, or one without words: ask the database.
std::optional<Error> takeSheets(SqliteDatabase& database, PapersChanging& changing,
                                const PapersCut::Taken& taken) {
    const std::optional<PaperOnHand> paper = paperWithId(database, taken.id);
    if (!paper || paper->count < taken.count) {
        return Error{
            ErrorCode::BadEdit,
            "There are not as many sheets of this paper on hand as the plan takes, perhaps "
            "because another program has used some. Nothing was changed; plan anew.",
            paper ? paper->name : ""};
    }
    if (!isAsPlanned(*paper, taken.planned)) {
        return Error{ErrorCode::BadEdit,
                     "This paper was changed since the cut was planned, perhaps by another "
                     "program. Nothing was changed; plan anew.",
                     paper->name};
    }
    const int left = paper->count - taken.count;
    const bool good = changing.willChange(taken.id) && (left == 0 && paper->kind == PaperKind::Scrap
                                                            ? removePaper(database, taken.id)
                                                            : setCount(database, taken.id, left));
    return good ? std::nullopt : std::optional(storeError(database, papersStoreKind));
}

bool putBackSheets(SqliteDatabase& database, PapersChanging& changing, const PaperOnHand& paper) {
    const std::optional<PaperOnHand> same = alike(database, paper);
    if (same && same->count <= maxPaperCount - paper.count) {
        return changing.willChange(same->id) &&
               setCount(database, same->id, same->count + paper.count);
    }
    return changing.insert(paper).value != 0;
}

// Whether a cut of that name stands in the journal and is not taken back; nothing where the
// database fails.
std::optional<bool> wasDone(SqliteDatabase& database, const std::string& once) {
    if (once.empty()) {
        return false;
    }
    SqliteStatement asked = database.statement("SELECT 1 FROM change WHERE once=? AND undone=0");
    const bool found = asked.text(1, once).next();
    return asked.failure() != 0 ? std::nullopt : std::optional(found);
}

bool writeDown(SqliteDatabase& database, std::int64_t change, const PapersCut::Piece& piece) {
    return database
        .statement(
            "INSERT INTO cut_piece(change,name,paper,width,height,count) "
            "VALUES(?,?,?,?,?,?)")
        .number(1, change)
        .text(2, piece.name)
        .text(3, piece.paper)
        .number(4, piece.size.width.ticks())
        .number(5, piece.size.height.ticks())
        .number(6, piece.count)
        .run();
}

// By name, whole sheets first, larger ones first. Names are folded once each: thousands of papers
// are listed at every change.
std::vector<PaperOnHand> sorted(std::vector<PaperOnHand> papers) {
    using Key = std::tuple<std::string, PaperKind, double, std::size_t>;
    std::vector<Key> keys;
    keys.reserve(papers.size());
    for (const PaperOnHand& paper : papers) {
        keys.emplace_back(paperKey(paper.name), paper.kind,
                          -paper.size.width.toInches() * paper.size.height.toInches(), keys.size());
    }
    std::ranges::sort(keys);
    std::vector<PaperOnHand> inOrder;
    inOrder.reserve(papers.size());
    for (const Key& key : keys) {
        inOrder.push_back(std::move(papers[std::get<std::size_t>(key)]));
    }
    return inOrder;
}

std::int64_t papersIn(SqliteDatabase& database) {
    return database.number("SELECT count(*) FROM paper", -1);
}

// Nothing where all of it is done.
std::optional<Error> carryOut(SqliteDatabase& database, PapersChanging& changing,
                              const PapersCut& cut) {
    for (const PapersCut::Taken& taken : cut.taken) {
        if (auto refused = takeSheets(database, changing, taken)) {
            return refused;
        }
    }
    bool good = true;
    for (const PaperOnHand& paper : cut.putBack) {
        good = good && (paper.count == 0 || putBackSheets(database, changing, paper));
    }
    if (good && papersIn(database) > std::int64_t{maxPapersOnHand}) {
        return tooManyPapers();
    }
    for (const PapersCut::Piece& piece : cut.pieces) {
        good = good && writeDown(database, changing.number(), piece);
    }
    return good ? std::nullopt : std::optional(storeError(database, papersStoreKind));
}

}  // namespace

Error PapersStore::failure() const {
    return storeError(m_database, papersStoreKind);
}

Result<PapersStore> PapersStore::open(const std::filesystem::path& file,
                                      std::chrono::milliseconds patience) {
    Result<SqliteDatabase> database = openStore(file, papersStoreKind, patience);
    if (!database) {
        return std::unexpected(database.error());
    }
    return PapersStore(std::move(*database));
}

Result<std::vector<PaperOnHand>> PapersStore::list() {
    SqliteStatement asked =
        m_database.statement(fmt::format("SELECT {} FROM paper ORDER BY id", paperColumns));
    std::vector<PaperOnHand> papers;
    while (asked.next()) {
        papers.push_back(paperOf(asked));
        if (const auto fault = findFault(papers.back())) {
            return std::unexpected(damagedRow(*fault));
        }
    }
    if (asked.failure() != 0) {
        return std::unexpected(failure());
    }
    return sorted(std::move(papers));
}

Result<std::vector<PaperId>> PapersStore::add(std::span<const PaperOnHand> papers,
                                              std::string_view label) {
    if (papers.empty()) {
        return std::vector<PaperId>();
    }
    for (const PaperOnHand& paper : papers) {
        if (auto fault = findFault(paper)) {
            return std::unexpected(*fault);
        }
    }
    PapersChanging changing(m_database, label);
    if (!changing.hasBegun()) {
        return std::unexpected(failure());
    }
    if (papersIn(m_database) + std::ssize(papers) > std::int64_t{maxPapersOnHand}) {
        return std::unexpected(tooManyPapers());
    }
    std::vector<PaperId> ids;
    for (const PaperOnHand& paper : papers) {
        ids.push_back(changing.insert(paper));
        if (ids.back().value == 0) {
            return std::unexpected(failure());
        }
    }
    if (!changing.commit()) {
        return std::unexpected(failure());
    }
    return ids;
}

Result<PaperId> PapersStore::add(const PaperOnHand& paper) {
    const std::span one(&paper, 1);
    const Result<std::vector<PaperId>> ids = add(one, counted("Add", one));
    if (!ids) {
        return std::unexpected(ids.error());
    }
    return ids->front();
}

Result<void> PapersStore::change(const PaperOnHand& before, const PaperOnHand& after) {
    if (auto fault = findFault(after)) {
        return std::unexpected(*fault);
    }
    PapersChanging changing(m_database, counted("Change", std::span(&after, 1)));
    if (!changing.hasBegun()) {
        return std::unexpected(failure());
    }
    if (before.id != after.id || paperWithId(m_database, before.id) != before) {
        return std::unexpected(changedMeanwhile(before));
    }
    SqliteStatement updating = m_database.statement(
        "UPDATE paper SET name=?1,colour=?2,picture=?3,picture_width=?4,width=?5,height=?6,"
        "count=?7,sides=?8,pattern=?9,thickness=?10,kind=?11 WHERE id=?12");
    bindPaper(updating, 1, after);
    updating.number(12, after.id.value);
    if (!changing.willChange(after.id) || !updating.run() || !changing.commit()) {
        return std::unexpected(failure());
    }
    return {};
}

Result<void> PapersStore::remove(std::span<const PaperOnHand> papers) {
    if (papers.empty()) {
        return {};
    }
    PapersChanging changing(m_database, counted("Remove", papers));
    if (!changing.hasBegun()) {
        return std::unexpected(failure());
    }
    for (const PaperOnHand& paper : papers) {
        if (paperWithId(m_database, paper.id) != paper) {
            return std::unexpected(changedMeanwhile(paper));
        }
        if (!changing.willChange(paper.id) || !removePaper(m_database, paper.id)) {
            return std::unexpected(failure());
        }
    }
    if (!changing.commit()) {
        return std::unexpected(failure());
    }
    return {};
}

Result<std::optional<std::int64_t>> PapersStore::cut(const PapersCut& cut) {
    if (auto fault = findFaultOfCut(cut)) {
        return std::unexpected(*fault);
    }
    PapersChanging changing(m_database, cut.label);
    const std::optional<bool> before =
        changing.hasBegun() ? wasDone(m_database, cut.once) : std::nullopt;
    if (before == true) {
        return std::nullopt;
    }
    if (!before || (!cut.once.empty() && !changing.nameIt(cut.once))) {
        return std::unexpected(failure());
    }
    if (auto refused = carryOut(m_database, changing, cut)) {
        return std::unexpected(*refused);
    }
    if (!changing.commit()) {
        return std::unexpected(failure());
    }
    return changing.number();
}

Result<std::vector<PapersCut::Piece>> PapersStore::cutPieces() {
    SqliteStatement asked = m_database.statement(
        "SELECT cut_piece.name,paper,width,height,count FROM cut_piece "
        "JOIN change ON change.number=cut_piece.change WHERE undone=0 ORDER BY cut_piece.rowid");
    std::vector<PapersCut::Piece> pieces;
    while (asked.next()) {
        pieces.push_back(
            {asked.textAt(0),
             asked.textAt(1),
             {Length::fromTicks(asked.numberAt(2)), Length::fromTicks(asked.numberAt(3))},
             static_cast<int>(std::clamp<std::int64_t>(asked.numberAt(4), 0, maxPaperCount))});
    }
    if (asked.failure() != 0) {
        return std::unexpected(failure());
    }
    return pieces;
}

Result<std::int64_t> PapersStore::version() {
    const std::int64_t number = m_database.number("SELECT number FROM version", -1);
    if (number < 0) {
        return std::unexpected(failure());
    }
    return number;
}

}  // namespace matwright
