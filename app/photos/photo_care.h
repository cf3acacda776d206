// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <QTimer>
#include <functional>
#include <optional>
#include <set>

#include "app/editing/session.h"
#include "app/photos/photo_access.h"

namespace matwright::app {

// Keeps the photo service and the open page together: what the page shows is decoded, whether its
// photos are still where they were is looked up, and those that have moved are found again by what
// they hold. The part is opened when a page with photos is.
class PhotoCare final : public QObject {
    Q_OBJECT

  public:
    // `folders` gives where moved photos are looked for too: where the page's file is.
    PhotoCare(Session& session, PhotoAccess& access, std::function<QStringList()> folders,
              std::function<void(const QString& sentence)> say, QObject* parent = nullptr);

    // Looks again whether the photos are there: a drive may have been plugged in.
    void lookAgain();
    // Looks for everything that is missing in this folder and below it. False where nothing is
    // known to be missing.
    bool searchIn(const QString& folder);

  private:
    void onChange(const Change& change);
    void listenTo(PhotoService* service);
    void showPhotos();
    void onState(const ContentKey& content);
    void searchNearby();
    std::vector<WantedPhoto> missing() const;

    Session& m_session;
    PhotoAccess& m_access;
    std::function<QStringList()> m_folders;
    std::function<void(const QString&)> m_say;
    std::set<ContentKey> m_searched;  // nearby, once for each document
    QTimer* m_soon;
    std::optional<int> m_askedFor;  // the search that a person waits for
};

}  // namespace matwright::app
