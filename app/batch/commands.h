// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "app/batch/ports.h"
#include "core/carry/turned_sketch.h"
#include "core/checks/checks.h"
#include "core/measure/catalogue.h"
#include "core/template/template.h"
#include "core/template/tiling.h"

namespace matwright::app {

// The commands, their command lines already read. Each gives the ExitCode.
// All that read a sketch refuse to write over it, and say the reader's warnings on `err`.

// 1/16 in, or 1 mm for a sketch whose page is measured in whole millimetres and not in inches. What
// the commands take where no scale is given.
Scale naturalScale(const Sketch& sketch);

struct TemplateCommand {
    std::filesystem::path input;
    std::filesystem::path output;  // ends in .svg or .pdf, in any case
    TemplateOptions look;          // its scale is not looked at
    std::optional<Scale> scale;
    bool tiled = false;
    const NamedSize* sheet = findSheetSize("letter");
    Length printerMargin;
    Length overlap;
};
// Tiled SVG goes into one file a sheet: "OUT-1-A1.svg", "OUT-2-A2.svg", …
int runTemplate(const TemplateCommand& command, BatchPorts& ports);

struct FileCommand {
    std::filesystem::path input;
    std::filesystem::path output;
};
int runCutLines(const FileCommand& command, BatchPorts& ports);

struct PictureCommand {
    std::filesystem::path input;
    std::filesystem::path output;
    int width = 1200;  // pixels
};
inline constexpr int maxPictureWidth = 20'000;
int runPicture(const PictureCommand& command, BatchPorts& ports);

struct ListCommand {
    std::filesystem::path input;
    bool json = false;
    std::optional<Scale> scale;
    std::optional<Length> trimmerStep;  // 1/16 in, or 1 mm for a page in mm; only for `check`
};
int runCheck(const ListCommand& command, BatchPorts& ports);
int runPieces(const ListCommand& command, BatchPorts& ports);

// Both make a new sketch file and never go over a file that is there.
struct CarryOverCommand {
    std::filesystem::path input;
    std::filesystem::path output;  // ends in .sketch.svg
    Size page;
    std::optional<bool> doublePage;  // as the sketch is
    bool json = false;
};
int runCarryOver(const CarryOverCommand& command, BatchPorts& ports);

struct TurnCommand {
    std::filesystem::path input;
    std::filesystem::path output;   // ends in .sketch.svg
    std::optional<WholeTurn> turn;  // needed
};
int runTurn(const TurnCommand& command, BatchPorts& ports);

int runSizes(BatchPorts& ports);

}  // namespace matwright::app
