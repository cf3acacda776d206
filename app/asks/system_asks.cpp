// SPDX-License-Identifier: MIT
#include "app/asks/system_asks.h"

#include <QDesktopServices>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <QUrl>

namespace matwright::app {

QString askForFolder(QWidget* parent, const QString& title, const QString& begin) {
    return QFileDialog::getExistingDirectory(parent, title, begin);
}

QString askToSaveAs(QWidget* parent, const QString& title, const QString& suggested,
                    const QString& filter) {
    // The dialog adds the ending itself, so that it asks before a file is replaced.
    QFileDialog dialog(parent, title, QFileInfo(suggested).path(), filter);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QFileInfo(suggested).suffix());
    dialog.selectFile(suggested);
    return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles().constFirst() : QString();
}

bool askToConfirm(QWidget* parent, const QString& sentence, const QString& yes) {
    QMessageBox box(QMessageBox::Question, parent->windowTitle(), sentence, QMessageBox::NoButton,
                    parent);
    const auto* button = box.addButton(yes, QMessageBox::AcceptRole);
    box.setDefaultButton(box.addButton(QMessageBox::Cancel));
    box.exec();
    return box.clickedButton() == button;
}

void showFolder(const QString& folder) {
    QDesktopServices::openUrl(QUrl::fromLocalFile(folder));
}

}  // namespace matwright::app
