// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <utility>

#include "app/files/autosave.h"

namespace matwright::app {

// One open sketch with its file and its recovery copy; outlives the window that shows it.
struct OpenWork {
    OpenWork(FileStore& files, QString folder, Autosave::Pace pace = {})
        : recoveryFolder(std::move(folder)),
          document(session, files),
          place(recoveryFolder, files),
          autosave(session, document, place, pace) {}

    QString recoveryFolder;
    Session session;
    SketchDocument document;
    RecoveryPlace place;
    Autosave autosave;
};

}  // namespace matwright::app
