// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "app/editing/session.h"
#include "core/measure/length_text.h"

namespace matwright::app {

class PageView;

// Makes each piece a child of the page for assistive technology: its name says number, kind, size
// and place, its states whether it is selected and focused; it can be pressed to be selected.
// Installing twice does nothing.
void installPageAccessibility();

// Tells assistive technology about a change, where any is listening.
void announceChange(PageView& page, const Change& change);

// "Piece 2 of 5, photo slot 4 × 6 in, left 1 1/2 in, top 2 in, turned 15°
// to the right, two mats, locked"; on a double page it is told which page left and top count from.
QString spokenName(const Sketch& sketch, PieceId id, Scale scale);

}  // namespace matwright::app
