// SPDX-License-Identifier: MIT
#include "app/prints/prints_asks.h"

#include <QDesktopServices>
#include <QFileDialog>
#include <QUrl>

namespace matwright::app {

PrintsAsks PrintsAsks::ofTheSystem() {
    return {
        .folder =
            [](QWidget* parent, const QString& title, const QString& begin) {
                return QFileDialog::getExistingDirectory(parent, title, begin);
            },
        .fileName =
            [](QWidget* parent, const QString& title, const QString& suggested,
               const QString& filter) {
                return QFileDialog::getSaveFileName(parent, title, suggested, filter);
            },
        .show =
            [](const QString& folder) { QDesktopServices::openUrl(QUrl::fromLocalFile(folder)); },
        .files = std::make_shared<DiskFileStore>()};
}

}  // namespace matwright::app
