// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>
#include <vector>

#include "core/making/making.h"

class QMimeData;

namespace matwright::app {

inline constexpr const char* photosMimeType = "application/x-matwright-photos";

// Photos of the tray on their way to a slot. The ids mean something in the window they come from
// only; every other program and window gets the files. The caller owns it.
QMimeData* toMime(const PhotoWork& work, const std::vector<PhotoId>& photos);

// The ids, where the data comes from this program itself; `mime` may be null.
std::vector<PhotoId> photosFromMime(const QMimeData* mime);
// Files and folders that are dragged in from elsewhere: absolute paths of this computer.
QStringList filesFromMime(const QMimeData* mime);

}  // namespace matwright::app
