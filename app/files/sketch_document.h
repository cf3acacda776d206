// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <optional>
#include <utility>

#include "app/editing/session.h"
#include "app/files/kept_pictures.h"
#include "app/files/paths.h"
#include "core/filestore/file_store.h"
#include "core/library/saving.h"

namespace matwright::app {

// The file behind a session: where it is, what it is called and what it held when it was read or
// written last. Asks nobody anything; that is the window's part.
//
// A sketch is saved as NAME.sketch.svg. As soon as there are photos or papers with it, it is a page
// in the making, and that is a file of its own, NAME.page.svg; the sketch's file stays as it was.
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

    // A page where there are photos or papers, or where the file is a page's.
    DocumentKind kind() const;
    // The work has to be saved under a new name: it has none, or it is a page now and the file is a
    // sketch's.
    bool needsName() const;

    // Where the small pictures of a page file come from; what it gives empty, and where it is not
    // set, is taken from the file as it was. Called while saving.
    void setPictures(SmallPictures pictures) { m_pictures = std::move(pictures); }
    // The small pictures of the open file that still show what is in their slots.
    const KeptPictures& keptPictures() const { return m_kept; }

    // Where photos that are looked for beside the opened page lay when it was saved, in case they
    // have stayed there.
    const QStringList& foldersOfOld() const { return m_elsewhere; }

    void startNew(Sketch sketch);
    // Gives the warnings of the reader: parts of the file that saving it would lose.
    Result<QStringList> open(const QString& path);
    // Opens the recovery copy of work that belonged to `originalPath` (empty: never saved); it
    // counts as unsaved.
    Result<QStringList> openRecovered(const QString& copyPath, const QString& originalPath);

    // Gives what is worth saying (see SavedSketch). Precondition: needsName() is false.
    Result<SavedSketch> save();
    // Under this path, in place of a file that is there now: ask before. Takes the suffix of
    // kind() for granted; see withSuffix. The path of the open file is save().
    Result<SavedSketch> saveAs(const QString& path);

  signals:
    void pathChanged();

  private:
    struct Loaded {
        QStringList warnings;
        ContentKey content;
    };
    Result<Loaded> load(const QString& path);
    Result<std::string> bytesFor(const QString& path, std::map<PieceId, std::string>& pictures);
    Result<SavedSketch> saveOver(const QString& path, std::optional<ContentKey> content);
    void belongTo(const QString& path, std::optional<ContentKey> content);

    Session& m_session;
    FileStore& m_store;
    QString m_path;
    // What the file at m_path held as this program last knew it.
    std::optional<ContentKey> m_content;
    SmallPictures m_pictures;
    KeptPictures m_kept;
    QStringList m_elsewhere;
};

}  // namespace matwright::app
