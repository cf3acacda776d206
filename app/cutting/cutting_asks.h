// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>

#include "app/printing/template_asks.h"

namespace matwright::app {

// What is done with a table of which some papers are on the list already.
enum class ImportChoice { Nothing, OnlyNew, All };

// What the windows of papers and cuts ask of the person and of the system; a test answers instead.
struct CuttingAsks {
    // A file to read, or nothing when it was cancelled.
    std::function<QString(QWidget* parent, const QString& title, const QString& filter)> open;
    std::function<QStringList(QWidget* parent, const QString& title, const QString& filter)>
        openSeveral;
    // Whether papers that were taken off already are taken off once more.
    std::function<bool(QWidget* parent, const QString& sentence)> cutAgain;
    // `fresh` of the `all` papers of a table are new; the sentence says so.
    std::function<ImportChoice(QWidget* parent, const QString& sentence, std::size_t fresh,
                               std::size_t all)>
        import;
    // A file to write, names, printers and the disk.
    TemplateAsks out;

    static CuttingAsks ofTheSystem();
};

}  // namespace matwright::app
