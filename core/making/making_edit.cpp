// SPDX-License-Identifier: MIT
#include "core/making/making_edit.h"

#include <fmt/format.h>

#include <utility>

namespace matwright {

namespace {

Error badEdit(const Error& fault) {
    return {ErrorCode::BadEdit, fault.sentence, fault.where};
}

Error badEdit(std::string sentence) {
    return {ErrorCode::BadEdit, std::move(sentence), ""};
}

// What a thing is after the edit: from the edit where it is mentioned, else from what is there.
template <typename Key, typename Value>
const Value* after(const std::map<Key, Value>& now, const std::map<Key, std::optional<Value>>& edit,
                   const Key& key) {
    if (const auto it = edit.find(key); it != edit.end()) {
        return it->second ? &*it->second : nullptr;
    }
    const auto it = now.find(key);
    return it == now.end() ? nullptr : &it->second;
}

template <typename Key, typename Value>
std::size_t countAfter(const std::map<Key, Value>& now,
                       const std::map<Key, std::optional<Value>>& edit) {
    std::size_t count = now.size();
    for (const auto& [key, value] : edit) {
        count += (value ? 1U : 0U);
        count -= (now.contains(key) ? 1U : 0U);
    }
    return count;
}

template <typename Key, typename Value>
std::map<Key, std::optional<Value>> exchanged(std::map<Key, Value>& now,
                                              const std::map<Key, std::optional<Value>>& edit) {
    std::map<Key, std::optional<Value>> before;
    for (const auto& [key, value] : edit) {
        const auto it = now.find(key);
        before.emplace(key, it == now.end() ? std::nullopt : std::optional(std::move(it->second)));
        if (value) {
            now.insert_or_assign(key, *value);
        } else if (it != now.end()) {
            now.erase(it);
        }
    }
    return before;
}

// An edit of a page as it will be done: what follows from it has been added.
class Change {
  public:
    Change(const Making& making, const PageEdit& edit)
        : m_making(making), m_edit(edit), m_photos(edit.photos) {
        for (const auto& [slot, placement] : making.work.placements) {
            if (!isSlot(slot) || !photoOf(placement.photo)) {
                m_photos.placements.try_emplace(slot, std::nullopt);
            }
        }
        if (!m_photos.focal && making.work.focal && !photoOf(*making.work.focal)) {
            m_photos.focal.emplace(std::nullopt);
        }
    }

    const PhotoEdit& photos() const { return m_photos; }

    std::optional<Error> findFault() const {
        if (auto fault = findFaultOfPhotos()) {
            return fault;
        }
        if (auto fault = findFaultOfPapers()) {
            return fault;
        }
        for (const auto& [slot, placement] : m_photos.placements) {
            if (auto fault = placement ? findFaultAt(slot, *placement) : std::nullopt) {
                return fault;
            }
        }
        for (const auto& [slot, piece] : m_edit.sketch.pieces) {
            const Placement* placement = matwright::find(m_making.work, slot);
            if (placement == nullptr || m_photos.placements.contains(slot)) {
                continue;
            }
            if (auto fault = findFaultAt(slot, *placement)) {
                return fault;
            }
        }
        return std::nullopt;
    }

  private:
    const Piece* pieceOf(PieceId id) const {
        return after(m_making.sketch.pieces, m_edit.sketch.pieces, id);
    }
    const Photo* photoOf(PhotoId id) const {
        return after(m_making.work.photos, m_edit.photos.photos, id);
    }
    bool isSlot(PieceId id) const {
        const Piece* piece = pieceOf(id);
        return piece != nullptr && piece->kind == PieceKind::PhotoSlot;
    }

    std::optional<Error> findFaultOfPhotos() const {
        for (const auto& [id, photo] : m_photos.photos) {
            if (id.value == 0 || id > maxPhotoId) {
                return badEdit("A photo needs an id from 1 to 1e9.");
            }
            if (auto fault = photo ? matwright::findFault(*photo) : std::nullopt) {
                return badEdit(*fault);
            }
        }
        if (countAfter(m_making.work.photos, m_photos.photos) > maxPhotos) {
            return badEdit(
                fmt::format("A page holds at most {} photos; take some out first.", maxPhotos));
        }
        if (m_photos.focal && *m_photos.focal && !photoOf(**m_photos.focal)) {
            return badEdit("The photo the page is about must be one of its photos.");
        }
        return std::nullopt;
    }

    std::optional<Error> findFaultOfPapers() const {
        for (const auto& [paper, look] : m_photos.papers) {
            if (auto fault = look ? matwright::findFault(paper, *look) : std::nullopt) {
                return badEdit(*fault);
            }
        }
        if (countAfter(m_making.work.papers, m_photos.papers) > maxPapers) {
            return badEdit(fmt::format("A page holds the looks of at most {} papers.", maxPapers));
        }
        return std::nullopt;
    }

    std::optional<Error> findFaultAt(PieceId slot, const Placement& placement) const {
        const Piece* piece = pieceOf(slot);
        if (piece == nullptr) {
            return badEdit("A photo can only be put into a slot of the page.");
        }
        if (auto fault = matwright::findFault(placement, *piece)) {
            return badEdit(*fault);
        }
        if (photoOf(placement.photo) == nullptr) {
            return badEdit("Only a photo in the page's tray can be put into a slot.");
        }
        return std::nullopt;
    }

    const Making& m_making;
    const PageEdit& m_edit;
    PhotoEdit m_photos;
};

template <typename Map>
void overlay(Map& first, const Map& second) {
    for (const auto& [key, value] : second) {
        first.insert_or_assign(key, value);
    }
}

}  // namespace

Result<PageEdit> apply(Making& making, const PageEdit& edit) {
    const Change change(making, edit);
    if (auto fault = change.findFault()) {
        return std::unexpected(std::move(*fault));
    }
    auto sketchInverse = apply(making.sketch, edit.sketch);
    if (!sketchInverse) {
        return std::unexpected(std::move(sketchInverse.error()));
    }
    PageEdit inverse;
    inverse.sketch = std::move(*sketchInverse);
    const PhotoEdit& photos = change.photos();
    inverse.photos.photos = exchanged(making.work.photos, photos.photos);
    inverse.photos.placements = exchanged(making.work.placements, photos.placements);
    inverse.photos.papers = exchanged(making.work.papers, photos.papers);
    if (photos.focal) {
        inverse.photos.focal = std::exchange(making.work.focal, *photos.focal);
    }
    return inverse;
}

PageEdit merged(PageEdit first, const PageEdit& second) {
    first.sketch = merged(std::move(first.sketch), second.sketch);
    overlay(first.photos.photos, second.photos.photos);
    overlay(first.photos.placements, second.photos.placements);
    overlay(first.photos.papers, second.photos.papers);
    if (second.photos.focal) {
        first.photos.focal = second.photos.focal;
    }
    return first;
}

}  // namespace matwright
