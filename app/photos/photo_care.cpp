// SPDX-License-Identifier: MIT
#include "app/photos/photo_care.h"

#include <QFileInfo>
#include <algorithm>
#include <utility>

namespace matwright::app {

PhotoCare::PhotoCare(Session& session, PhotoAccess& access, std::function<QStringList()> folders,
                     std::function<void(const QString&)> say, QObject* parent)
    : QObject(parent),
      m_session(session),
      m_access(access),
      m_folders(std::move(folders)),
      m_say(std::move(say)),
      m_soon(new QTimer(this)) {
    m_soon->setSingleShot(true);
    m_soon->setInterval(std::chrono::milliseconds(50));
    connect(m_soon, &QTimer::timeout, this, &PhotoCare::searchNearby);
    connect(&session, &Session::changed, this, &PhotoCare::onChange);
    connect(&access, &PhotoAccess::opened, this, &PhotoCare::listenTo);
    if (access.ifOpen()) {
        listenTo(access.ifOpen());
    }
}

void PhotoCare::listenTo(PhotoService* service) {
    connect(service, &PhotoService::stateChanged, this, &PhotoCare::onState);
    connect(service, &PhotoService::found, this,
            [this](const ContentKey& content, const QString& path) {
                for (const auto& [id, photo] : m_session.work().photos) {
                    if (photo.content == content) {
                        m_session.photoFound(PhotoId(id), path.toStdString());
                        break;
                    }
                }
            });
    connect(service, &PhotoService::searchEnded, this,
            [this](int search, int found, bool wasCancelled) {
                const bool wasAskedFor = m_askedFor == search;
                if (wasAskedFor) {
                    m_askedFor.reset();
                }
                if (wasCancelled && wasAskedFor) {
                    m_say(tr("The search for missing photos was stopped."));
                } else if (found > 0) {
                    m_say(found == 1 ? tr("A photo that had moved was found again.")
                                     : tr("%1 photos that had moved were found again.").arg(found));
                } else if (wasAskedFor) {
                    m_say(tr("None of the missing photos was found in that folder."));
                }
            });
}

void PhotoCare::onChange(const Change& change) {
    if (change.kinds == Change::Everything) {
        m_searched.clear();
        m_askedFor.reset();
        lookAgain();
    } else if (change.has(Change::Placements) || change.has(Change::Photos)) {
        showPhotos();
    }
}

void PhotoCare::lookAgain() {
    const auto& photos = m_session.work().photos;
    if (photos.empty() || !m_access.open()) {
        showPhotos();
        return;
    }
    std::vector<WantedPhoto> all;
    all.reserve(photos.size());
    for (const auto& entry : photos) {
        all.push_back(wanted(entry.second));
    }
    m_access.ifOpen()->checkStates(std::move(all));
    showPhotos();
}

void PhotoCare::showPhotos() {
    PhotoService* service = m_access.ifOpen();
    if (!service) {
        return;
    }
    std::map<PhotoId, WantedPhoto> shown;  // each once
    for (const auto& entry : m_session.work().placements) {
        if (const Photo* photo = matwright::find(m_session.work(), entry.second.photo)) {
            shown.emplace(entry.second.photo, wanted(*photo));
        }
    }
    std::vector<WantedPhoto> list;
    list.reserve(shown.size());
    for (auto& entry : shown) {
        list.push_back(std::move(entry.second));
    }
    service->showOnPage(std::move(list));
}

std::vector<WantedPhoto> PhotoCare::missing() const {
    std::vector<WantedPhoto> gone;
    for (const auto& entry : m_session.work().photos) {
        const PhotoState state = m_access.ifOpen()->stateOf(entry.second.content);
        if (state == PhotoState::Missing || state == PhotoState::Changed) {
            gone.push_back(wanted(entry.second));
        }
    }
    return gone;
}

void PhotoCare::onState(const ContentKey& content) {
    const PhotoState state = m_access.ifOpen()->stateOf(content);
    if (state == PhotoState::Missing || state == PhotoState::Changed) {
        m_soon->start();
    }
}

// Where the photos were and where the page is; each photo once, because it reads what lies there.
void PhotoCare::searchNearby() {
    std::vector<WantedPhoto> gone = missing();
    std::erase_if(
        gone, [this](const WantedPhoto& one) { return !m_searched.insert(one.content).second; });
    if (gone.empty()) {
        return;
    }
    std::vector<std::string> folders;
    const auto add = [&folders](const QString& folder) {
        if (!folder.isEmpty() &&
            std::ranges::find(folders, folder.toStdString()) == folders.end()) {
            folders.push_back(folder.toStdString());
        }
    };
    for (const WantedPhoto& photo : gone) {
        add(QFileInfo(QString::fromStdString(photo.path)).path());
    }
    std::ranges::for_each(m_folders(), add);
    m_access.ifOpen()->search(std::move(gone), std::move(folders));
}

bool PhotoCare::searchIn(const QString& folder) {
    std::vector<WantedPhoto> gone = m_access.open() ? missing() : std::vector<WantedPhoto>();
    if (gone.empty()) {
        return false;
    }
    m_askedFor = m_access.ifOpen()->search(std::move(gone), {folder.toStdString()});
    return true;
}

}  // namespace matwright::app
