// SPDX-License-Identifier: MIT
#pragma once

namespace matwright::app {

// What --help says below the options of `papers` and `cut`.
inline constexpr const char* papersExamples = R"(
Examples:
  matwright-batch papers add "kraft cardstock" --size 12x12 --count 6 --thickness "216 gsm"
  matwright-batch papers add "blue dots" --size "6 x 12" --scrap --up
  matwright-batch papers list
  matwright-batch papers export papers.csv
  matwright-batch papers undo
Pages name their papers in words; papers of one name, case and spaces aside, are the same paper.
Without --store the list is your own: $XDG_DATA_HOME/matwright/papers.sqlite, usually
~/.local/share/matwright/papers.sqlite. Every change can be taken back, also days later.)";

inline constexpr const char* papersImportExamples = R"(
Example of a table, as spreadsheets write it (comma-separated values, UTF-8):
  Name,Width,Height,Count,Kind,Pattern,Sides,Thickness,Colour,Picture,Picture width
  kraft cardstock,12 in,12 in,6,whole,none,two,216 gsm,#c8aa82,,
  "dots, blue",5 1/2 in,7 in,1,scrap,up,one,,#5a783c,,
The first line names the columns, in any order; Name, Width and Height are needed. Lengths without a
unit are inches. Where a line is faulty nothing is added. Papers that are on the list already, the
same in everything but how many there are, are not added again unless --all is given.
Exit code 0: added. 3: the table or the list cannot be read. 4: the list cannot be written.)";

inline constexpr const char* papersExportExamples = R"(
Example:
  matwright-batch papers export papers.csv
A file that is there already is never written over.)";

inline constexpr const char* cutExamples = R"(
Examples:
  matwright-batch cut holiday.page.svg garden.sketch.svg
  On paper, with a picture of every sheet and every step:
    matwright-batch cut holiday.page.svg --pdf cutting-plan.pdf
  Only from what is on hand, and take it off the list:
    matwright-batch cut holiday.page.svg --buy-nothing --take-off
Mats, strips and blocks are cut from the papers they name; scraps and the middles of gutted mats are
used where they save a sheet. What is missing is told as sheets to buy. The papers of the same
pieces are taken off once, by whichever window or command; --again takes them off for a second copy.
Exit code 0: everything is cut. 1: something is not cut or needs a paper, or the papers are off the
list already. 3: a page or the list cannot be read. 4: a result or the list cannot be written.)";

}  // namespace matwright::app
