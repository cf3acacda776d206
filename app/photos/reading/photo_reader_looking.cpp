// SPDX-License-Identifier: MIT
// What PhotoReader does for the tray: files and folders are looked at, missing photos are found.
#include <algorithm>
#include <utility>

#include "app/photos/reading/photo_reader.h"

namespace matwright::app {

void PhotoReader::lookAt(std::vector<std::string> paths) {
    for (const std::string& path : paths) {
        ++m_toLookAt;
        ++m_total;
        const auto work = [this, path, round = m_round](const std::stop_token& stop) {
            if (!isFolder(path)) {
                later([this, round, file = lookedAtFile(path)] { takeLookedAt(round, file); });
                return;
            }
            later([this, round, files = photosIn(path, maxPhotos, stop)] {
                takeFolder(round, files);
            });
        };
        m_jobs.add(Urgency::LookAt, std::to_string(m_total) + path, work);
    }
    advance(0);
}

void PhotoReader::takeFolder(int round, std::vector<std::string> files) {
    if (round != m_round) {
        return;  // cancelled meanwhile
    }
    lookAt(std::move(files));
    --m_toLookAt;  // the folder itself
    advance(1);
    m_tell.start();
}

void PhotoReader::takeLookedAt(int round, LookedAt file) {
    if (round != m_round) {
        return;
    }
    --m_toLookAt;
    m_looked.push_back(std::move(file));
    advance(1);
    if (!m_tell.isActive()) {
        m_tell.start();
    }
}

void PhotoReader::tellLookedAt() {
    if (!m_looked.empty()) {
        emit lookedAt(std::exchange(m_looked, {}));
    }
    if (m_toLookAt == 0 && !m_tell.isActive()) {
        emit lookedAtAll();
    }
}

// What runs is told to stop; its answer belongs to an earlier round and is passed over.
void PhotoReader::cancel() {
    ++m_round;
    m_jobs.drop(Urgency::LookAt);
    m_jobs.drop(Urgency::Background);
    m_jobs.drop(Urgency::Search);
    m_done = 0;
    m_total = 0;
    emit progressed(0, 0);
    if (std::exchange(m_toLookAt, 0) > 0) {
        m_tell.stop();
        tellLookedAt();
    }
}

void PhotoReader::advance(int done) {
    if (m_total == 0) {
        return;
    }
    m_done += done;
    if (m_done >= m_total) {
        m_done = 0;
        m_total = 0;
    }
    emit progressed(m_done, m_total);
}

void PhotoReader::checkStates(std::vector<WantedPhoto> photos) {
    m_jobs.drop(Urgency::State);
    m_jobs.add(Urgency::State, {}, [this, photos = std::move(photos)](const std::stop_token& stop) {
        std::vector<std::pair<ContentKey, PhotoState>> states;
        for (const WantedPhoto& photo : photos) {
            if (stop.stop_requested()) {
                return;
            }
            states.emplace_back(photo.content, stateOnDisk(photo.path));
        }
        later([this, states] {
            for (const auto& [content, state] : states) {
                const PhotoState known = stateOf(content);
                const bool saysMore = known == PhotoState::Changed || known == PhotoState::Broken;
                if (state == PhotoState::Missing || !saysMore) {
                    setState(content, state, {});
                }
            }
        });
    });
}

void PhotoReader::search(std::vector<WantedPhoto> photos, std::vector<std::string> folders) {
    // Only the very same search need not be done twice.
    std::string key;
    for (const WantedPhoto& photo : photos) {
        key += photo.content.text();
    }
    for (const std::string& folder : folders) {
        key += '/' + folder;
    }
    m_jobs.add(Urgency::Search, key,
               [this, photos = std::move(photos),
                folders = std::move(folders)](const std::stop_token& stop) {
                   const auto places = foundAgain(photos, folders, stop);
                   later([this, places] {
                       for (const auto& [content, path] : places) {
                           setState(content, PhotoState::There, {});
                           emit found(content, QString::fromStdString(path));
                       }
                       emit searchEnded(static_cast<int>(places.size()));
                   });
               });
}

}  // namespace matwright::app
