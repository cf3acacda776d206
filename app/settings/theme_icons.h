// SPDX-License-Identifier: MIT
#pragma once

#include <QIcon>
#include <QStyle>

namespace matwright::app {

// The small icons of docks and toolbars as line drawings in the text colour of the palette, or an
// empty icon for all others. Fusion's own are picture files, which cost a search for picture
// plug-ins at every start and stay dark on a dark ground.
QIcon themeIcon(QStyle::StandardPixmap which);

}  // namespace matwright::app
