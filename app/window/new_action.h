// SPDX-License-Identifier: MIT
#pragma once

#include <QAction>
#include <QKeySequence>
#include <QMenu>
#include <QString>
#include <utility>

namespace matwright::app {

// How an action looks and is reached.
struct ActionLook {
    QString text;       // with the mnemonic: "&Save"
    QString hint;       // one line for the status bar and the tool tip
    QKeySequence keys;  // may be empty where the mnemonic is enough
    QString iconName;   // may be empty
    QString shortText;  // under a toolbar icon; may be empty
};

// A new action owned by `parent`; connects `triggered` to `run`.
template <typename Run>
QAction* newAction(QObject* parent, const ActionLook& look, Run run);

QAction* newAction(QObject* parent, const ActionLook& look);

// What a command is called in a list of commands where its text changes ("Undo" for "Undo move");
// empty where the text is its name.
void setLastingName(QAction& action, const QString& name);
QString lastingName(const QAction& action);

// A menu whose entries are files, no commands.
void setListsFiles(QMenu& menu);
bool listsFiles(const QMenu& menu);

template <typename Run>
QAction* newAction(QObject* parent, const ActionLook& look, Run run) {
    QAction* action = newAction(parent, look);
    QObject::connect(action, &QAction::triggered, parent, std::move(run));
    return action;
}

}  // namespace matwright::app
