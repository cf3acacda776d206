// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>
#include <filesystem>
#include <functional>
#include <memory>

#include "core/filestore/file_store.h"

class QPrinter;
class QWidget;

namespace matwright::app {

// What the windows of printers and print plans ask of the person and of the system; a test answers
// instead.
struct PlanAsks {
    // Page files to be added, or nothing when it was cancelled.
    std::function<QStringList(QWidget* parent, const QString& title, const QString& begin)>
        pageFiles;
    // An existing folder, or nothing.
    std::function<QString(QWidget* parent, const QString& title, const QString& begin)> folder;
    // A file name to save as, or nothing; with the ending of `suggested` where none was typed. A
    // file that is there was asked about.
    std::function<QString(QWidget* parent, const QString& title, const QString& suggested,
                          const QString& filter)>
        fileName;
    // Whether to do what the sentence says; `yes` is the button's word.
    std::function<bool(QWidget* parent, const QString& sentence, const QString& yes)> confirm;
    // The names of the printers that are set up on this computer.
    std::function<QStringList()> queues;
    // The system's print dialog for so many pages; false when it was cancelled.
    std::function<bool(QWidget* parent, QPrinter& printer, int pages, const QString& title)> print;
    // Shows a folder in the system's file manager.
    std::function<void(const QString& folder)> show;
    // "2026-07-14"
    std::function<std::string()> today;
    std::filesystem::path store;  // the file of the person's printers
    std::shared_ptr<FileStore> files;

    static PlanAsks ofTheSystem();
};

}  // namespace matwright::app
