// SPDX-License-Identifier: MIT
#include "app/photos/reading/picture_store.h"

namespace matwright::app {

QImage PictureStore::find(const ContentKey& content) {
    const auto place = m_places.find(content);
    if (place == m_places.end()) {
        return {};
    }
    m_kept.splice(m_kept.begin(), m_kept, place->second);
    return place->second->picture;
}

QImage PictureStore::look(const ContentKey& content) const {
    const auto place = m_places.find(content);
    return place == m_places.end() ? QImage() : place->second->picture;
}

void PictureStore::put(const ContentKey& content, const QImage& picture) {
    remove(content);
    m_kept.push_front({content, picture});
    m_places[content] = m_kept.begin();
    m_bytes += picture.sizeInBytes();
    while (m_bytes > m_mostBytes && m_kept.size() > 1) {
        remove(ContentKey(m_kept.back().content));
    }
}

void PictureStore::remove(const ContentKey& content) {
    const auto place = m_places.find(content);
    if (place == m_places.end()) {
        return;
    }
    m_bytes -= place->second->picture.sizeInBytes();
    m_kept.erase(place->second);
    m_places.erase(place);
}

void PictureStore::clear() {
    m_kept.clear();
    m_places.clear();
    m_bytes = 0;
}

}  // namespace matwright::app
