// SPDX-License-Identifier: MIT
#include "app/window/new_action.h"

#include "app/window/icons.h"

namespace matwright::app {

namespace {

constexpr const char* lastingNameKey = "lastingName";
constexpr const char* listsFilesKey = "listsFiles";

}  // namespace

QAction* newAction(QObject* parent, const ActionLook& look) {
    auto* action = new QAction(look.text, parent);
    if (!look.iconName.isEmpty()) {
        action->setIcon(lineIcon(look.iconName));
        action->setIconVisibleInMenu(false);
    }
    if (!look.shortText.isEmpty()) {
        action->setIconText(look.shortText);
    }
    action->setShortcut(look.keys);
    action->setStatusTip(look.hint);
    const QString keys = look.keys.toString(QKeySequence::NativeText);
    action->setToolTip(keys.isEmpty() ? look.hint : look.hint + QStringLiteral(" (%1)").arg(keys));
    return action;
}

void setLastingName(QAction& action, const QString& name) {
    action.setProperty(lastingNameKey, name);
}

QString lastingName(const QAction& action) {
    return action.property(lastingNameKey).toString();
}

void setListsFiles(QMenu& menu) {
    menu.setProperty(listsFilesKey, true);
}

bool listsFiles(const QMenu& menu) {
    return menu.property(listsFilesKey).toBool();
}

}  // namespace matwright::app
