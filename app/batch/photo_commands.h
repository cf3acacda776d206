// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "app/batch/ports.h"
#include "app/batch/printing_commands.h"
#include "core/measure/catalogue.h"
#include "core/prints/print_job.h"

namespace matwright::app {

// The commands that read and render photos, their command lines already read. Each gives the
// ExitCode.

struct PhotosCommand {
    std::vector<std::filesystem::path> inputs;
    bool json = false;
};

struct PageCommand {
    std::filesystem::path listing;
    std::filesystem::path output;  // ends in .page.svg
};

struct PrintsCommand {
    std::filesystem::path page;
    std::filesystem::path folder;
    PrintOptions options;
    bool ganged = false;
    bool replace = false;  // other files of the prints' names; photos of the page never
    bool json = false;
};

struct DoubleCheckCommand {
    std::filesystem::path page;
    std::filesystem::path output;  // ends in .pdf
    PrintOptions options;          // its bleed counts
    const NamedSize* sheet = findSheetSize("letter");
};

// They stand in a part of their own, because the libraries that read photos would make every other
// command start later.
class PhotoCommands {
  public:
    virtual ~PhotoCommands() = default;

    // Facts of each file. InputRefused where one cannot be read; the others are told all the same.
    virtual int photos(const PhotosCommand& command, BatchPorts& ports) = 0;
    // A page made from a sketch and a listing of photos (see page_listing.h).
    virtual int page(const PageCommand& command, BatchPorts& ports) = 0;
    // Every print of a page as a file, made on all cores; then what became of each slot.
    virtual int prints(const PrintsCommand& command, BatchPorts& ports) = 0;
    // All prints of a page on sheets to look over.
    virtual int doubleCheck(const DoubleCheckCommand& command, BatchPorts& ports) = 0;
    // See printing_commands.h.
    virtual int printPlan(const PrintPlanCommand& command, BatchPorts& ports) = 0;
    virtual int printers(const PrintersCommand& command, BatchPorts& ports) = 0;
    virtual int printsOnHand(const PrintsOnHandCommand& command, BatchPorts& ports) = 0;
    virtual int testSheet(const TestSheetCommand& command, BatchPorts& ports) = 0;
};

std::unique_ptr<PhotoCommands> makePhotoCommands();

}  // namespace matwright::app
