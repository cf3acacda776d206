// SPDX-License-Identifier: MIT
#include "app/files/recent_files.h"

#include <QFileInfo>

namespace matwright::app {

void rememberFile(SettingsStore& settings, const QString& path) {
    Settings value = settings.value();
    value.recentFiles.prepend(QFileInfo(path).absoluteFilePath());
    settings.set(value);
}

void forgetFile(SettingsStore& settings, const QString& path) {
    Settings value = settings.value();
    value.recentFiles.removeAll(path);
    settings.set(value);
}

}  // namespace matwright::app
