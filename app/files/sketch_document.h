// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <optional>

#include "app/editing/session.h"
#include "core/filestore/file_store.h"
#include "core/library/saving.h"

namespace matwright::app {

// The file behind a session: where it is, what it is called and what it held when it was read or
// written last. Asks nobody anything; that is the window's part.
//
// No save overwrites what somebody else has written meanwhile: then the work goes beside it under a
// free name, and is that file from now on.
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

    // Gives what is worth saying (see SavedSketch). Precondition: path() is not empty.
    Result<SavedSketch> save();
    // Under this path, in place of a file that is there now: ask before. Takes the sketch suffix
    // for granted; see withSketchSuffix. The path of the open file is save().
    Result<SavedSketch> saveAs(const QString& path);

  signals:
    void pathChanged();

  private:
    struct Loaded {
        QStringList warnings;
        ContentKey content;
    };
    Result<Loaded> load(const QString& path);
    Result<SavedSketch> saveOver(const QString& path, std::optional<ContentKey> content);
    void belongTo(const QString& path, std::optional<ContentKey> content);

    Session& m_session;
    FileStore& m_store;
    QString m_path;
    // What the file at m_path held as this program last knew it.
    std::optional<ContentKey> m_content;
};

}  // namespace matwright::app
