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
    for (const int search : std::exchange(m_openSearches, {})) {
        emit searchEnded(search, 0, true);
    }
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
    std::string key;  // only the very same question need not be asked twice
    for (const WantedPhoto& photo : photos) {
        key += photo.content.text() + photo.path + '/';
    }
    m_jobs.add(Urgency::State, key,
               [this, photos = std::move(photos)](const std::stop_token& stop) {
                   std::vector<std::pair<PhotoState, FileStamp>> states;
                   for (const WantedPhoto& photo : photos) {
                       if (stop.stop_requested()) {
                           return;
                       }
                       states.emplace_back(stateOnDisk(photo.path), stampOf(photo.path));
                   }
                   later([this, photos, states] {
                       for (std::size_t i = 0; i < states.size(); ++i) {
                           takeState(photos[i], states[i].first, states[i].second);
                       }
                   });
               });
}

// What was found when the photo was read says more than that it is there, until the file is written
// to; then it is read again.
void PhotoReader::takeState(const WantedPhoto& photo, PhotoState state, const FileStamp& stamp) {
    const Condition known = m_conditions[photo.content];
    const bool saysMore = known.state == PhotoState::Changed || known.state == PhotoState::Broken;
    const bool isTouched = known.stamp != stamp;
    if (state == PhotoState::There && saysMore && !isTouched) {
        return;
    }
    setState(photo.content, state, {});
    const bool wasRead = known.stamp != FileStamp{} || known.state == PhotoState::Missing;
    if (state == PhotoState::There && wasRead && isTouched) {
        readAgain(photo);
    }
}

void PhotoReader::readAgain(const WantedPhoto& photo) {
    if (std::ranges::find(m_onPage, photo.content, &WantedPhoto::content) != m_onPage.end()) {
        const int side = sideFor(m_onPage.size(), m_pageBytes);
        m_coming[photo.content.text()] = side;
        fetchCopy(photo, side, Urgency::Page);
    } else if (m_thumbnails.look(photo.content).isNull()) {
        fetchThumbnail(photo, Urgency::Visible);
    }
}

int PhotoReader::search(std::vector<WantedPhoto> photos, std::vector<std::string> folders) {
    const int number = ++m_searches;
    m_openSearches.insert(number);
    m_jobs.add(Urgency::Search, std::to_string(number),
               [this, number, photos = std::move(photos),
                folders = std::move(folders)](const std::stop_token& stop) {
                   const auto places = foundAgain(photos, folders, stop);
                   later([this, number, places] {
                       for (const auto& [content, path] : places) {
                           setState(content, PhotoState::There, {});
                           emit found(content, QString::fromStdString(path));
                       }
                       if (m_openSearches.erase(number) > 0) {
                           emit searchEnded(number, static_cast<int>(places.size()), false);
                       }
                   });
               });
    return number;
}

}  // namespace matwright::app
