// SPDX-License-Identifier: MIT
#include "app/printing/template_asks.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrinterInfo>
#include <QPushButton>

namespace matwright::app {

namespace {

QString said(const char* text) {
    return QCoreApplication::translate("matwright::app::TemplateAsks", text);
}

QString askFileName(QWidget* parent, const QString& title, const QString& suggested,
                    const QString& filter) {
    return QFileDialog::getSaveFileName(parent, title, suggested, filter);
}

bool askToPrint(QWidget* parent, QPrinter& printer, int pages) {
    QPrintDialog dialog(&printer, parent);
    dialog.setWindowTitle(said("Print the template"));
    dialog.setOption(QAbstractPrintDialog::PrintPageRange);
    dialog.setMinMax(1, pages);
    return dialog.exec() == QDialog::Accepted;
}

bool askToGoOn(QWidget* parent, const QString& sentence) {
    QMessageBox box(QMessageBox::Warning, said("Print the template"), sentence,
                    QMessageBox::NoButton, parent);
    const auto* goOn = box.addButton(said("Print anyway"), QMessageBox::AcceptRole);
    box.setDefaultButton(box.addButton(QMessageBox::Cancel));
    box.exec();
    return box.clickedButton() == goOn;
}

}  // namespace

TemplateAsks TemplateAsks::ofTheSystem() {
    return {askFileName, [] { return QPrinterInfo::availablePrinterNames(); }, askToPrint,
            askToGoOn, std::make_shared<DiskFileStore>()};
}

}  // namespace matwright::app
