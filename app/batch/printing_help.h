// SPDX-License-Identifier: MIT
#pragma once

namespace matwright::app {

// What --help of the commands on printers and prints says below the options.

inline constexpr const char* printPlanExamples = R"(
Examples:
  matwright-batch print-plan harbour.page.svg
  matwright-batch print-plan harbour.page.svg birthday.page.svg --waiting summer.page.svg
  matwright-batch print-plan harbour.page.svg --pdf to-print --cuts how-to-cut.pdf
  matwright-batch print-plan harbour.page.svg --printer "Small printer" --fill --printed
Prints on hand are taken first. The others go on as few sheets as can be (the cheapest, where
prices differ), over all papers of your printers; what room is left is told, and what may fill it.
Files are made exactly as large as the paper, with what was measured made up for: print them at
actual size. A file that is there is never written over.
Exit code 0: all is planned. 1: prints are left out. 3: a page or photo cannot be read.)";

inline constexpr const char* printersExamples = R"(
Examples:
  matwright-batch printers list
  matwright-batch printers add "Upstairs" --paper 4x6 --paper 5x7 --price 35 --at-hand 40
  matwright-batch printers add "Upstairs" --paper a4 --margin 1/4
  matwright-batch printers measured "Upstairs" 4x6 --across "3 1/16" --down 129mm
  matwright-batch printers remove "Upstairs" --paper 5x7
"measured" without figures forgets what was measured; with one, the other way stays as it was. A new list begins with three printers to be
changed at will.)";

inline constexpr const char* printsOnHandExamples = R"(
Examples:
  matwright-batch prints-on-hand list
  matwright-batch prints-on-hand use 12 --page "Harbour"
  matwright-batch prints-on-hand undo
Several numbers of one command are changed all or, where one cannot be, none. The last 200 changes
can be taken back, also on another day.)";

inline constexpr const char* testSheetExamples = R"(
Examples:
  matwright-batch test-sheet "Small printer" 4x6 test.pdf
  matwright-batch test-sheet "Small printer" 4x6 check.pdf --corrected
Print it at actual size (100 %), measure from A to B and from C to D with a good ruler, and tell
both figures to "matwright-batch printers measured".)";

}  // namespace matwright::app
