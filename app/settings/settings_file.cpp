// SPDX-License-Identifier: MIT
#include "app/settings/settings_file.h"

#include <QFile>
#include <QStandardPaths>
#include <QStringList>

namespace matwright::app {

QString standardSettingsFile() {
    return QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation) +
           QStringLiteral("/matwright/settings.ini");
}

QString textAt(const QSettings& file, const char* key) {
    // A value with commas comes back as a list; it was one text in the file.
    const QVariant value = file.value(QLatin1StringView(key));
    return value.typeId() == QMetaType::QStringList ? value.toStringList().join(u',')
                                                    : value.toString();
}

QString chosenLibraryFolder(const QSettings& file) {
    return textAt(file, "library/folder");
}

std::filesystem::path chosenLibraryFolder(const QString& iniPath) {
    const QSettings file(iniPath, QSettings::IniFormat);
    return QFile::encodeName(chosenLibraryFolder(file)).toStdString();
}

}  // namespace matwright::app
