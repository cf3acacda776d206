// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "app/batch/ports.h"
#include "core/measure/rect.h"

namespace matwright::app {

// The commands on printers, prints on hand and plans of prints, their command lines already read.
// Each gives the ExitCode. `store` is the file of printers and prints on hand; empty: the person's
// own (printingStoreName in BatchPorts::dataFolder).

struct PrintPlanCommand {
    std::vector<std::filesystem::path> pages;    // whose prints are made
    std::vector<std::filesystem::path> waiting;  // whose photos may fill what room is left
    std::filesystem::path store;
    std::vector<std::string> printers;  // by name; empty: all
    std::filesystem::path pdf;          // a folder: one PDF a printer; empty: none
    std::filesystem::path cuts;         // a PDF with the sheets, cut lines and steps; empty: none
    double seconds = 1;
    bool cutMarks = false;
    bool fill = false;     // the best offers into the room that is left
    bool printed = false;  // records it all as printed
    bool json = false;
};
// Findings where prints are left out.
int runPrintPlan(const PrintPlanCommand& command, BatchPorts& ports);

struct PrintersCommand {
    enum class Act { List, Add, Remove, Measured };
    Act act = Act::List;
    std::filesystem::path store;
    std::string printer;
    std::vector<Size> sizes;  // Add: the papers
    std::string paper;        // Remove, Measured: by name or size
    bool isShop = false;
    std::string queue;
    std::optional<Length> margin;  // Add: on all sides; nothing: without borders
    std::int64_t price = 100;
    std::optional<int> atHand;
    std::optional<Length> across;  // Measured; none of both: forgets it
    std::optional<Length> down;
    std::optional<bool> withBorders;  // nothing: as the paper is printed now
    bool json = false;
};
int runPrinters(const PrintersCommand& command, BatchPorts& ports);

struct PrintsOnHandCommand {
    enum class Act { List, Use, PutBack, Waste, Undo };
    Act act = Act::List;
    std::filesystem::path store;
    std::vector<std::int64_t> prints;
    std::string page;
    bool all = false;  // List: used and wasted ones too
    bool json = false;
};
int runPrintsOnHand(const PrintsOnHandCommand& command, BatchPorts& ports);

struct TestSheetCommand {
    std::filesystem::path store;
    std::string printer;
    std::string paper;
    std::filesystem::path output;  // ends in .pdf; never written over
    std::optional<bool> withBorders;
    bool corrected = false;
};
int runTestSheet(const TestSheetCommand& command, BatchPorts& ports);

}  // namespace matwright::app
