// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>

#include "app/library/library_asks.h"

namespace matwright::app {

// The questions of the library asked by dialogs over a widget.
class LibraryDialogs final : public QObject, public LibraryAsks {
    Q_OBJECT

  public:
    void setParentWidget(QWidget* widget) { m_widget = widget; }

    std::optional<QString> newName(const QString& name) override;
    std::optional<QString> folderToMoveTo(const QStringList& folders) override;
    QStringList filesToAdd() override;
    std::optional<QString> folderToAdd() override;
    std::optional<QString> libraryFolder(const QString& now) override;
    std::optional<QString> zipFile(const QString& suggestion) override;
    std::optional<QString> pdfFile(const QString& suggestion) override;
    std::optional<Sketch> carriedOver(const Sketch& sketch, Length trimmerStep) override;
    void list(const QString& headline, const QStringList& lines) override;
    void tell(const QString& headline, const QString& sentences) override;

  private:
    std::optional<QString> fileToWrite(const QString& title, const QString& suggestion,
                                       const QString& suffix, const QString& filter);

    QWidget* m_widget = nullptr;
};

}  // namespace matwright::app
