// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "core/making/making.h"

namespace matwright::app {

// In a page's file photos and pictures of papers that lie in its folder or below it have paths from
// there ("photos/boat.jpg"), so that the folder can be moved, copied and given away with them. In
// the open page all paths are absolute. `folder` is absolute.
Making withPathsFrom(Making making, const QString& folder);
Making withPathsBelow(Making making, const QString& folder);

}  // namespace matwright::app
