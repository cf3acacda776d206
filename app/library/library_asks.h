// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <QStringList>
#include <optional>

#include "core/carry/carry_over.h"
#include "core/sketch/sketch.h"

namespace matwright::app {

// Everything the library asks a person and waits for. The program answers with dialogs; tests
// answer themselves. No answer is a cancelled question.
class LibraryAsks {
  public:
    virtual ~LibraryAsks() = default;

    virtual std::optional<QString> newName(const QString& name) = 0;
    // One of these sub-folders or a new one; empty is the library itself.
    virtual std::optional<QString> folderToMoveTo(const QStringList& folders) = 0;
    virtual QStringList filesToAdd() = 0;
    virtual std::optional<QString> folderToAdd() = 0;
    virtual std::optional<QString> libraryFolder(const QString& now) = 0;
    virtual std::optional<QString> zipFile(const QString& suggestion) = 0;
    virtual std::optional<QString> pdfFile(const QString& suggestion) = 0;
    // The sketch on another page, once its losses were seen; see core/carry for the step.
    virtual std::optional<Sketch> carriedOver(const Sketch& sketch, Length trimmerStep) = 0;
    virtual void list(const QString& headline, const QStringList& lines) = 0;
    virtual void tell(const QString& headline, const QString& sentences) = 0;
};

}  // namespace matwright::app
