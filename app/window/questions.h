// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <QStringList>
#include <optional>

#include "app/files/recovery.h"
#include "core/measure/length_text.h"
#include "core/sketch/sketch.h"

namespace matwright::app {

// Everything the window asks a person and waits for. The program answers with dialogs; tests
// answer themselves, so that nothing ever blocks them.
class Questions {
  public:
    virtual ~Questions() = default;

    enum class UnsavedChoice { Save, DontSave, Cancel };
    virtual UnsavedChoice unsavedWork(const QString& name) = 0;

    // No answer: cancelled.
    virtual std::optional<PageSetup> newPage(Scale scale) = 0;
    virtual std::optional<QString> fileToOpen(const QString& folder) = 0;
    // The suggestion's suffix tells whether a sketch or a page is saved. May give any path; one
    // without that suffix gets it later.
    virtual std::optional<QString> fileToSave(const QString& suggestion) = 0;
    // A file of that name exists, and the person was not asked about it yet.
    virtual bool mayReplace(const QString& path) = 0;

    // Photos to add, several at once; none: cancelled.
    virtual QStringList photosToAdd(const QString& folder) = 0;
    // A folder of photos.
    virtual std::optional<QString> photoFolder(const QString& headline, const QString& folder) = 0;
    // The file that the photo of this name is now.
    virtual std::optional<QString> whereIsPhoto(const QString& name, const QString& folder) = 0;
    // The file that was chosen for it holds another picture.
    virtual bool mayTakeInstead(const QString& name, const QString& chosen) = 0;

    enum class RecoveryChoice { Open, ThrowAway, Later };
    virtual RecoveryChoice recoveredWork(const AbandonedWork& work) = 0;

    // Pixels per inch measured with a ruler, 0 for what the system says.
    virtual std::optional<double> screenPpi(double current, Scale scale) = 0;

    // Something went wrong, or is worth knowing before going on; one or more sentences.
    virtual void tell(const QString& headline, const QString& sentences) = 0;
};

}  // namespace matwright::app
