// SPDX-License-Identifier: MIT
#pragma once

namespace matwright::app {

// What --help says below the options.
inline constexpr const char* helpFooter = R"(
Examples:
  matwright-batch template page.sketch.svg -o template.pdf
  matwright-batch template page.sketch.svg -o sheets.pdf --tiled --sheet a4
  matwright-batch pieces page.sketch.svg
  matwright-batch check page.sketch.svg && echo "Ready to cut"
Each command tells more with --help.

Results go to standard output, complaints to standard error. Exit codes:
  0  done
  1  check found something to mend
  2  the command line cannot be followed
  3  the sketch file cannot be read
  4  the result could not be made or written)";

inline constexpr const char* templateExamples = R"(
Examples:
  The whole page, for a print shop:
    matwright-batch template page.sketch.svg -o template.pdf
  On A4 sheets to be joined, from a printer that leaves 5 mm free:
    matwright-batch template page.sketch.svg -o sheets.pdf --tiled --sheet a4 --printer-margin 5mm
  In millimetres, without dimension lines:
    matwright-batch template page.sketch.svg -o template.svg --scale 1mm --no-dimensions
Lengths are written as people do: 1/4, "1 1/2", 0.25, 6mm, 0.6cm; without a unit they are inches.
Tiled SVG makes one file a sheet: OUT-1-A1.svg, OUT-2-A2.svg, ... (row letter, column number).
A double page is tiled page by page: OUT-1-left-A1.svg, ..., OUT-5-right-A1.svg, ...
Print at actual size (100 %), then measure the 1 in square; tiled, the ruler on each sheet.)";

inline constexpr const char* cutLinesExamples = R"(
Example:
  matwright-batch cutlines page.sketch.svg -o cut-lines.svg
One group of outlines a paper; titles and embellishments are left out.)";

inline constexpr const char* pictureExamples = R"(
Example:
  matwright-batch picture page.sketch.svg -o page.png --width 600)";

inline constexpr const char* checkExamples = R"(
Examples:
  matwright-batch check page.sketch.svg
  matwright-batch check page.sketch.svg --json --trimmer-step 1mm
Exit code 0: nothing to mend. 1: something was found. 3: the file cannot be read.)";

inline constexpr const char* piecesExamples = R"(
Examples:
  matwright-batch pieces page.sketch.svg --scale 1/8in
  matwright-batch pieces page.sketch.svg --json
In JSON every length is {"ticks": ..., "mm": ..., "text": ...}: 914,400 ticks are an inch.
A figure after ≈ is rounded to the scale.)";

}  // namespace matwright::app
