// SPDX-License-Identifier: MIT
#include "app/printplan/plan_asks.h"

#include <QCoreApplication>
#include <QDate>
#include <QFileDialog>
#include <QPrintDialog>
#include <QPrinterInfo>

#include "app/asks/system_asks.h"
#include "app/folders/personal_folders.h"
#include "core/printers/printing_store.h"

namespace matwright::app {

namespace {

QString askWord(const char* text) {
    return QCoreApplication::translate("matwright::app::PlanAsks", text);
}

QStringList askForPages(QWidget* parent, const QString& title, const QString& begin) {
    return QFileDialog::getOpenFileNames(parent, title, begin,
                                         askWord("Pages (*.page.svg);;All files (*)"));
}

bool askHowToPrint(QWidget* parent, QPrinter& printer, int pages, const QString& title) {
    QPrintDialog dialog(&printer, parent);
    dialog.setWindowTitle(title);
    dialog.setOption(QAbstractPrintDialog::PrintPageRange, pages > 1);
    dialog.setMinMax(1, pages);
    return dialog.exec() == QDialog::Accepted;
}

}  // namespace

PlanAsks PlanAsks::ofTheSystem() {
    const std::filesystem::path folder = personalDataFolder();
    return {.pageFiles = askForPages,
            .folder = askForFolder,
            .fileName = askToSaveAs,
            .confirm = askToConfirm,
            .queues = [] { return QPrinterInfo::availablePrinterNames(); },
            .print = askHowToPrint,
            .show = showFolder,
            .today = [] { return QDate::currentDate().toString(Qt::ISODate).toStdString(); },
            .store = folder.empty() ? folder : folder / printingStoreName,
            .files = std::make_shared<DiskFileStore>()};
}

}  // namespace matwright::app
