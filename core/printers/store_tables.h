// SPDX-License-Identifier: MIT
#pragma once

#include <array>

#include "core/database/store.h"

namespace matwright {

// What stands in printing.sqlite. Lengths are ticks. A look is what textOf(PrintLook) gives; a
// correction is four numbers (wished and measured across, down) and the date.
inline constexpr std::array<const char*, 1> printingSteps{R"(
CREATE TABLE begun(once INTEGER PRIMARY KEY CHECK(once = 1));
CREATE TABLE printer(
    id INTEGER PRIMARY KEY AUTOINCREMENT, name TEXT NOT NULL, kind INTEGER NOT NULL,
    queue TEXT NOT NULL);
CREATE TABLE paper(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    printer INTEGER NOT NULL REFERENCES printer(id) ON DELETE CASCADE,
    place INTEGER NOT NULL, name TEXT NOT NULL, width INTEGER NOT NULL, height INTEGER NOT NULL,
    borderless INTEGER NOT NULL, margin_left INTEGER NOT NULL, margin_top INTEGER NOT NULL,
    margin_right INTEGER NOT NULL, margin_bottom INTEGER NOT NULL, price INTEGER NOT NULL,
    at_hand INTEGER, with_borders TEXT, without_borders TEXT);
CREATE INDEX papers_of ON paper(printer);
CREATE TABLE print(
    id INTEGER PRIMARY KEY AUTOINCREMENT, content BLOB NOT NULL, look TEXT NOT NULL,
    photo TEXT NOT NULL, state INTEGER NOT NULL CHECK(state BETWEEN 0 AND 2), page TEXT NOT NULL,
    day TEXT NOT NULL);
CREATE INDEX prints_of_state ON print(state);
CREATE TABLE change(
    number INTEGER PRIMARY KEY AUTOINCREMENT, what TEXT NOT NULL, day TEXT NOT NULL, once TEXT);
CREATE TABLE change_print(
    change INTEGER NOT NULL REFERENCES change(number) ON DELETE CASCADE,
    print INTEGER NOT NULL REFERENCES print(id),
    was_state INTEGER, was_page TEXT, was_day TEXT, PRIMARY KEY(change, print));
CREATE INDEX changes_of ON change_print(print);
CREATE TABLE change_paper(
    change INTEGER NOT NULL REFERENCES change(number) ON DELETE CASCADE,
    paper INTEGER NOT NULL, used INTEGER NOT NULL, left_at_hand INTEGER NOT NULL,
    PRIMARY KEY(change, paper));
CREATE TABLE done(once TEXT PRIMARY KEY) WITHOUT ROWID;
)"};

inline constexpr StoreKind printingKind{"the list of printers and prints on hand", 0x4d777072,
                                        printingSteps};

}  // namespace matwright
