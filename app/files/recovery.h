// SPDX-License-Identifier: MIT
#pragma once

#include <QDateTime>
#include <QLockFile>
#include <QString>
#include <map>
#include <memory>
#include <string>
#include <vector>

#include "core/filestore/file_store.h"
#include "core/making/making.h"

namespace matwright::app {

// The recovery folder holds three files for each session, all named after one random id:
//   ID.lock        held while the session runs; the system lets go of it when the program dies
//   ID.sketch.svg  a whole sketch file: the unsaved work; ID.page.svg for a page in the making
//   ID.from        the path the work belongs to, UTF-8; empty or missing for unnamed work
// A session that ends cleanly leaves none of them.

// matwright/recovery in the person's state folder (XDG_STATE_HOME).
QString standardRecoveryFolder();

// What a recovery copy keeps.
struct UnsavedWork {
    Making making;
    std::map<PieceId, std::string> pictures;  // small pictures that are there already
    QString originalPath;                     // the path the work belongs to, or empty
};

// This session's place in the recovery folder.
class RecoveryPlace {
  public:
    // Makes the folder where needed. Without a lock (an unwritable folder) write() fails.
    RecoveryPlace(const QString& folder, FileStore& store);
    // Gives the place up; a copy that was not cleared stays and will be offered.
    ~RecoveryPlace();

    // May run on another thread than clear() does, but not at the same time.
    Result<void> write(const UnsavedWork& work);
    // Removes the copy: the work is saved, or thrown away.
    void clear();

  private:
    QString m_base;
    FileStore& m_store;
    std::unique_ptr<QLockFile> m_lock;
};

// Unsaved work of a session that is not running any more. Holding one keeps other sessions from
// offering it too.
struct AbandonedWork {
    QString copyPath;
    QString originalPath;  // empty: it had never been saved
    QDateTime changedAt;
    std::unique_ptr<QLockFile> lock;

    // The original file's name without its suffix, or "Untitled".
    QString shownName() const;
};

// What crashed sessions left in the folder, latest first; the sessions that still run are left
// alone, and locks without any work are swept away.
std::vector<AbandonedWork> findAbandonedWork(const QString& folder);
void throwAway(AbandonedWork work);

}  // namespace matwright::app
