// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/database/store.h"
#include "core/error/error.h"
#include "core/printers/prints_on_hand.h"

namespace matwright {

// "printing.sqlite", in the person's data folder.
inline constexpr const char* printingStoreName = "printing.sqlite";

// The person's printers and prints on hand, kept in one file (see core/database/store.h). Every
// act is one transaction: after a crash it was done whole or not at all. Several programs may use
// the file at once. For one thread at a time.
//
// Errors of all: what storeError() says; OutOfRange or BadText from findFault(); NotFound for what
// is not there (any more); BadEdit where it was changed meanwhile. Nothing is changed then.
class PrintingStore {
  public:
    // A store that is new is given startingPrinters(unit).
    static Result<PrintingStore> open(const std::filesystem::path& file, Unit unit = Unit::Inch);

    // In the order they were added.
    Result<std::vector<Printer>> printers();
    // Gives ids to the printer and its papers. BadText where a printer has its name already.
    Result<Printer> add(const Printer& printer);
    // `before` is the printer as it was read: where it is not so any more, BadEdit. Papers of
    // `after` with id 0 are new, papers of `before` that are missing go. The answer has all ids.
    // BadText for another name that a printer has already.
    Result<Printer> change(const Printer& before, const Printer& after);
    Result<void> remove(PrinterId printer);
    // What a test sheet has measured. Nothing: as if never measured.
    Result<void> keep(PrinterPaperId paper, bool borderless,
                      const std::optional<Correction>& correction);

    // In the order they were made; of one state, or all.
    Result<std::vector<PrintOnHand>> prints();
    Result<std::vector<PrintOnHand>> prints(PrintState state);
    // Every photo of which a print was made that was not wasted: for "not yet printed".
    Result<std::set<ContentKey>> printedPhotos();

    // The number of the change, for undo(); nothing where `done.once` was recorded before: nothing
    // is changed then. An act is whole: where a print to be taken is not on hand, or the same one
    // is taken by others meanwhile, NotFound. With `gone` such prints are told there, and all the
    // rest is recorded; NotFound only where nothing is left to be recorded.
    Result<std::optional<std::int64_t>> record(const PrintingDone& done,
                                               std::vector<PrintOnHandId>* gone = nullptr);
    // Of prints made elsewhere.
    Result<PrintOnHandId> addOnHand(const MadePrint& print, const std::string& when);

    // What becomes of prints: all of them or, where one cannot (NotFound), none. One change however
    // many they are; the answer is its number, for undo(). NotFound where `prints` is empty.

    // BadText where pageNameFault() has a word about the page, as in `taken` of an act.
    Result<std::int64_t> take(const std::set<PrintOnHandId>& prints, const std::string& page,
                              const std::string& when);
    // Used or wasted by mistake: on hand again.
    Result<std::int64_t> putBack(const std::set<PrintOnHandId>& prints, const std::string& when);
    Result<std::int64_t> waste(const std::set<PrintOnHandId>& prints, const std::string& when);
    // One print each.
    Result<std::int64_t> take(PrintOnHandId print, const std::string& page,
                              const std::string& when) {
        return take(std::set{print}, page, when);
    }
    Result<std::int64_t> putBack(PrintOnHandId print, const std::string& when) {
        return putBack(std::set{print}, when);
    }
    Result<std::int64_t> waste(PrintOnHandId print, const std::string& when) {
        return waste(std::set{print}, when);
    }

    // What undo() would take back, latest first, at most `most`.
    Result<std::vector<PrintingChange>> changes(std::size_t most = keptChanges);
    // Takes back the latest change of prints (papers at hand with it), also one of another day or
    // program. NotFound where there is none. With a number it has to be that one: NotFound where
    // it is no longer the latest. Papers come back where their number is still what the act has
    // left: not where they were counted anew since.
    Result<PrintingChange> undo(std::optional<std::int64_t> number = std::nullopt);

    // What is wrong with the whole file by its own rules, or nothing: for checks. Every print has
    // one state and a look that can be read, a used one its page, every printer is sound, every
    // change that can be undone names prints that are there.
    std::vector<std::string> faults();

  private:
    explicit PrintingStore(SqliteDatabase database) : m_database(std::move(database)) {}
    SqliteDatabase m_database;
};

}  // namespace matwright
