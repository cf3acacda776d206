// SPDX-License-Identifier: MIT
#pragma once

#include "app/settings/settings.h"

namespace matwright::app {

// The list of recently used files in the settings.

// Puts the file first; the oldest beyond maxRecentFiles drops out.
void rememberFile(SettingsStore& settings, const QString& path);
void forgetFile(SettingsStore& settings, const QString& path);

}  // namespace matwright::app
