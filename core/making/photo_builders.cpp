// SPDX-License-Identifier: MIT
#include <algorithm>
#include <set>

#include "core/making/fold.h"
#include "core/making/making_edit.h"

namespace matwright {

namespace {

const Piece* slotOf(const Making& making, PieceId id) {
    const Piece* piece = find(making.sketch, id);
    return piece != nullptr && piece->kind == PieceKind::PhotoSlot ? piece : nullptr;
}

bool areAlike(Size a, Size b) {
    return a.width.ticks() * b.height.ticks() == b.width.ticks() * a.height.ticks();
}

// What stands in `slot` with this border when it comes with a crop for the window `from`.
Placement movedTo(const Making& making, const Piece& slot, Length border,
                  const Placement& placement, Size from) {
    const Size window = shownWindow(slot, border, making.sketch.page);
    const PixelSize upright = making.work.photos.at(placement.photo).upright;
    return {placement.photo,
            areAlike(from, window) ? placement.crop : startingCrop(upright, window), border};
}

Length borderFor(const Placement* there, const Placement& coming, const Piece& slot) {
    if (there != nullptr) {
        return there->border;
    }
    return findFault(coming, slot) ? Length() : coming.border;
}

}  // namespace

PhotoEdit addPhotos(const PhotoWork& work, std::span<const Photo> photos) {
    std::set<ContentKey> known;
    for (const auto& [id, photo] : work.photos) {
        known.insert(photo.content);
    }
    PhotoEdit edit;
    PhotoId id = nextPhotoId(work);
    for (const Photo& photo : photos) {
        if (!known.insert(photo.content).second) {
            continue;
        }
        while (work.photos.contains(id) || edit.photos.contains(id)) {
            id.value = id < maxPhotoId ? id.value + 1 : 1;
        }
        edit.photos.emplace(id, photo);
    }
    return edit;
}

PhotoEdit removePhotos(const PhotoWork& work, std::span<const PhotoId> ids) {
    PhotoEdit edit;
    for (const PhotoId id : ids) {
        if (work.photos.contains(id)) {
            edit.photos.emplace(id, std::nullopt);
        }
    }
    return edit;
}

PhotoEdit placePhoto(const Making& making, PieceId slot, PhotoId photo) {
    PhotoEdit edit;
    const Piece* piece = slotOf(making, slot);
    const Photo* coming = find(making.work, photo);
    if (piece == nullptr || coming == nullptr) {
        return edit;
    }
    const Placement* there = find(making.work, slot);
    const Length border = there == nullptr ? Length() : there->border;
    edit.placements.emplace(
        slot,
        Placement{photo,
                  startingCrop(coming->upright, shownWindow(*piece, border, making.sketch.page)),
                  border});
    return edit;
}

PhotoEdit takeOut(PieceId slot) {
    PhotoEdit edit;
    edit.placements.emplace(slot, std::nullopt);
    return edit;
}

PhotoEdit swapPhotos(const Making& making, PieceId a, PieceId b) {
    PhotoEdit edit;
    const Piece* slots[] = {slotOf(making, a), slotOf(making, b)};
    if (a == b || slots[0] == nullptr || slots[1] == nullptr) {
        return edit;
    }
    const Placement* there[] = {find(making.work, a), find(making.work, b)};
    const PieceId ids[] = {a, b};
    for (std::size_t i = 0; i < 2; ++i) {
        const std::size_t other = 1 - i;
        if (there[i] == nullptr && there[other] == nullptr) {
            continue;
        }
        std::optional<Placement>& now = edit.placements[ids[i]];
        if (const Placement* coming = there[other]) {
            now = movedTo(making, *slots[i], borderFor(there[i], *coming, *slots[i]), *coming,
                          shownWindow(*slots[other], coming->border, making.sketch.page));
        }
    }
    return edit;
}

}  // namespace matwright
