// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/printers/print_look.h"
#include "core/printers/printer.h"

namespace matwright {

// Prints that were made and are kept: on hand until a page takes them.

struct PrintOnHandId {
    std::int64_t value = 0;
    friend constexpr auto operator<=>(PrintOnHandId, PrintOnHandId) = default;
};

enum class PrintState { OnHand, Used, Wasted };

// "on hand", "used", "wasted"
std::string_view stateWord(PrintState state);

struct PrintOnHand {
    PrintOnHandId id;
    PrintLook look;
    std::string photoName;  // of its file, for people
    PrintState state = PrintState::OnHand;
    std::string page;  // that has taken it (Used); else empty
    std::string when;  // of its last change, "2026-07-14"
    friend bool operator==(const PrintOnHand&, const PrintOnHand&) = default;
};

// A print that has come out of a printer.
struct MadePrint {
    PrintLook look;
    std::string photoName;
    std::string page;  // it was made for and is glued on; empty: made ahead, on hand now
    friend bool operator==(const MadePrint&, const MadePrint&) = default;
};

inline constexpr std::size_t maxPrintNameBytes = 1'000;

// What the store refuses, or nothing. BadText for names that are not on one line of at most
// maxPrintNameBytes bytes, OutOfRange for a look that could not be read again.
std::optional<Error> findFault(const MadePrint& print);
// The same of the page that takes a print; it has a name.
std::optional<Error> pageNameFault(const std::string& page);

// What one act of printing has changed, kept in one transaction or not at all.
struct PrintingDone {
    std::vector<MadePrint> made;
    std::map<PrintOnHandId, std::string> taken;  // prints on hand, and the pages that take them
    std::map<PrinterPaperId, int> papersUsed;    // come off what is at hand, never below 0
    std::string when;                            // "2026-07-14"
    // Names this one act, as the caller likes (at most 200 bytes): told again, it changes nothing.
    // Empty: an act of its own each time.
    std::string once;
    friend bool operator==(const PrintingDone&, const PrintingDone&) = default;
};

// One line of what can be undone.
struct PrintingChange {
    std::int64_t number = 0;  // later ones are larger
    std::string what;         // "Printed 3 prints", "Took 1 print for \"Harbour\""
    std::string when;
    friend bool operator==(const PrintingChange&, const PrintingChange&) = default;
};

inline constexpr std::size_t maxPrintsOnHand = 100'000;
// Older changes can no longer be undone.
inline constexpr std::size_t keptChanges = 200;

}  // namespace matwright
