// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <chrono>

#include "app/editing/session.h"
#include "app/files/recovery.h"
#include "app/files/sketch_document.h"

namespace matwright::app {

// Keeps a copy of unsaved work in the recovery folder: soon after the last change, at most so often
// while changes keep coming, and none at all once the work is saved. The work is copied on the
// calling thread and written on another one, so that a slow disk never holds up a drag.
class Autosave final : public QObject {
    Q_OBJECT

  public:
    struct Pace {
        std::chrono::milliseconds afterLastChange{2'000};
        std::chrono::milliseconds atMostEvery{10'000};
    };

    Autosave(Session& session, const SketchDocument& document, RecoveryPlace& place)
        : Autosave(session, document, place, Pace()) {}
    Autosave(Session& session, const SketchDocument& document, RecoveryPlace& place, Pace pace);
    // Waits for a write that is under way; leaves the copy.
    ~Autosave() override;

    // Writes the unsaved work now and waits until it is on the disk.
    Result<void> writeNow();
    // The work is given up by the person: removes the copy.
    void discard();

  signals:
    // The copy could not be written, so unsaved work is not kept safe; told once, until
    // safeAgain().
    void failed(const QString& sentence);
    // After failed(): a copy was written, or there is no unsaved work any more.
    void safeAgain();

  private:
    void noteChange(const Change& change);
    UnsavedWork workNow() const;
    void startWriting();
    void finishWriting(const Result<void>& written);
    void beSafe();

    Session& m_session;
    const SketchDocument& m_document;
    RecoveryPlace& m_place;
    QTimer m_quiet;   // runs out some time after the last change
    QTimer m_latest;  // runs out some time after the first change that is not written yet
    QThreadPool m_writer;
    bool m_hasFailed = false;
};

}  // namespace matwright::app
