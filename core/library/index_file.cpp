// SPDX-License-Identifier: MIT
#include "core/library/index_file.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sqlite3.h>
#include <sys/file.h>

#include <system_error>

#include "core/library/index_row_text.h"

namespace matwright {

namespace {

constexpr int patienceMilliseconds = 2'000;
// "Mwix", and what the tables below are. The number is part of the file's name too, so that
// programs of different versions do not throw away each other's index again and again.
constexpr std::int64_t applicationId = 0x4d776978;

constexpr const char* schema = R"(
    CREATE TABLE sketch(path BLOB PRIMARY KEY, row BLOB NOT NULL) WITHOUT ROWID;
    CREATE TABLE traits(path BLOB PRIMARY KEY, traits BLOB NOT NULL) WITHOUT ROWID;
    CREATE TABLE labels(path BLOB PRIMARY KEY, row BLOB NOT NULL) WITHOUT ROWID;
)";

std::string siblingOf(const std::filesystem::path& file, const char* ending) {
    return file.string() + ending;
}

void removeDatabase(const std::filesystem::path& file) {
    for (const char* ending : {"", "-wal", "-shm", "-journal"}) {
        std::error_code ignored;
        std::filesystem::remove(siblingOf(file, ending), ignored);
    }
}

}  // namespace

IndexFile::IndexFile(const std::filesystem::path& file) : m_file(file) {
    std::error_code ignored;
    std::filesystem::create_directories(file.parent_path(), ignored);
    m_lock = FileDescriptor(
        ::open(siblingOf(file, ".lock").c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0600));
    if (!m_lock.isOpen()) {
        setTrouble(std::generic_category().message(errno));
        return;
    }
    if (::flock(m_lock.number(), LOCK_SH | LOCK_NB) != 0) {
        setTrouble("another program is making it anew");
        return;
    }
    if (!open(file) && !makeAnew(file)) {
        setTrouble(m_database ? m_database->message() : "it cannot be opened");
    }
}

bool IndexFile::open(const std::filesystem::path& file) {
    m_database = std::make_unique<SqliteDatabase>(file, patienceMilliseconds);
    return m_database->isOpen() && prepare();
}

// Makes the tables in an empty file; false in one that is not ours or cannot be read.
bool IndexFile::prepare() {
    // Readers then go on while another program writes. Where the disk cannot do it, the older way
    // is kept.
    m_database->run("PRAGMA journal_mode=WAL; PRAGMA synchronous=NORMAL; PRAGMA cache_size=-1024;");
    const std::int64_t id = m_database->number("PRAGMA application_id", -1);
    if (id != 0) {
        return id == applicationId &&
               m_database->number("PRAGMA user_version", -1) == indexFileVersion;
    }
    if (m_database->run("BEGIN IMMEDIATE") != SQLITE_OK) {
        return false;
    }
    // Another program may have been quicker.
    const bool isMade = m_database->number("PRAGMA application_id", -1) == applicationId;
    const bool good =
        isMade || (m_database->number("SELECT count(*) FROM sqlite_schema", -1) == 0 &&
                   m_database->run(schema) == SQLITE_OK &&
                   m_database->run(fmt::format("PRAGMA application_id={}; PRAGMA user_version={};",
                                               applicationId, indexFileVersion)
                                       .c_str()) == SQLITE_OK);
    return m_database->run(good ? "COMMIT" : "ROLLBACK") == SQLITE_OK && good;
}

// Deleting a database that another program has open would spoil what that one writes.
bool IndexFile::makeAnew(const std::filesystem::path& file) {
    m_database.reset();
    if (::flock(m_lock.number(), LOCK_EX | LOCK_NB) != 0) {
        return false;
    }
    removeDatabase(file);
    const bool good = open(file);
    ::flock(m_lock.number(), LOCK_SH);
    return good;
}

void IndexFile::setTrouble(std::string_view what) {
    m_trouble = fmt::format(
        "The library's index cannot be used ({}). Everything works without it, but opening the "
        "library takes longer. Check that there is room on the disk and that you may write in {}.",
        what, m_file.parent_path().string());
    m_database.reset();
}

