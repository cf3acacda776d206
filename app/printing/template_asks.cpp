// SPDX-License-Identifier: MIT
#include "app/printing/template_asks.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QFileInfo>
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

bool askToReplace(QWidget* parent, const QString& name) {
    QMessageBox box(QMessageBox::Warning, said("Save the template"),
                    said("There is a file %1 already. Replace it?").arg(QFileInfo(name).fileName()),
                    QMessageBox::NoButton, parent);
    const auto* replace = box.addButton(said("Replace"), QMessageBox::DestructiveRole);
    box.setDefaultButton(box.addButton(QMessageBox::Cancel));
    box.exec();
    return box.clickedButton() == replace;
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
    return {askFileName, askToReplace, [] { return QPrinterInfo::availablePrinterNames(); },
            askToPrint,  askToGoOn,    std::make_shared<DiskFileStore>()};
}

}  // namespace matwright::app
