// SPDX-License-Identifier: MIT
#include "core/database/store.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sqlite3.h>
#include <unistd.h>

#include <system_error>

namespace matwright {

namespace {

// SQLite would make it readable by everybody whom the umask lets in.
std::error_code makeFile(const std::filesystem::path& file) {
    std::error_code failed;
    std::filesystem::create_directories(file.parent_path(), failed);
    const int opened = ::open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
    if (opened < 0) {
        return std::error_code(errno, std::generic_category());
    }
    ::close(opened);
    return {};
}

Error notOurs(const std::filesystem::path& file, const StoreKind& kind) {
    return {ErrorCode::WrongFormat,
            fmt::format("This is not {}. Move the file away to begin a new one.", kind.what),
            file.string()};
}

Error newer(const std::filesystem::path& file, const StoreKind& kind, std::int64_t version) {
    return {ErrorCode::NewerVersion,
            fmt::format("A later version of the program has written {} (version {}, this program "
                        "knows up to {}). Update the program.",
                        kind.what, version, kind.steps.size()),
            file.string()};
}

bool bringUp(SqliteDatabase& database, const StoreKind& kind, std::int64_t from) {
    for (auto step = static_cast<std::size_t>(from); step < kind.steps.size(); ++step) {
        if (database.run(kind.steps[step]) != SQLITE_OK) {
            return false;
        }
    }
    return database.run(fmt::format("PRAGMA application_id={}; PRAGMA user_version={};",
                                    kind.applicationId, kind.steps.size())
                            .c_str()) == SQLITE_OK;
}

bool isUpToDate(SqliteDatabase& database, const StoreKind& kind) {
    return database.number("PRAGMA application_id", -1) == kind.applicationId &&
           database.number("PRAGMA user_version", -1) == std::ssize(kind.steps);
}

// Where there is something to do it looks at what the file is inside the transaction, because
// another program may be making it. Else it need not wait for one that is writing.
Result<void> prepare(SqliteDatabase& database, const std::filesystem::path& file,
                     const StoreKind& kind) {
    if (isUpToDate(database, kind)) {
        return {};
    }
    StoreTransaction transaction(database);
    if (!transaction.hasBegun()) {
        return std::unexpected(storeError(database, kind));
    }
    const std::int64_t id = database.number("PRAGMA application_id", -1);
    const std::int64_t tables = database.number("SELECT count(*) FROM sqlite_schema", -1);
    if (id != kind.applicationId && (id != 0 || tables != 0)) {
        return std::unexpected(notOurs(file, kind));
    }
    const std::int64_t version = database.number("PRAGMA user_version", 0);
    if (version > std::ssize(kind.steps) || version < 0) {
        return std::unexpected(newer(file, kind, version));
    }
    if (version < std::ssize(kind.steps) && !bringUp(database, kind, version)) {
        return std::unexpected(storeError(database, kind));
    }
    if (!transaction.commit()) {
        return std::unexpected(storeError(database, kind));
    }
    return {};
}

}  // namespace

Result<SqliteDatabase> openStore(const std::filesystem::path& file, const StoreKind& kind,
                                 std::chrono::milliseconds patience) {
    if (const std::error_code failed = makeFile(file)) {
        return std::unexpected(
            Error{ErrorCode::ReadFailed,
                  fmt::format("{} cannot be opened ({}). Check that you may write there.",
                              kind.what, failed.message()),
                  file.string()});
    }
    SqliteDatabase database(file, static_cast<int>(patience.count()));
    if (!database.isOpen()) {
        return std::unexpected(storeError(database, kind));
    }
    for (const char* setting : {"PRAGMA foreign_keys=ON", "PRAGMA synchronous=FULL"}) {
        if (database.run(setting) != SQLITE_OK) {
            return std::unexpected(storeError(database, kind));
        }
    }
    if (const Result<void> good = prepare(database, file, kind); !good) {
        return std::unexpected(good.error());
    }
    return database;
}

Error storeError(const SqliteDatabase& database, const StoreKind& kind) {
    const auto sentence = [&kind](std::string_view format, std::string_view what) {
        return fmt::format(fmt::runtime(format), kind.what, what);
    };
    switch (database.failure()) {
        case SQLITE_NOTADB:
        case SQLITE_CORRUPT:
            return {
                ErrorCode::WrongFormat,
                sentence("The file of {0} is damaged ({1}). Nothing in it was changed; put back a "
                         "copy of it, or move it away to begin a new one.",
                         database.message()),
                {}};
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return {ErrorCode::WriteFailed,
                    sentence("Another program is busy with {0} ({1}). Try again in a moment.",
                             database.message()),
                    {}};
        default:
            return {
                ErrorCode::WriteFailed,
                sentence("A change of {0} could not be kept ({1}). Nothing was changed; check that "
                         "there is room on the disk and that you may write there.",
                         database.message()),
                {}};
    }
}

StoreTransaction::StoreTransaction(SqliteDatabase& database)
    : m_database(database), m_isOpen(database.run("BEGIN IMMEDIATE") == SQLITE_OK) {}

StoreTransaction::~StoreTransaction() {
    if (m_isOpen) {
        m_database.run("ROLLBACK");
    }
}

bool StoreTransaction::commit() {
    if (!m_isOpen || m_database.run("COMMIT") != SQLITE_OK) {
        return false;
    }
    m_isOpen = false;
    return true;
}

}  // namespace matwright
