// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

class QWidget;

namespace matwright::app {

// What windows ask by the system's own dialogs. The windows take them as functions, so that a test
// answers instead.

// An existing folder, or nothing when it was cancelled.
QString askForFolder(QWidget* parent, const QString& title, const QString& begin);

// A file name to save as, or nothing. It has the ending of `suggested` where none was typed, and a
// file that is there under the whole name was asked about.
QString askToSaveAs(QWidget* parent, const QString& title, const QString& suggested,
                    const QString& filter);

// Whether to do what the sentence says; `yes` is the button's word. Enter and Esc do nothing.
bool askToConfirm(QWidget* parent, const QString& sentence, const QString& yes);

// In the system's file manager.
void showFolder(const QString& folder);

}  // namespace matwright::app
