// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QString>

#include "core/error/error.h"

namespace matwright::app {

// Parts of the program that stand in libraries of their own and are opened on first use, so that
// the start does not wait for what only they need (printing, PDF). A part is a Qt plugin whose
// object has one interface; it is never closed again.

// Where this program's parts are: lib/matwright beside its bin folder, in a build as installed.
QString standardPartsFolder();
// The same seen from a program's folder; for programs without a QCoreApplication.
QString partsFolderOf(const QString& programFolder);

// The object of the part called `name` ("template"), owned by the program.
// Errors: NotFound where the folder has no such part; NewerVersion where it belongs to another
// version of the program, older ones too; Unsupported where the system cannot open it.
Result<QObject*> openPart(const QString& folder, const QString& name);

// The same as the interface the part is known to have (Q_DECLARE_INTERFACE).
template <typename Interface>
Result<Interface*> openPart(const QString& folder, const QString& name);

// What to say of a part that does not have the interface expected of it.
Error notThisPart(const QString& folder, const QString& name);

template <typename Interface>
Result<Interface*> openPart(const QString& folder, const QString& name) {
    const Result<QObject*> object = openPart(folder, name);
    if (!object) {
        return std::unexpected(object.error());
    }
    if (auto* part = qobject_cast<Interface*>(*object)) {
        return part;
    }
    return std::unexpected(notThisPart(folder, name));
}

}  // namespace matwright::app
