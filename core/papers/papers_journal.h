// SPDX-License-Identifier: MIT
#pragma once

#include <set>
#include <string>
#include <string_view>

#include "core/papers/papers_store.h"

namespace matwright {

extern const StoreKind papersStoreKind;

// The columns of a paper, in the order of bindPaper() and paperOf(); the id comes first.
inline constexpr const char* paperColumns =
    "id,name,colour,picture,picture_width,width,height,count,sides,pattern,thickness,kind";

// Binds all but the id, to the parameters from `first` on.
void bindPaper(SqliteStatement& statement, int first, const PaperOnHand& paper);
PaperOnHand paperOf(const SqliteStatement& row);

// One change of the list: a transaction that writes into the journal how the papers it touches were
// before and are afterwards. What was taken back before can no longer be brought back then.
// Where a call gives false ask storeError() and leave: nothing is kept.
class PapersChanging {
  public:
    PapersChanging(SqliteDatabase& database, std::string_view label);

    bool hasBegun() const { return m_good; }
    std::int64_t number() const { return m_number; }
    // Before an entry is changed or removed.
    bool willChange(PaperId id);
    // Names this change, which no other may be called; not empty.
    bool nameIt(std::string_view once);
    // Gives an id of 0 where it failed.
    PaperId insert(const PaperOnHand& paper);
    bool commit();

  private:
    bool rememberSides(PaperId id, int side);
    bool forgetOldChanges();

    SqliteDatabase& m_database;
    StoreTransaction m_transaction;
    std::int64_t m_number = 0;
    std::set<PaperId> m_touched;
    bool m_good = false;
};

// Brings the papers of a change to how they were before it (side 0) or after it (side 1).
bool restorePapers(SqliteDatabase& database, std::int64_t change, int side);
bool countVersion(SqliteDatabase& database);

}  // namespace matwright
