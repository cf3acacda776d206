// SPDX-License-Identifier: MIT
#pragma once

#include <QIcon>
#include <QPalette>
#include <QString>

namespace matwright::app {

// One of the program's own line drawings ("save", "photo", …), drawn in the text colour of the
// palette at the moment it is painted, so that a change of theme needs no new icons. An empty
// icon where there is no such drawing.
QIcon lineIcon(const QString& name);
// The same in `role` instead of the text colour, for grounds other than the window's.
QIcon lineIcon(const QString& name, QPalette::ColorRole role);

// The program's own icon, in its own colours.
QIcon programIcon();

}  // namespace matwright::app
