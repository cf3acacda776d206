// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <functional>
#include <memory>

#include "core/filestore/file_store.h"

class QWidget;

namespace matwright::app {

// What the windows of prints ask of the person and of the system; a test answers instead.
struct PrintsAsks {
    // An existing folder, or nothing when it was cancelled.
    std::function<QString(QWidget* parent, const QString& title, const QString& begin)> folder;
    // A file name to save as, or nothing.
    std::function<QString(QWidget* parent, const QString& title, const QString& suggested,
                          const QString& filter)>
        fileName;
    // Shows a folder in the system's file manager.
    std::function<void(const QString& folder)> show;
    std::shared_ptr<FileStore> files;

    static PrintsAsks ofTheSystem();
};

}  // namespace matwright::app
