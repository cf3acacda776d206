// SPDX-License-Identifier: MIT
#include "app/library/library_dialogs.h"

#include <QDialog>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QGuiApplication>
#include <QInputDialog>
#include <QLabel>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QStandardPaths>
#include <QVBoxLayout>

#include "app/files/paths.h"
#include "app/library/carry_dialog.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {
namespace {

QString documents() {
    return folderThatIsThere(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
}

std::optional<QString> unlessEmpty(const QString& text) {
    return text.isEmpty() ? std::nullopt : std::optional(text);
}

// Wide enough for its title and for a long name.
std::optional<QString> typedIn(QInputDialog& dialog) {
    dialog.resize(420, dialog.sizeHint().height());
    return dialog.exec() == QDialog::Accepted ? std::optional(dialog.textValue()) : std::nullopt;
}

}  // namespace

std::optional<QString> LibraryDialogs::newName(const QString& name) {
    QInputDialog dialog(m_widget);
    dialog.setWindowTitle(tr("Rename"));
    dialog.setLabelText(tr("The sketch's new &name:"));
    dialog.setTextValue(name);
    return typedIn(dialog);
}

std::optional<QString> LibraryDialogs::folderToMoveTo(const QStringList& folders) {
    const QString top = tr("(the library itself)");
    QInputDialog dialog(m_widget);
    dialog.setWindowTitle(tr("Move to a folder"));
    dialog.setLabelText(tr("A &folder of the library, or the name of a new one:"));
    dialog.setComboBoxItems(QStringList(top) + folders);
    dialog.setComboBoxEditable(true);
    dialog.setOkButtonText(tr("Move"));
    const auto typed = typedIn(dialog);
    return typed == top ? QString() : typed;
}

QStringList LibraryDialogs::filesToAdd() {
    return QFileDialog::getOpenFileNames(
        m_widget, tr("Add sketch files"), documents(),
        tr("Sketches (*%1);;All files (*)").arg(QLatin1StringView(sketchFileSuffix)));
}

std::optional<QString> LibraryDialogs::folderToAdd() {
    return unlessEmpty(QFileDialog::getExistingDirectory(
        m_widget, tr("Add all sketches of a folder"), documents()));
}

std::optional<QString> LibraryDialogs::libraryFolder(const QString& now) {
    return unlessEmpty(
        QFileDialog::getExistingDirectory(m_widget, tr("Folder of the library"), now));
}

std::optional<QString> LibraryDialogs::fileToWrite(const QString& title, const QString& suggestion,
                                                   const QString& suffix, const QString& filter) {
    QFileDialog dialog(m_widget, title, documents(), filter);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(suffix);
    dialog.selectFile(suggestion);
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) {
        return {};
    }
    return dialog.selectedFiles().constFirst();
}

std::optional<QString> LibraryDialogs::zipFile(const QString& suggestion) {
    return fileToWrite(tr("Export as zip"), suggestion, QStringLiteral("zip"),
                       tr("Zip files (*.zip)"));
}

std::optional<QString> LibraryDialogs::pdfFile(const QString& suggestion) {
    return fileToWrite(tr("Save a contact sheet"), suggestion, QStringLiteral("pdf"),
                       tr("PDF files (*.pdf)"));
}

std::optional<Sketch> LibraryDialogs::carriedOver(const Sketch& sketch, Length trimmerStep) {
    CarryDialog dialog(sketch, trimmerStep, m_widget);
    return dialog.exec() == QDialog::Accepted ? std::optional(dialog.result().sketch)
                                              : std::nullopt;
}

void LibraryDialogs::list(const QString& headline, const QStringList& lines) {
    QDialog dialog(m_widget);
    dialog.setWindowTitle(headline);
    auto* layout = new QVBoxLayout(&dialog);
    layout->addWidget(new QLabel(headline));
    auto* text = new QPlainTextEdit(lines.join(QStringLiteral("\n\n")));
    text->setReadOnly(true);
    text->setTabChangesFocus(true);
    text->setAccessibleName(headline);
    layout->addWidget(text, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    layout->addWidget(buttons);
    dialog.resize(620, 380);
    dialog.exec();
}

void LibraryDialogs::tell(const QString& headline, const QString& sentences) {
    QMessageBox box(QMessageBox::Warning, QGuiApplication::applicationDisplayName(), headline,
                    QMessageBox::Ok, m_widget);
    box.setTextFormat(Qt::PlainText);
    box.setInformativeText(sentences);
    box.exec();
}

}  // namespace matwright::app
