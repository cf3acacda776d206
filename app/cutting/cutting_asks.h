// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>

#include "app/printing/template_asks.h"

namespace matwright::app {

// What the windows of papers and cuts ask of the person and of the system; a test answers instead.
struct CuttingAsks {
    // A file to read, or nothing when it was cancelled.
    std::function<QString(QWidget* parent, const QString& title, const QString& filter)> open;
    std::function<QStringList(QWidget* parent, const QString& title, const QString& filter)>
        openSeveral;
    // A file to write, names, printers and the disk.
    TemplateAsks out;

    static CuttingAsks ofTheSystem();
};

}  // namespace matwright::app
