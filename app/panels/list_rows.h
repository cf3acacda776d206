// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

class QTableView;
class QTableWidgetItem;

namespace matwright::app {

// How the lists of windows look and behave: whole rows are chosen, every other one shaded, no grid
// and no row numbers, headings at the left, and Tab leads out of the list. Nothing is edited in
// place. `name` is what assistive technology says.
void setUpRows(QTableView& list, const QString& name);

// A cell that can be chosen, not changed.
QTableWidgetItem* wordsItem(const QString& text);

}  // namespace matwright::app
