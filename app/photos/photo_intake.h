// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QStringList>
#include <functional>
#include <optional>

#include "app/editing/session.h"
#include "app/photos/photo_access.h"

namespace matwright::app {

// Photos on their way into the tray: files and folders are looked at in the background, and what
// comes back is added to the page in handfuls that are one undo step together.
class PhotoIntake final : public QObject {
    Q_OBJECT

  public:
    // `say` shows one sentence in the status line. All outlive the intake.
    PhotoIntake(Session& session, PhotoAccess& access,
                std::function<void(const QString& sentence)> say, QObject* parent = nullptr);

    // Files and folders. The first photo that is new or known goes into `slot`, where one is named.
    void add(const QStringList& paths, std::optional<PieceId> slot = {});
    // Gives up what is not looked at yet.
    void cancel();
    bool isBusy() const { return m_isBusy; }

  signals:
    // All of an add() are there; what it said.
    void finished(const QString& sentence);

  private:
    // What has come of the files so far.
    struct Tally {
        int added = 0;
        int known = 0;
        int failed = 0;
        QString firstFailure;
        QString firstRemark;
    };
    void listenTo(PhotoService* service);
    void take(const std::vector<LookedAt>& files);
    // Known photos that were missing are where these files are now.
    void meetAgain(const std::vector<Photo>& photos);
    void putIntoWaitingSlot(const ContentKey& content);
    void finish();
    QString sentence() const;

    Session& m_session;
    PhotoAccess& m_access;
    std::function<void(const QString&)> m_say;
    std::optional<PieceId> m_slot;
    QString m_slotSentence;
    Tally m_tally;
    int m_gesture = 0;
    bool m_isBusy = false;
};

}  // namespace matwright::app
