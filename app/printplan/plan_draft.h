// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "core/printplan/plan_input.h"

namespace matwright::app {

// A page that is planned with.
struct DraftPage {
    PlanPage page;
    QString file;           // it is kept in; empty where it was never saved
    bool isPrinted = true;  // else it waits, and its photos may fill what room is left
    friend bool operator==(const DraftPage&, const DraftPage&) = default;
};

// What plans and the store call the page of this file: as the file is called. Two pages made from
// one sketch have its name in common.
std::string planNameOf(const QString& file);

// Where a print is wished to come out; nothing: anywhere.
struct WishedPlace {
    std::optional<PrinterId> printer;
    std::optional<PrinterPaperId> paper;
    friend bool operator==(const WishedPlace&, const WishedPlace&) = default;
};

// What a person has chosen for a plan, as a regular value. Wishes stay with their pages while those
// wait.
struct PlanDraft {
    std::vector<DraftPage> pages;
    std::vector<PrintWish> wishes;  // their pages are indexes of `pages`
    std::vector<AheadPrint> ahead;
    friend bool operator==(const PlanDraft&, const PlanDraft&) = default;

    void removePage(std::size_t page);
    void wish(std::size_t page, PieceId slot, const WishedPlace& place);
    WishedPlace wished(std::size_t page, PieceId slot) const;
    // A name that no page of the draft has: "Harbour", "Harbour 2".
    std::string freeName(const std::string& name) const;

    // What is planned: the pages that are printed, in their order, and those that wait, with what
    // is known besides (storedInput()). Wishes for printers or papers that are gone are left out.
    // Prints up to `before` are no answer for a page that was never saved: another of its name had
    // them.
    PlanInput input(PlanInput known, PrintOnHandId before = {}) const;
    // Index of `pages` for an index of the input's pages.
    std::size_t pageOf(std::size_t inputPage) const;
};

// A print of the plan's list, before it is known where it comes out.
struct DraftPrint {
    std::optional<std::size_t> page;   // index of the draft's pages
    std::optional<std::size_t> ahead;  // or of its prints ahead
    Print print;
    Photo photo;
    friend bool operator==(const DraftPrint&, const DraftPrint&) = default;
};
std::vector<DraftPrint> printsOf(const PlanDraft& draft);

}  // namespace matwright::app
