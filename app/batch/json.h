// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "core/checks/checks.h"
#include "core/sketch/sketch.h"

namespace matwright::app {

// JSON for scripts: UTF-8, two spaces of indent, members in a fixed order. Every length is
//   {"ticks": 3200400, "mm": 88.9, "text": "3 1/2 in"}
// where ticks (914,400 an inch) is exact, mm is the nearest double, and text is exact too: a
// fraction of an inch where there is one, else decimal inches or mm.

// {"name", "note", "page": {...}, "pieces": [{"number", "id", "kind", "name", "note", "print",
// "shape", "trim", "mats", "paper", "onPage", "left", "top", "rotation", "locked"}, …]}, from
// bottom to top. "onPage" is 1, or 2 for the right page of a double page; "left" and "top" are
// measured on it (see Place); "rotation" is in degrees, clockwise. "print" and "mats" are there for
// photo slots only.
std::string piecesJson(const Sketch& sketch);

// {"findings": [{"kind", "sentence", "pieces": [{"number", "id", "name"}, …]}, …]}
std::string findingsJson(const Sketch& sketch, const std::vector<CheckFinding>& findings);

}  // namespace matwright::app
