// SPDX-License-Identifier: MIT
#include <algorithm>
#include <functional>
#include <set>
#include <tuple>

#include "core/making/making_edit.h"

namespace matwright {

namespace {

struct FreeSlot {
    PieceId id;
    const Piece* piece;
};

enum class Lie { Upright, Lying, Square };

template <typename SizeLike>
Lie lieOf(const SizeLike& size) {
    if (size.width == size.height) {
        return Lie::Square;
    }
    return size.height > size.width ? Lie::Upright : Lie::Lying;
}

Lie lieOf(const FreeSlot& slot) {
    return lieOf(slot.piece->size);
}

double areaOf(const FreeSlot& slot) {
    return slot.piece->size.width.toInches() * slot.piece->size.height.toInches();
}

// As one reads: left page first, from the top, from the left.
std::vector<FreeSlot> freeSlots(const Making& making) {
    const std::vector<Rect> onPages = pages(making.sketch.page);
    std::vector<std::pair<std::tuple<std::size_t, Length, Length>, FreeSlot>> keyed;
    for (const PieceId id : making.sketch.order) {
        const Piece& piece = making.sketch.pieces.at(id);
        if (piece.kind == PieceKind::PhotoSlot && !making.work.placements.contains(id)) {
            const Rect bounds = trimBounds(piece);
            keyed.push_back(
                {{pageOf(onPages, bounds.left()), bounds.top(), bounds.left()}, {id, &piece}});
        }
    }
    std::ranges::stable_sort(keyed, {}, [](const auto& entry) { return entry.first; });
    std::vector<FreeSlot> slots;
    slots.reserve(keyed.size());
    for (const auto& [key, slot] : keyed) {
        slots.push_back(slot);
    }
    return slots;
}

std::vector<PhotoId> freePhotos(const PhotoWork& work) {
    std::set<PhotoId> placed;
    for (const auto& [slot, placement] : work.placements) {
        placed.insert(placement.photo);
    }
    std::vector<PhotoId> photos;
    for (const auto& [id, photo] : work.photos) {
        if (!placed.contains(id)) {
            photos.push_back(id);
        }
    }
    std::ranges::stable_sort(photos, {}, [&](PhotoId id) {
        const std::string& taken = work.photos.at(id).taken;
        return std::pair(taken.empty(), taken);
    });
    return photos;
}

class Filling {
  public:
    explicit Filling(const Making& making)
        : m_making(making), m_slots(freeSlots(making)), m_photos(freePhotos(making.work)) {}

    PhotoEdit take() {
        fillWishes();
        fillFocal();
        fillEach([](Lie slot, Lie photo) { return slot == photo; });
        // A square one suits either way better than the wrong way round.
        fillEach([](Lie slot, Lie photo) { return slot == Lie::Square || photo == Lie::Square; });
        fillEach([](Lie, Lie) { return true; });
        return std::move(m_edit);
    }

  private:
    const Photo& photoOf(PhotoId id) const { return m_making.work.photos.at(id); }

    void put(std::vector<FreeSlot>::iterator slot, PhotoId photo) {
        m_edit.placements.merge(placePhoto(m_making, slot->id, photo).placements);
        m_slots.erase(slot);
        std::erase(m_photos, photo);
    }

    // Of several slots of that size one that lies as the photo does.
    void fillWishes() {
        for (const PhotoId id : std::vector(m_photos)) {
            const Photo& photo = photoOf(id);
            const auto isWished = [&](const FreeSlot& slot) {
                const auto print = slot.piece->printSize;
                return photo.wish && print &&
                       (*print == *photo.wish || print->turned() == *photo.wish);
            };
            auto slot = std::ranges::find_if(m_slots, [&](const FreeSlot& candidate) {
                return isWished(candidate) && lieOf(candidate) == lieOf(photo.upright);
            });
            if (slot == m_slots.end()) {
                slot = std::ranges::find_if(m_slots, isWished);
            }
            if (slot != m_slots.end()) {
                put(slot, id);
            }
        }
    }

    void fillFocal() {
        const auto focal = m_making.work.focal;
        if (focal && std::ranges::find(m_photos, *focal) != m_photos.end() && !m_slots.empty()) {
            put(std::ranges::max_element(m_slots, {}, areaOf), *focal);
        }
    }

    void fillEach(const std::function<bool(Lie slot, Lie photo)>& suits) {
        for (const PhotoId id : std::vector(m_photos)) {
            const Lie lie = lieOf(photoOf(id).upright);
            const auto slot = std::ranges::find_if(
                m_slots, [&](const FreeSlot& candidate) { return suits(lieOf(candidate), lie); });
            if (slot != m_slots.end()) {
                put(slot, id);
            }
        }
    }

    const Making& m_making;
    std::vector<FreeSlot> m_slots;
    std::vector<PhotoId> m_photos;  // that are in no slot yet
    PhotoEdit m_edit;
};

}  // namespace

PhotoEdit fillFreeSlots(const Making& making) {
    return Filling(making).take();
}

}  // namespace matwright
