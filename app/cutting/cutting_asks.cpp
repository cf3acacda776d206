// SPDX-License-Identifier: MIT
#include "app/cutting/cutting_asks.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPushButton>

namespace matwright::app {

namespace {

QString askWord(const char* text) {
    return QCoreApplication::translate("matwright::app::CuttingAsks", text);
}

bool askToReplaceFile(QWidget* parent, const QString& name) {
    QMessageBox box(
        QMessageBox::Warning, askWord("Save"),
        askWord("There is a file %1 already. Replace it?").arg(QFileInfo(name).fileName()),
        QMessageBox::NoButton, parent);
    const auto* replace = box.addButton(askWord("Replace"), QMessageBox::DestructiveRole);
    box.setDefaultButton(box.addButton(QMessageBox::Cancel));
    box.exec();
    return box.clickedButton() == replace;
}

bool askToCutAgain(QWidget* parent, const QString& sentence) {
    QMessageBox box(QMessageBox::Question, askWord("Taken off already"), sentence,
                    QMessageBox::NoButton, parent);
    const auto* again = box.addButton(askWord("Take off once more"), QMessageBox::AcceptRole);
    box.setDefaultButton(box.addButton(QMessageBox::Cancel));
    box.exec();
    return box.clickedButton() == again;
}

ImportChoice askWhatToImport(QWidget* parent, const QString& sentence, std::size_t fresh,
                             std::size_t all) {
    QMessageBox box(QMessageBox::Question, askWord("Import papers"), sentence,
                    QMessageBox::NoButton, parent);
    const QAbstractButton* onlyNew = nullptr;
    if (fresh > 0) {
        auto* button = box.addButton(askWord("Add the %1 new").arg(static_cast<qulonglong>(fresh)),
                                     QMessageBox::AcceptRole);
        box.setDefaultButton(button);
        onlyNew = button;
    }
    const QAbstractButton* every = box.addButton(
        askWord("Add all %1").arg(static_cast<qulonglong>(all)), QMessageBox::DestructiveRole);
    QPushButton* cancel = box.addButton(QMessageBox::Cancel);
    if (!onlyNew) {
        box.setDefaultButton(cancel);
    }
    box.exec();
    return box.clickedButton() == every                ? ImportChoice::All
           : onlyNew && box.clickedButton() == onlyNew ? ImportChoice::OnlyNew
                                                       : ImportChoice::Nothing;
}

bool askToPrintPlan(QWidget* parent, QPrinter& printer, int pages) {
    QPrintDialog dialog(&printer, parent);
    dialog.setWindowTitle(askWord("Print the cutting plan"));
    dialog.setOption(QAbstractPrintDialog::PrintPageRange);
    dialog.setMinMax(1, pages);
    return dialog.exec() == QDialog::Accepted;
}

}  // namespace

CuttingAsks CuttingAsks::ofTheSystem() {
    CuttingAsks asks{.open =
                         [](QWidget* parent, const QString& title, const QString& filter) {
                             return QFileDialog::getOpenFileName(parent, title, {}, filter);
                         },
                     .openSeveral =
                         [](QWidget* parent, const QString& title, const QString& filter) {
                             return QFileDialog::getOpenFileNames(parent, title, {}, filter);
                         },
                     .cutAgain = askToCutAgain,
                     .import = askWhatToImport,
                     .out = TemplateAsks::ofTheSystem()};
    asks.out.replace = askToReplaceFile;
    asks.out.print = askToPrintPlan;
    return asks;
}

}  // namespace matwright::app
