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
  matwright-batch carry-over page.sketch.svg --to a4 -o page-a4.sketch.svg
  matwright-batch prints holiday.page.svg -o prints --ganged
  matwright-batch cut holiday.page.svg --pdf cutting-plan.pdf
  matwright-batch library search beach --photos 3
Each command tells more with --help.

Results go to standard output, complaints to standard error. Exit codes:
  0  done
  1  check found something to mend; a search found no sketch; something is not cut
  2  the command line cannot be followed
  3  a sketch file, a page, a photo or the library cannot be read
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

inline constexpr const char* carryOverExamples = R"(
Examples:
  matwright-batch carry-over page.sketch.svg --to a4 -o page-a4.sketch.svg
  matwright-batch carry-over page.sketch.svg --to "9 x 12" -o small.sketch.svg --json
Margins, gutters and mats stay what they are and prints stay prints one can order; what could not be
kept is listed, a sentence each. A file that is there already is never written over.)";

inline constexpr const char* turnExamples = R"(
Examples:
  matwright-batch turn page.sketch.svg --mirror left-right -o mirrored.sketch.svg
  matwright-batch turn page.sketch.svg --turn clockwise -o lying.sketch.svg
A quarter turn swaps the sides of the page and of the prints; double pages have none.
A file that is there already is never written over.)";

inline constexpr const char* photosExamples = R"(
Examples:
  matwright-batch photos ~/Pictures/beach/*.jpg
  matwright-batch photos gulls.heic --json
Nothing is ever written to a photo. The largest print is the largest of the catalogue that the photo
fills at 300 pixels an inch, cropped to its ratio.
Exit code 0: all were read. 3: one or more cannot be read; the others are told.)";

inline constexpr const char* pageExamples = R"(
Example:
  matwright-batch page holiday.json -o holiday.page.svg
The listing says which photos go into which slots of a sketch:
  {
    "sketch": "holiday.sketch.svg",
    "fill": true,
    "photos": [
      {"photo": "beach.jpg", "slot": 2, "centre": [0.5, 0.4], "zoom": 1.2, "focal": true},
      {"photo": "gulls.jpg", "slot": "Sky", "straighten": -1.5, "border": "1/8"},
      {"photo": "pier.jpg", "turn": 90, "evenOut": true, "wish": "4x6", "favourite": true}
    ]
  }
Paths count from the listing's folder. "slot" is a number that "pieces" shows, or a slot's name; a
photo without one goes into the tray, and with "fill" free slots get photos from there. "centre" is
the middle of what shows (0 to 1 from the left and from the top), "zoom" 1 to 50, "straighten" -45 to
45 degrees clockwise, "turn" 90, 180 or 270 degrees, "border" a white border, "evenOut" brightens and
balances. A page that is there already is written over.)";

inline constexpr const char* printsExamples = R"(
Examples:
  matwright-batch prints holiday.page.svg -o prints
  Two 3x4 on one 4x6, as PDF pages of exactly that size:
    matwright-batch prints holiday.page.svg -o prints --ganged --format pdf
  To be cut by hand, with picture beyond the cut:
    matwright-batch prints holiday.page.svg -o prints --bleed 1/8 --cut-marks
Every file has an sRGB profile and its density, so that it prints in its own size at 100 %. The
capture date is kept; place and serial numbers are left out unless asked for.
The table tells how sharp each print comes out and how much of its photo is cut off.
Exit code 0: all were made. 3: the page or a photo cannot be read. 4: a file could not be written.)";

inline constexpr const char* libraryImportExamples = R"(
Examples:
  matwright-batch library import harbour.sketch.svg beach.sketch.svg
  matwright-batch library import ~/Downloads/sketches --into 2026
Of a folder all sketch files come along, in a sub-folder of its name. What the library has already
is not taken twice, a name that is taken gets a number, and nothing is ever written over.
Your own library is made where there is none yet; one named with --folder, or chosen in the window,
has to be there.
Exit code 0: all are in the library. 3: something was no sketch or could not be read; the others are
in. 4: something could not be written.)";

inline constexpr const char* libraryExportExamples = R"(
Examples:
  All of it in one archive, or what suits some filters:
    matwright-batch library export -o sketches.zip
    matwright-batch library export -o beach.zip --words beach --photos-at-most 4
  To leaf through on paper, five pictures side by side:
    matwright-batch library export -o favourites.pdf --favourites --paper a4 --columns 5
  Two sketches:
    matwright-batch library export 2026/harbour.sketch.svg beach.sketch.svg -o two.zip
Filters are those of "matwright-batch library search". An archive keeps sub-folders; labels stay in
the library.
Exit code 0: written. 1: no sketch was found. 3: a sketch cannot be read. 4: it could not be
written.)";

inline constexpr const char* libraryLabelExamples = R"(
Examples:
  matwright-batch library label 2026/harbour --tag sea --tag blue --favourite
  matwright-batch library label beach harbour --untag winter --note "for the small prints"
  matwright-batch library label beach
Labels are kept beside the sketches in the library and never change a sketch file. Without anything
to set they are shown.)";

inline constexpr const char* libraryExamples = R"(
Examples:
  matwright-batch library list
  matwright-batch library search beach --photos 3 --print 4x6
  matwright-batch library import ~/Downloads/sketches
  matwright-batch library export -o to-leaf-through.pdf --paper a4
  matwright-batch library list --folder ~/Cloud/sketches
A library is a folder of sketch files, with sub-folders. Without --folder it is the desktop
program's: the folder chosen there (Library > Library folder), else
$XDG_DATA_HOME/matwright/library, usually ~/.local/share/matwright/library.
An index in $XDG_CACHE_HOME/matwright makes it quick; it may be deleted at any time.
Files that cannot be used are named on standard error, one line each; the rest works.)";

inline constexpr const char* libraryListExamples = R"(
Examples:
  matwright-batch library list --order newest
  matwright-batch library list --in 2026/holidays --json
Exit code 0: sketches were found. 1: there are none. 3: the library cannot be read.)";

inline constexpr const char* librarySearchExamples = R"(
Examples:
  Three photos, one of them printed 4 x 6, with room for a title:
    matwright-batch library search --photos 3 --print 4x6 --room-for-title
  By the beginning, middle or end of words, on 12x12 double pages:
    matwright-batch library search sea holi --page 12x12 --double-page
  What the next choice would leave:
    matwright-batch library search --photos-at-most 4 --counts
  Pages like this one, mirrored or turned:
    matwright-batch library search --family-of "Harbour day"
All filters must hold. Sizes are names of the list that "matwright-batch sizes" shows, or written as
people do: "3 1/2 x 5", "20 x 30 cm". A print counts either way up, a page as it lies.
Where nothing is found, the filter to leave out is named.
In JSON every length is {"ticks": ..., "mm": ..., "text": ...}: 914,400 ticks are an inch.
Exit code 0: sketches were found. 1: none was found. 3: the library cannot be read.)";

inline constexpr const char* libraryFamiliesExamples = R"(
Example:
  matwright-batch library families
Sketches of one family are the same but for mirror, turn or tiny shifts.
Exit code 0: families were found. 1: no two sketches are alike. 3: the library cannot be read.)";

inline constexpr const char* libraryProblemsExamples = R"(
Example:
  matwright-batch library problems --no-index
Every file and folder that cannot be used is named once, with what to do.
Exit code 0: nothing to mend. 1: something was found. 3: the library itself cannot be read.)";

}  // namespace matwright::app
