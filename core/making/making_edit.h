// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "core/making/making.h"
#include "core/sketch/edit.h"

namespace matwright {

// A change of the photo part as data: what each touched thing is afterwards; nothing = taken away.
struct PhotoEdit {
    std::map<PhotoId, std::optional<Photo>> photos;
    std::map<PieceId, std::optional<Placement>> placements;
    std::map<std::string, std::optional<PaperLook>> papers;
    std::optional<std::optional<PhotoId>> focal;

    bool isEmpty() const {
        return photos.empty() && placements.empty() && papers.empty() && !focal;
    }
    friend bool operator==(const PhotoEdit&, const PhotoEdit&) = default;
};

// A change of the whole page.
struct PageEdit {
    Edit sketch;
    PhotoEdit photos;
    bool isEmpty() const { return sketch.isEmpty() && photos.isEmpty(); }
    friend bool operator==(const PageEdit&, const PageEdit&) = default;
};

// All of it or, on error (BadEdit), nothing; returns the inverse. A slot that goes, or is a slot no
// more, loses its placement, and a photo that goes leaves its slots and the focal mark; the inverse
// brings them back. A slot that changes its size keeps the crop as it is; one that would grow too
// small for its white border is refused. Only what the edit touches is checked anew.
Result<PageEdit> apply(Making& making, const PageEdit& edit);
// One edit with the effect of `first` then `second`, for edits that apply() returned.
PageEdit merged(PageEdit first, const PageEdit& second);

// Builders. They need no checking of their own: apply() does that. Ids that are not there are
// passed over.

// Photos that are not in the tray yet, by content; with new ids, in their order.
PhotoEdit addPhotos(const PhotoWork& work, std::span<const Photo> photos);
PhotoEdit removePhotos(const PhotoWork& work, std::span<const PhotoId> ids);
// Into the slot with its starting crop and the white border the slot had; a photo that was in the
// slot goes back to the tray. A photo may stand in several slots.
PhotoEdit placePhoto(const Making& making, PieceId slot, PhotoId photo);
PhotoEdit takeOut(PieceId slot);
// Photos change places, each with a crop that fits its new window (the same one where the ratios
// are equal, else a starting crop). White borders stay with the slots; to an empty slot the border
// goes along where it leaves enough.
PhotoEdit swapPhotos(const Making& making, PieceId a, PieceId b);
// Every free slot gets a photo that is in no slot yet, as long as there are any: first those whose
// wish is the slot's print size, then the focal photo into the largest slot, then upright photos
// into upright slots and lying ones into lying slots, then whatever is left. Photos go in order of
// capture time (those without one last), slots as one reads: left page first, from the top, from
// the left. Says nothing of photos that are left.
PhotoEdit fillFreeSlots(const Making& making);

}  // namespace matwright
