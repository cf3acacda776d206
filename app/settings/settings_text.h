// SPDX-License-Identifier: MIT
#pragma once

#include <QSettings>

#include "app/settings/settings.h"

namespace matwright::app {

// The settings as words, figures and file names in an ini file: "scale=sixteenth-inch",
// "trimmer-step=1/16". Lengths are written as exactText() and read as inches where they bear no
// unit.

// A key that is missing or makes no sense gives the default of that field; ranges are not checked.
Settings readSettings(const QSettings& file);
void writeSettings(QSettings& file, const Settings& settings);

}  // namespace matwright::app
