// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <QStringList>
#include <functional>
#include <memory>

#include "core/filestore/file_store.h"

class QPrinter;
class QWidget;

namespace matwright::app {

// What the template window asks of the person and of the system; a test answers instead.
struct TemplateAsks {
    // A file name to save as, or nothing when it was cancelled.
    std::function<QString(QWidget* parent, const QString& title, const QString& suggested,
                          const QString& filter)>
        fileName;
    // Whether the file of this name may be replaced; for names the file dialog did not ask about.
    std::function<bool(QWidget* parent, const QString& name)> replace;
    // The names of the printers that are set up.
    std::function<QStringList()> printers;
    // The system's print dialog for so many pages; false when it was cancelled.
    std::function<bool(QWidget* parent, QPrinter& printer, int pages)> print;
    // Whether to go on in spite of what the sentence says.
    std::function<bool(QWidget* parent, const QString& sentence)> goOn;
    std::shared_ptr<FileStore> files;

    // The real ones.
    static TemplateAsks ofTheSystem();
};

}  // namespace matwright::app
