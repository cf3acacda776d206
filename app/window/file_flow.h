// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QString>

#include "app/files/autosave.h"
#include "app/files/sketch_document.h"
#include "app/window/workplace.h"

namespace matwright::app {

// What happens, and what is asked, when a person starts, opens, saves or leaves a sketch. No work
// is ever given up without having asked.
class FileFlow final : public QObject {
    Q_OBJECT

  public:
    FileFlow(Workplace workplace, SketchDocument& document, Autosave& autosave,
             QString recoveryFolder, QObject* parent = nullptr);

    void startNew();
    void chooseAndOpen();
    // A file that cannot be opened is told about and leaves the open work alone.
    bool open(const QString& path);
    // True when the work is saved now.
    bool save();
    bool saveAs();
    // Asks about unsaved work; true when it may be given up (saved, or not wanted).
    bool mayLeave();
    // mayLeave(), and with the answer "don't save" the recovery copy goes too.
    bool mayClose();
    // Offers what crashed sessions left, one after the other, until one is opened. False where
    // there was nothing to offer.
    bool offerRecoveredWork();
    // The same when a person asked for it: says so where there is nothing.
    void lookForRecoveredWork();

    // The folder a file dialog begins in: the document's, else that of the last file, else the
    // person's documents.
    QString folderToStartIn() const;

  private:
    bool saveTo(const QString& path);
    // The library's folder, once there is one, and the sketch's own name.
    QString suggestionForNew() const;
    // After a failed save: where the work is now; makes a recovery copy of unsaved work.
    QString whatIsLeft();
    bool openRecovered(AbandonedWork work);

    Workplace m_workplace;
    SketchDocument& m_document;
    Autosave& m_autosave;
    QString m_recoveryFolder;
};

}  // namespace matwright::app
