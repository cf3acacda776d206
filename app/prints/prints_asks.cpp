// SPDX-License-Identifier: MIT
#include "app/prints/prints_asks.h"

#include <QDesktopServices>
#include <QFileDialog>
#include <QFileInfo>
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
                // The dialog adds the ending itself, so that it asks before a file is replaced.
                QFileDialog dialog(parent, title, QFileInfo(suggested).path(), filter);
                dialog.setAcceptMode(QFileDialog::AcceptSave);
                dialog.setDefaultSuffix(QFileInfo(suggested).suffix());
                dialog.selectFile(suggested);
                return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles().constFirst()
                                                          : QString();
            },
        .show =
            [](const QString& folder) { QDesktopServices::openUrl(QUrl::fromLocalFile(folder)); },
        .files = std::make_shared<DiskFileStore>()};
}

}  // namespace matwright::app
