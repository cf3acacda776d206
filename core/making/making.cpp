// SPDX-License-Identifier: MIT
#include "core/making/making.h"

#include <fmt/format.h>

#include <algorithm>
#include <limits>

#include "core/measure/length_text.h"
#include "core/sketch/soundness.h"

namespace matwright {

namespace {

Error fault(std::string sentence, std::string where) {
    return {ErrorCode::Malformed, std::move(sentence), std::move(where)};
}

bool isWord(const std::string& text) {
    return !text.empty() && isValidText(text, false);
}

bool isPhotoSide(int side) {
    return side > 0 && side <= maxPhotoPixelsASide;
}

bool isPrintSide(Length side) {
    return side >= smallestSide && side <= largestSide;
}

std::string photoName(const Photo& photo) {
    return photo.path.substr(photo.path.find_last_of('/') + 1);
}

std::optional<Error> findFaultOfPhotos(const PhotoWork& work) {
    if (work.photos.size() > maxPhotos) {
        return fault(fmt::format("A page holds at most {} photos.", maxPhotos), "");
    }
    for (const auto& [id, photo] : work.photos) {
        if (id.value == 0 || id > maxPhotoId) {
            return fault("A photo needs an id from 1 to 1e9.", photoName(photo));
        }
        if (auto found = findFault(photo)) {
            return found;
        }
    }
    if (work.focal && !work.photos.contains(*work.focal)) {
        return fault("The photo the page is about is not among its photos.", "");
    }
    return std::nullopt;
}

std::optional<Error> findFaultOfPlacements(const Making& making) {
    for (const auto& [id, placement] : making.work.placements) {
        const Piece* slot = find(making.sketch, id);
        if (slot == nullptr) {
            return fault("A photo stands where there is no slot.", "");
        }
        if (auto found = findFault(placement, *slot)) {
            return found;
        }
        if (!making.work.photos.contains(placement.photo)) {
            return fault("The photo in the slot is not among the page's photos.",
                         displayName(*slot));
        }
    }
    return std::nullopt;
}

}  // namespace

PhotoId nextPhotoId(const PhotoWork& work) {
    if (work.photos.empty()) {
        return PhotoId{1};
    }
    const PhotoId largest = work.photos.rbegin()->first;
    if (largest < maxPhotoId) {
        return PhotoId{largest.value + 1};
    }
    PhotoId id{1};
    while (work.photos.contains(id)) {
        ++id.value;
    }
    return id;
}

std::optional<Error> findFault(const Photo& photo) {
    if (!isWord(photo.path) || !isValidText(photo.taken, false)) {
        return fault(
            "A photo's path or time is missing, too long or has characters that cannot be saved.",
            photo.path.empty() ? "" : photoName(photo));
    }
    if (!isPhotoSide(photo.upright.width) || !isPhotoSide(photo.upright.height)) {
        return fault(fmt::format("A photo's sides must be 1 to {} pixels.", maxPhotoPixelsASide),
                     photoName(photo));
    }
    if (photo.bytes > std::numeric_limits<std::int64_t>::max()) {
        return fault("A photo's file is longer than any file can be.", photoName(photo));
    }
    if (photo.rating && (*photo.rating < -1 || *photo.rating > 5)) {
        return fault("A photo's rating must be -1 to 5.", photoName(photo));
    }
    if (photo.wish && (!isPrintSide(photo.wish->width) || !isPrintSide(photo.wish->height))) {
        return fault("A wished print's sides must be between 1/64 in and 200 in.",
                     photoName(photo));
    }
    if (!isSound(photo.tone)) {
        return fault("A photo's brightness, contrast, warmth or other tone is out of range.",
                     photoName(photo));
    }
    return std::nullopt;
}

std::optional<Error> findFault(const std::string& paper, const PaperLook& look) {
    if (!isWord(paper) || !isValidText(look.picture, false)) {
        return fault(
            "A paper's name or the path of its picture is missing, too long or has characters "
            "that cannot be saved.",
            paper);
    }
    if (!look.picture.empty() &&
        (!look.pictureWidth.isPositive() || look.pictureWidth > largestSide)) {
        return fault("What a paper's picture shows must be above zero and at most 200 in wide.",
                     paper);
    }
    if (look.picture.empty() && (!look.pictureWidth.isZero() || look.content != ContentKey())) {
        return fault("A paper without a picture has no width of a picture.", paper);
    }
    return std::nullopt;
}

std::optional<Error> findFault(const Placement& placement, const Piece& slot) {
    if (slot.kind != PieceKind::PhotoSlot) {
        return fault("A photo stands in a piece that is no photo slot.", displayName(slot));
    }
    if (!isSound(placement.crop)) {
        return fault("The crop of the photo is out of range.", displayName(slot));
    }
    if (placement.border.isZero()) {
        return std::nullopt;
    }
    const Length shorter = std::min(slot.size.width, slot.size.height);
    if (placement.border.isNegative() || placement.border > largestSide ||
        shorter - 2 * placement.border < smallestWindow) {
        return fault(
            "The white border must leave at least 1/8 in of the photo; make it narrower or the "
            "slot larger.",
            displayName(slot));
    }
    return std::nullopt;
}

std::optional<Error> findFault(const Making& making) {
    if (auto found = findFault(making.sketch)) {
        return found;
    }
    if (auto found = findFaultOfPhotos(making.work)) {
        return found;
    }
    if (auto found = findFaultOfPlacements(making)) {
        return found;
    }
    if (making.work.papers.size() > maxPapers) {
        return fault(fmt::format("A page holds the looks of at most {} papers.", maxPapers), "");
    }
    for (const auto& [paper, look] : making.work.papers) {
        if (auto found = findFault(paper, look)) {
            return found;
        }
    }
    return std::nullopt;
}

const Photo* find(const PhotoWork& work, PhotoId id) {
    const auto it = work.photos.find(id);
    return it == work.photos.end() ? nullptr : &it->second;
}

const Placement* find(const PhotoWork& work, PieceId slot) {
    const auto it = work.placements.find(slot);
    return it == work.placements.end() ? nullptr : &it->second;
}

Size windowOf(const Piece& slot, Length border) {
    return {slot.size.width - 2 * border, slot.size.height - 2 * border};
}

}  // namespace matwright
