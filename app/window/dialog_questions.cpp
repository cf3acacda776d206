// SPDX-License-Identifier: MIT
#include "app/window/dialog_questions.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QLocale>
#include <QMessageBox>
#include <QPushButton>
#include <QScreen>

#include "app/files/paths.h"
#include "app/window/new_page_dialog.h"
#include "app/window/screen_dialog.h"
#include "core/photo/photo_endings.h"

namespace matwright::app {
namespace {

void phrase(QMessageBox& box, const QString& headline, const QString& sentences) {
    box.setWindowTitle(QGuiApplication::applicationDisplayName());
    box.setTextFormat(Qt::PlainText);
    box.setText(headline);
    box.setInformativeText(sentences);
}

QString filterOf(const QString& words, DocumentKind kind) {
    return QStringLiteral("%1 (*%2)").arg(words, suffixOf(kind));
}

// Files of other names can be picked too; whatever is picked is checked when read.
QString openFilter() {
    return QStringList{DialogQuestions::tr("Sketches and pages (*%1 *%2)")
                           .arg(suffixOf(DocumentKind::Sketch), suffixOf(DocumentKind::Page)),
                       filterOf(DialogQuestions::tr("Sketches"), DocumentKind::Sketch),
                       filterOf(DialogQuestions::tr("Pages in the making"), DocumentKind::Page),
                       DialogQuestions::tr("All files (*)")}
        .join(QStringLiteral(";;"));
}

QString photoFilter() {
    QStringList patterns;
    for (const std::string_view known : photoEndings()) {
        const QString ending = QString::fromUtf8(known);
        patterns << u'*' + ending << u'*' + ending.toUpper();
    }
    return DialogQuestions::tr("Photos (%1);;All files (*)").arg(patterns.join(u' '));
}

}  // namespace

Questions::UnsavedChoice DialogQuestions::unsavedWork(const QString& name) {
    QMessageBox box(m_window);
    phrase(box, tr("Save the changes to %1?").arg(name), tr("What is not saved is lost."));
    auto* save = box.addButton(tr("&Save"), QMessageBox::AcceptRole);
    auto* dont = box.addButton(tr("&Don't save"), QMessageBox::DestructiveRole);
    box.setEscapeButton(box.addButton(tr("&Cancel"), QMessageBox::RejectRole));
    box.setDefaultButton(save);
    box.exec();
    if (box.clickedButton() == save) {
        return UnsavedChoice::Save;
    }
    return box.clickedButton() == dont ? UnsavedChoice::DontSave : UnsavedChoice::Cancel;
}

std::optional<Questions::NewPage> DialogQuestions::newPage(Scale scale) {
    NewPageDialog dialog(scale, m_window);
    if (dialog.exec() != QDialog::Accepted) {
        return {};
    }
    const auto page = dialog.page();
    return page ? std::optional(NewPage{*page, dialog.scale()}) : std::nullopt;
}

std::optional<QString> DialogQuestions::fileToOpen(const QString& folder) {
    const QString path =
        QFileDialog::getOpenFileName(m_window, tr("Open a sketch or a page"), folder, openFilter());
    return path.isEmpty() ? std::nullopt : std::optional(path);
}

std::optional<QString> DialogQuestions::fileToSave(const QString& suggestion) {
    const bool isPage = kindOfPath(suggestion) == DocumentKind::Page;
    const QString filter = isPage ? filterOf(tr("Pages in the making"), DocumentKind::Page)
                                  : filterOf(tr("Sketches"), DocumentKind::Sketch);
    const QString path = QFileDialog::getSaveFileName(
        m_window, isPage ? tr("Save this page in the making") : tr("Save this sketch"), suggestion,
        filter + QStringLiteral(";;") + tr("All files (*)"));
    return path.isEmpty() ? std::nullopt : std::optional(path);
}

bool DialogQuestions::mayReplace(const QString& path) {
    return confirmed(tr("Replace %1?").arg(QFileInfo(path).fileName()),
                     tr("A file of that name is there already."), tr("&Replace"));
}

QStringList DialogQuestions::photosToAdd(const QString& folder) {
    return QFileDialog::getOpenFileNames(m_window, tr("Add photos"), folder, photoFilter(), nullptr,
                                         QFileDialog::HideNameFilterDetails);
}

std::optional<QString> DialogQuestions::photoFolder(const QString& headline,
                                                    const QString& folder) {
    const QString path = QFileDialog::getExistingDirectory(m_window, headline, folder);
    return path.isEmpty() ? std::nullopt : std::optional(path);
}

std::optional<QString> DialogQuestions::whereIsPhoto(const QString& name, const QString& folder) {
    const QString path =
        QFileDialog::getOpenFileName(m_window, tr("Where is %1?").arg(name), folder, photoFilter(),
                                     nullptr, QFileDialog::HideNameFilterDetails);
    return path.isEmpty() ? std::nullopt : std::optional(path);
}

bool DialogQuestions::mayTakeInstead(const QString& name, const QString& chosen) {
    return confirmed(tr("Take %1 in its place?").arg(chosen),
                     tr("It is another picture than %1 was. Its crop is kept as it is.").arg(name),
                     tr("&Take it"));
}

Questions::RecoveryChoice DialogQuestions::recoveredWork(const AbandonedWork& work) {
    QMessageBox box(m_window);
    phrase(box, tr("Recovered work from %1").arg(work.shownName()),
           tr("Matwright ended before this was saved. It was last changed on %1.")
               .arg(QLocale().toString(work.changedAt, QLocale::ShortFormat)));
    auto* open = box.addButton(tr("&Open"), QMessageBox::AcceptRole);
    auto* away = box.addButton(tr("&Throw away"), QMessageBox::DestructiveRole);
    box.setEscapeButton(box.addButton(tr("&Later"), QMessageBox::RejectRole));
    box.setDefaultButton(open);
    box.exec();
    if (box.clickedButton() == open) {
        return RecoveryChoice::Open;
    }
    // Cancelling keeps the copy, and the question comes again at the next start.
    const bool thrown = box.clickedButton() == away &&
                        confirmed(tr("Throw away the recovered work of %1?").arg(work.shownName()),
                                  tr("It cannot be brought back."), tr("&Throw away"));
    return thrown ? RecoveryChoice::ThrowAway : RecoveryChoice::Later;
}

std::optional<double> DialogQuestions::screenPpi(double current, Scale scale) {
    const QScreen* screen = m_window ? m_window->screen() : QGuiApplication::primaryScreen();
    ScreenDialog dialog(current, screen->physicalDotsPerInch(), scale, m_window);
    return dialog.exec() == QDialog::Accepted ? std::optional(dialog.ppi()) : std::nullopt;
}

void DialogQuestions::tell(const QString& headline, const QString& sentences) {
    QMessageBox box(m_window);
    phrase(box, headline, sentences);
    box.setIcon(QMessageBox::Warning);
    box.exec();
}

bool DialogQuestions::confirmed(const QString& headline, const QString& sentences,
                                const QString& yes) {
    QMessageBox box(m_window);
    phrase(box, headline, sentences);
    auto* go = box.addButton(yes, QMessageBox::DestructiveRole);
    auto* cancel = box.addButton(tr("&Cancel"), QMessageBox::RejectRole);
    box.setEscapeButton(cancel);
    box.setDefaultButton(cancel);
    box.exec();
    return box.clickedButton() == go;
}

}  // namespace matwright::app
