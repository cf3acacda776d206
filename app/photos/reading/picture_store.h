// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>
#include <list>
#include <unordered_map>

#include "core/content/content_key.h"

namespace matwright::app {

// Pictures in memory, those used longest ago go first. Belongs to one thread.
class PictureStore {
  public:
    explicit PictureStore(qint64 mostBytes) : m_mostBytes(mostBytes) {}

    // Counts as a use. Null where there is none.
    QImage find(const ContentKey& content);
    // Does not.
    QImage look(const ContentKey& content) const;
    // In place of what there was. The one just put stays, whatever its size.
    void put(const ContentKey& content, const QImage& picture);
    void remove(const ContentKey& content);
    qint64 bytes() const { return m_bytes; }
    void clear();

  private:
    struct Kept {
        ContentKey content;
        QImage picture;
    };
    using List = std::list<Kept>;

    qint64 m_mostBytes;
    qint64 m_bytes = 0;
    List m_kept;  // used last first
    std::unordered_map<ContentKey, List::iterator> m_places;
};

}  // namespace matwright::app
