// SPDX-License-Identifier: MIT
#include "core/database/sqlite_database.h"

#include <sqlite3.h>

namespace matwright {

void SqliteStatement::Finalizer::operator()(sqlite3_stmt* statement) const {
    sqlite3_finalize(statement);
}

SqliteStatement::SqliteStatement(sqlite3* database, std::string_view sql) {
    sqlite3_stmt* statement = nullptr;
    m_failure =
        sqlite3_prepare_v2(database, sql.data(), static_cast<int>(sql.size()), &statement, nullptr);
    m_statement.reset(statement);
}

SqliteStatement& SqliteStatement::number(int parameter, std::int64_t value) {
    if (m_statement) {
        sqlite3_bind_int64(m_statement.get(), parameter, value);
    }
    return *this;
}

SqliteStatement& SqliteStatement::text(int parameter, std::string_view text) {
    if (m_statement) {
        sqlite3_bind_text64(m_statement.get(), parameter, text.empty() ? "" : text.data(),
                            text.size(), SQLITE_STATIC, SQLITE_UTF8);
    }
    return *this;
}

SqliteStatement& SqliteStatement::blob(int parameter, std::string_view bytes) {
    if (m_statement) {
        // A null pointer would bind NULL instead of no bytes.
        sqlite3_bind_blob64(m_statement.get(), parameter, bytes.empty() ? "" : bytes.data(),
                            bytes.size(), SQLITE_STATIC);
    }
    return *this;
}

bool SqliteStatement::run() {
    while (next()) {
    }
    const bool good = m_failure == SQLITE_OK;
    if (m_statement) {
        sqlite3_reset(m_statement.get());
    }
    return good;
}

bool SqliteStatement::next() {
    if (!m_statement) {
        return false;
    }
    const int result = sqlite3_step(m_statement.get());
    m_failure = result == SQLITE_ROW || result == SQLITE_DONE ? SQLITE_OK : result;
    return result == SQLITE_ROW;
}

std::int64_t SqliteStatement::numberAt(int column) const {
    return sqlite3_column_int64(m_statement.get(), column);
}

bool SqliteStatement::isNullAt(int column) const {
    return sqlite3_column_type(m_statement.get(), column) == SQLITE_NULL;
}

std::string_view SqliteStatement::blobAt(int column) const {
    const void* bytes = sqlite3_column_blob(m_statement.get(), column);
    const int size = sqlite3_column_bytes(m_statement.get(), column);
    return bytes == nullptr
               ? std::string_view()
               : std::string_view(static_cast<const char*>(bytes), static_cast<std::size_t>(size));
}

void SqliteDatabase::Closer::operator()(sqlite3* database) const {
    sqlite3_close_v2(database);
}

SqliteDatabase::SqliteDatabase(const std::filesystem::path& file, int patienceMilliseconds) {
    sqlite3* database = nullptr;
    const int result =
        sqlite3_open_v2(file.c_str(), &database,
                        SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE | SQLITE_OPEN_NOMUTEX, nullptr);
    m_database.reset(database);
    m_isOpen = result == SQLITE_OK;
    if (m_isOpen) {
        sqlite3_busy_timeout(database, patienceMilliseconds);
    }
}

int SqliteDatabase::run(const char* sql) {
    return sqlite3_exec(m_database.get(), sql, nullptr, nullptr, nullptr);
}

std::int64_t SqliteDatabase::number(const char* sql, std::int64_t otherwise) {
    SqliteStatement asked = statement(sql);
    return asked.next() ? asked.numberAt(0) : otherwise;
}

std::int64_t SqliteDatabase::lastId() const {
    return sqlite3_last_insert_rowid(m_database.get());
}

int SqliteDatabase::failure() const {
    return m_database ? sqlite3_errcode(m_database.get()) & 0xff : SQLITE_NOMEM;
}

std::string SqliteDatabase::message() const {
    return m_database ? sqlite3_errmsg(m_database.get()) : "no memory";
}

}  // namespace matwright
