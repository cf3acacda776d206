// SPDX-License-Identifier: MIT
#pragma once

#include <QSettings>
#include <QString>
#include <filesystem>

namespace matwright::app {

// The file of a person's settings, as far as both programs read it; needs no window.

// matwright/settings.ini in the person's configuration folder. It need not be there.
QString standardSettingsFile();

// What stands in the file as one text, commas and all; empty where nothing does.
QString textAt(const QSettings& file, const char* key);

// The folder that the person chose for the library of sketches; empty where none was chosen.
QString chosenLibraryFolder(const QSettings& file);
std::filesystem::path chosenLibraryFolder(const QString& iniPath = standardSettingsFile());

}  // namespace matwright::app