IndexRows IndexFile::load() {
    IndexRows rows;
    if (!m_database || (loadSketches(rows) && loadLabels(rows))) {
        return rows;
    }
    rows = {};
    if (!makeAnew(m_file)) {
        setTrouble("it is damaged, and another program has it open");
    }
    return rows;
}

bool IndexFile::loadSketches(IndexRows& rows) {
    SqliteStatement all = m_database->statement("SELECT path, row FROM sketch ORDER BY path");
    while (all.next()) {
        IndexedSketch sketch;
        if (readSketchRow(all.blobAt(0), all.blobAt(1), sketch)) {
            rows.sketches.emplace_hint(rows.sketches.end(), all.blobAt(0), std::move(sketch));
        }
    }
    return all.failure() == SQLITE_OK || all.failure() == SQLITE_BUSY;
}

bool IndexFile::loadLabels(IndexRows& rows) {
    SqliteStatement all = m_database->statement("SELECT path, row FROM labels ORDER BY path");
    while (all.next()) {
        IndexedLabels labels;
        if (readLabelRow(all.blobAt(0), all.blobAt(1), labels)) {
            rows.labels.emplace_hint(rows.labels.end(), all.blobAt(0), std::move(labels));
        }
    }
    return all.failure() == SQLITE_OK || all.failure() == SQLITE_BUSY;
}

bool IndexFile::Changes::empty() const {
    return sketches.empty() && labels.empty() && goneSketches.empty() && goneLabels.empty();
}

void IndexFile::write(const Changes& changes) {
    if (!m_database || changes.empty()) {
        return;
    }
    if (m_database->run("BEGIN IMMEDIATE") == SQLITE_OK && writeAll(changes) &&
        m_database->run("COMMIT") == SQLITE_OK) {
        for (SketchRow* row : changes.sketches) {
            row->second.traits = {};
        }
        return;
    }
    const std::string message = m_database->message();
    m_database->run("ROLLBACK");
    setTrouble(message);
}

bool IndexFile::writeAll(const Changes& changes) {
    SqliteStatement forget = m_database->statement("DELETE FROM sketch WHERE path = ?");
    SqliteStatement forgetTraits = m_database->statement("DELETE FROM traits WHERE path = ?");
    for (const std::string& path : changes.goneSketches) {
        if (!forget.blob(1, path).run() || !forgetTraits.blob(1, path).run()) {
            return false;
        }
    }
    SqliteStatement forgetLabels = m_database->statement("DELETE FROM labels WHERE path = ?");
    for (const std::string& path : changes.goneLabels) {
        if (!forgetLabels.blob(1, path).run()) {
            return false;
        }
    }
    return writeSketches(changes.sketches) && writeLabels(changes.labels);
}

bool IndexFile::writeSketches(const std::vector<SketchRow*>& rows) {
    SqliteStatement put = m_database->statement("INSERT OR REPLACE INTO sketch VALUES(?, ?)");
    SqliteStatement putTraits = m_database->statement("INSERT OR REPLACE INTO traits VALUES(?, ?)");
    for (const SketchRow* row : rows) {
        const std::string bytes = sketchRow(row->first, row->second);
        if (!put.blob(1, row->first).blob(2, bytes).run()) {
            return false;
        }
        if (!row->second.traits.empty() &&
            !putTraits.blob(1, row->first).blob(2, row->second.traits).run()) {
            return false;
        }
    }
    return true;
}

bool IndexFile::writeLabels(const std::vector<LabelRow*>& rows) {
    SqliteStatement put = m_database->statement("INSERT OR REPLACE INTO labels VALUES(?, ?)");
    for (const LabelRow* row : rows) {
        const std::string bytes = labelRow(row->first, row->second);
        if (!put.blob(1, row->first).blob(2, bytes).run()) {
            return false;
        }
    }
    return true;
}

std::string IndexFile::traitsOf(std::string_view path) {
    if (!m_database) {
        return {};
    }
    SqliteStatement one = m_database->statement("SELECT traits FROM traits WHERE path = ?");
    one.blob(1, path);
    return one.next() ? std::string(one.blobAt(0)) : std::string();
}

}  // namespace matwright
