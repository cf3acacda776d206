// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/database/store.h"
#include "core/papers/paper_on_hand.h"

namespace matwright {

inline constexpr std::size_t maxCutNameBytes = 200;

// What cutting a plan does to the papers on hand.
struct PapersCut {
    struct Taken {
        PaperId id;
        int count = 1;
        // The entry as it was when the cut was planned, with that id: it must still be so, but for
        // its count.
        PaperOnHand planned = {};
        friend bool operator==(const Taken&, const Taken&) = default;
    };
    // Written down as cut, for the person and for accounts: of how many, how large, from what.
    struct Piece {
        std::string name;
        std::string paper;
        Size size;
        int count = 1;
        friend bool operator==(const Piece&, const Piece&) = default;
    };
    std::string label;                 // "Cut papers for Beach"; valid text of one line
    std::vector<Taken> taken;          // at most once an id
    std::vector<PaperOnHand> putBack;  // usable leftovers, with their sizes; ids 0
    std::vector<Piece> pieces;
    // Names this one cut, as the caller likes (one line of at most maxCutNameBytes): told again it
    // changes nothing, until it is taken back. Empty: a cut of its own each time.
    std::string once = {};
    friend bool operator==(const PapersCut&, const PapersCut&) = default;
};

// The last change that can be taken back, or brought back.
struct PapersChange {
    std::int64_t number = 0;
    std::string label;  // "Add kraft cardstock"
    std::string when;   // "2026-07-14 16:03:22", UTC
    friend bool operator==(const PapersChange&, const PapersChange&) = default;
};

// The list of papers on hand in one SQLite file ("papers.sqlite" in the person's data folder).
// Every change is one transaction, on the disk when the call returns, and kept in a journal in the
// same file: undo and redo go on after a restart, whichever program made the change. The last
// keptPapersChanges can be taken back.
//
// Several programs may have it open. Whoever changes or removes an entry says how it was; where
// another program was quicker nothing is changed and the error (BadEdit) says so.
//
// Errors of every call: what storeError() says, Malformed where a paper breaks its rules.
class PapersStore {
  public:
    // `patience` as openStore() has it.
    static Result<PapersStore> open(const std::filesystem::path& file,
                                    std::chrono::milliseconds patience = storePatience);

    // By name, whole sheets first, larger ones first.
    Result<std::vector<PaperOnHand>> list();
    // One change, or none where there are no papers. Their ids are not looked at; the new ones are
    // given back in order. TooLarge above maxPapersOnHand.
    Result<std::vector<PaperId>> add(std::span<const PaperOnHand> papers, std::string_view label);
    Result<PaperId> add(const PaperOnHand& paper);
    // Both have the same id.
    Result<void> change(const PaperOnHand& before, const PaperOnHand& after);
    Result<void> remove(std::span<const PaperOnHand> papers);

    // Takes sheets off, puts leftovers back (added to an entry that is the same but for its count)
    // and writes the pieces down. Whole sheets that are used up stay with a count of 0, scraps go.
    // Gives the number of the change; nothing where `cut.once` was done before, by whichever
    // program, and not taken back: nothing is changed then, and that is no error. BadEdit where an
    // entry is not as planned any more or there are not as many sheets as are taken; nothing is
    // changed either.
    Result<std::optional<std::int64_t>> cut(const PapersCut& cut);
    // The last cut that stands of those named `once`, or `once`, a blank and more.
    Result<std::optional<PapersChange>> lastCut(std::string_view once);
    // Everything that was cut and not taken back, oldest first.
    Result<std::vector<PapersCut::Piece>> cutPieces();

    Result<std::optional<PapersChange>> undoable();
    Result<std::optional<PapersChange>> redoable();
    // Takes back the last change, or brings back the last one taken back; nothing where there is
    // none. With a number it has to be that one: NotFound where another program was quicker.
    Result<std::optional<PapersChange>> undo(std::optional<std::int64_t> number = std::nullopt);
    Result<std::optional<PapersChange>> redo(std::optional<std::int64_t> number = std::nullopt);

    // Another number after every change, undo and redo, by whichever program: to see cheaply
    // whether to list anew.
    Result<std::int64_t> version();

  private:
    explicit PapersStore(SqliteDatabase database) : m_database(std::move(database)) {}
    Error failure() const;

    SqliteDatabase m_database;
};

inline constexpr int keptPapersChanges = 200;

}  // namespace matwright
