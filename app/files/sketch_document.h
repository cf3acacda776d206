// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QObject>
#include <QString>
#include <QStringList>

#include "app/editing/session.h"
#include "core/filestore/file_store.h"

namespace matwright::app {

// The file behind a session: where it is, what it is called and whether the disk still holds what
// was read or written last. Asks nobody anything; that is the window's part.
//
// When something fails the session is as it was: open work stays open, unsaved work unsaved.
class SketchDocument final : public QObject {
    Q_OBJECT

  public:
    SketchDocument(Session& session, FileStore& store, QObject* parent = nullptr);

    // Absolute; empty for work that has never been saved.
    const QString& path() const { return m_path; }
    // The file's name without its suffix, or "Untitled".
    QString shownName() const;

    void startNew(Sketch sketch);
    // Gives the warnings of the reader: parts of the file that saving it would lose.
    Result<QStringList> open(const QString& path);
    // Opens the recovery copy of work that belonged to `originalPath` (empty: never saved); it
    // counts as unsaved.
    Result<QStringList> openRecovered(const QString& copyPath, const QString& originalPath);

    // Precondition: path() is not empty.
    Result<void> save() { return saveAs(m_path); }
    // Takes the sketch suffix for granted; see withSketchSuffix.
    Result<void> saveAs(const QString& path);

    // Whether somebody else has changed the file at path() since it was read or written here. A
    // file that has vanished counts as unchanged: saving brings it back.
    bool wasChangedElsewhere() const;

  signals:
    void pathChanged();

  private:
    Result<QStringList> load(const QString& path, QByteArray& fingerprint);
    void belongTo(const QString& path, QByteArray fingerprint);

    Session& m_session;
    FileStore& m_store;
    QString m_path;
    QByteArray m_fingerprint;  // of the bytes at m_path as this program last knew them
};

}  // namespace matwright::app
