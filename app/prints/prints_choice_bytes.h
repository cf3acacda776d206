// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>

#include "app/prints/prints_options_panel.h"

namespace matwright::app {

// The choices as bytes for the settings; what cannot be read, or is out of range, is as it was at
// the very beginning. Keeping the place is never remembered: it is asked for each time.
QByteArray bytesOf(const PrintsChoice& choice);
PrintsChoice choiceFrom(const QByteArray& bytes);

}  // namespace matwright::app
