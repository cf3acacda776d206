// SPDX-License-Identifier: MIT
#pragma once

#include <set>
#include <string>

#include "core/printers/prints_on_hand.h"
#include "core/printers/store_tables.h"

namespace matwright {

// Writes one change of prints together with what it takes to undo it. Whoever calls holds the
// transaction, and leaves it without committing where anything fails.
class ChangeWriter {
  public:
    ChangeWriter(SqliteDatabase& database, std::string when)
        : m_database(database), m_when(std::move(when)) {}

    Result<void> begin(const std::string& what, const std::string& once);
    Result<PrintOnHandId> made(const MadePrint& print);
    // NotFound unless the print is in one of the states `from`.
    Result<void> moved(PrintOnHandId print, const std::set<PrintState>& from, PrintState to,
                       const std::string& page);
    // A paper of which there is plenty, or that is gone, stays as it is.
    Result<void> papersUsed(PrinterPaperId paper, int count);
    // Forgets what is older than keptChanges. The answer is the number of the change.
    Result<std::int64_t> end();

  private:
    std::unexpected<Error> failed() const {
        return std::unexpected(storeError(m_database, printingKind));
    }
    SqliteDatabase& m_database;
    std::string m_when;
    std::int64_t m_change = 0;
};

// BadText where it is not written "2026-07-14".
std::optional<Error> dateFault(const std::string& when);

}  // namespace matwright
