// SPDX-License-Identifier: MIT
#include "core/prints/print_notes.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/prints/cut_marks.h"

namespace matwright {

namespace {

bool sharesASheet(const std::vector<Print>& prints) {
    return std::ranges::any_of(simpleGangs(prints),
                               [](const Gang& gang) { return gang.places.size() > 1; });
}

std::string gangNote(const Making& making, const std::vector<Print>& prints,
                     const PrintOptions& options) {
    if (prints.size() == 1) {
        return "There is only one print, so none shares its sheet.";
    }
    PrintOptions bare = options;
    bare.bleed = {};
    if (!options.bleed.isZero() && sharesASheet(printsOf(making, bare))) {
        return "No two prints share a sheet: with the bleed they are too large. Set it to 0 for "
               "that.";
    }
    return "No two prints share a sheet: that takes two of one size which fill a sheet of at most "
           "5 × 7 in exactly, as two 3 × 4 fill a 4 × 6.";
}

bool hasRoomForMarks(const Print& print, const PrintOptions& options) {
    const PixelPlaces places = placesOf(print, options);
    return haveRoomForMarks(places.paper, places.trim, places.picture, options.ppi);
}

std::string marksNote(std::size_t without, std::size_t prints) {
    const bool isAll = without == prints;
    return fmt::format(
        "{} no room for cut marks: they need white paper beyond the trim and the bleed. Trim a "
        "photo smaller than its print size for that.",
        isAll ? std::string(prints == 1 ? "The print has" : "The prints have")
              : fmt::format("{} of {} prints have", without, prints));
}

// Turned, and on both pages.
bool isCutByHand(const Piece& slot, const PageSetup& setup) {
    const std::vector<Rect> sheets = pages(setup);
    const Rect bounds = trimBounds(slot);
    return sheets.size() == 2 && !slot.rotation.isZero() && bounds.left() < sheets[0].right() &&
           bounds.right() > sheets[1].left();
}

}  // namespace

std::vector<std::string> printNotes(const Making& making, const PrintOptions& options,
                                    bool ganged) {
    const std::vector<Print> prints = printsOf(making, options);
    std::vector<std::string> notes;
    if (prints.empty()) {
        return notes;
    }
    if (ganged && !sharesASheet(prints)) {
        notes.push_back(gangNote(making, prints, options));
    }
    if (options.cutMarks) {
        const auto without = static_cast<std::size_t>(std::ranges::count_if(
            prints, [&](const Print& one) { return !hasRoomForMarks(one, options); }));
        if (without > 0) {
            notes.push_back(marksNote(without, prints.size()));
        }
    }
    for (const Print& print : prints) {
        if (isCutByHand(making.sketch.pieces.at(print.slot), making.sketch.page)) {
            notes.push_back(fmt::format(
                "{} is turned and lies across the fold: it comes as one print, to be cut by hand "
                "along the fold.",
                print.name));
        }
    }
    return notes;
}

}  // namespace matwright
