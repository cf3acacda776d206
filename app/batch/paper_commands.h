// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <filesystem>
#include <optional>
#include <vector>

#include "app/batch/ports.h"
#include "core/measure/catalogue.h"
#include "core/paperplan/paper_plan.h"

namespace matwright::app {

// The commands of craft paper, their command lines already read. Each gives the ExitCode.

struct PapersCommand {
    std::filesystem::path store;  // empty: the person's own list
    bool json = false;
};
int runPapersList(const PapersCommand& command, BatchPorts& ports);
int runPapersUndo(const PapersCommand& command, BatchPorts& ports);
int runPapersRedo(const PapersCommand& command, BatchPorts& ports);

struct PapersAddCommand {
    PapersCommand papers;
    PaperOnHand paper;
};
int runPapersAdd(const PapersAddCommand& command, BatchPorts& ports);

struct PapersFileCommand {
    PapersCommand papers;
    std::filesystem::path file;  // ends in .csv
    bool all = false;            // import: also what is on the list already
};
int runPapersImport(const PapersFileCommand& command, BatchPorts& ports);
// Never over a file that is there.
int runPapersExport(const PapersFileCommand& command, BatchPorts& ports);

struct CutCommand {
    std::vector<std::filesystem::path> pages;  // sketch files and page files
    PapersCommand papers;
    PaperPlanOptions options;    // its scale is not looked at
    std::optional<Scale> scale;  // naturalScale() of the first page
    bool buyNothing = false;
    std::optional<std::filesystem::path> pdf;  // ends in .pdf; never over a file that is there
    const NamedSize* sheet = findSheetSize("letter");  // the PDF's pages
    std::optional<std::filesystem::path> svgFolder;    // made where needed
    bool takeOff = false;  // take what is cut off the list and put leftovers back
    bool again = false;    // also where that was done before
};
// Findings where something is not cut or needs a paper, or where it is off the list already.
int runCut(const CutCommand& command, BatchPorts& ports);

// What the person has: the list of the command or the person's own.
std::filesystem::path storeOf(const PapersCommand& command, const BatchPorts& ports);
// The store, a complaint made where it cannot be opened.
std::expected<PapersStore, int> openPapers(const PapersCommand& command, BatchPorts& ports);

}  // namespace matwright::app
