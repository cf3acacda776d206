// SPDX-License-Identifier: MIT
#pragma once

#include <set>
#include <string>
#include <vector>

#include "core/measure/length_text.h"
#include "core/sketch/sketch.h"

namespace matwright::app {

// Text in columns, two spaces between them, no blank at a line's end. A column is as wide as its
// longest cell, counted in characters (code points). A heading of empty cells is left out.
class Table {
  public:
    using Row = std::vector<std::string>;
    // `right` holds the columns whose cells stand at the right.
    Table(Row heading, std::set<std::size_t> right);
    // As many cells as the heading has.
    void addRow(Row row);
    std::string text() const;

  private:
    std::set<std::size_t> m_right;
    std::vector<Row> m_rows;  // the heading first
};

// One line a piece from bottom to top: number, kind, name, print, trim, mats, on a double page
// which of the two, left, top (see Place), rotation; lengths to the scale.
std::string piecesTable(const Sketch& sketch, Scale scale);

}  // namespace matwright::app
