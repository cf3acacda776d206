// SPDX-License-Identifier: MIT
#pragma once

#include <QtGlobal>

namespace matwright::app {

// Steps of one kind no longer apart than this are one burst: one undo takes them back together.
inline constexpr qint64 burstPauseMs = 1000;

}  // namespace matwright::app
