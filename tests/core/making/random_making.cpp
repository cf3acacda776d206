// SPDX-License-Identifier: MIT
#include "tests/core/making/random_making.h"

#include <fmt/format.h>

namespace matwright::test {

namespace {

bool oneIn(Random& random, std::uint64_t count) {
    return below(random, count) == 0;
}

ContentKey randomContent(Random& random) {
    ContentKey key;
    for (std::uint8_t& byte : key.bytes) {
        byte = static_cast<std::uint8_t>(below(random, 256));
    }
    return key;
}

std::string randomPath(Random& random) {
    constexpr const char* names[] = {"IMG 0007.jpg", "a&b <c> \"d\".png", "Größe – “ö”.heic",
                                     "日本.webp",    "'quoted'.tif",      "  spaces  .jpg"};
    constexpr const char* folders[] = {"/photos", "/home/somebody/Pictures/2026", "/mnt/a b"};
    return fmt::format("{}/{}/{}", folders[below(random, 3)], below(random, 1000),
                       names[below(random, std::size(names))]);
}

Crop randomCrop(Random& random) {
    Crop crop;
    if (!oneIn(random, 4)) {
        crop.centreX = within(random, 0, Crop::one);
        crop.centreY = within(random, 0, Crop::one);
        crop.zoom = within(random, Crop::one, Crop::largestZoom);
        crop.quarterTurns = within(random, 0, 3);
        crop.straighten = Angle::millidegrees(within(random, -45'000, 45'000));
    }
    return crop;
}

Tone randomTone(Random& random) {
    if (oneIn(random, 2)) {
        return {};
    }
    const auto slider = [&] { return within(random, -100, 100); };
    return {oneIn(random, 2), slider(), slider(), slider(), slider(), within(random, 0, 100)};
}

PaperLook randomLook(Random& random) {
    PaperLook look;
    look.colour = {static_cast<std::uint8_t>(below(random, 256)),
                   static_cast<std::uint8_t>(below(random, 256)),
                   static_cast<std::uint8_t>(below(random, 256))};
    if (oneIn(random, 2)) {
        look.picture = randomPath(random);
        look.content = randomContent(random);
        look.pictureWidth = Length::fromTicks(within(random, 1, 100'000'000));
    }
    return look;
}

std::string randomPaper(Random& random) {
    constexpr const char* words[] = {"kraft", "patterned, 6 x 12", "white <cardstock>", "“ivory”"};
    return words[below(random, std::size(words))];
}

Placement randomPlacement(Random& random, PhotoId photo, const Piece& slot) {
    Placement placement{photo, randomCrop(random), {}};
    const Length room = std::min(slot.size.width, slot.size.height) - smallestWindow;
    if (room.isPositive() && oneIn(random, 2)) {
        placement.border = room.scaledRounded(within(random, 0, 100), 200);
    }
    return findFault(placement, slot) ? Placement{photo, placement.crop, {}} : placement;
}

std::vector<PieceId> slotsOf(const Sketch& sketch) {
    std::vector<PieceId> slots;
    for (const auto& [id, piece] : sketch.pieces) {
        if (piece.kind == PieceKind::PhotoSlot) {
            slots.push_back(id);
        }
    }
    return slots;
}

template <typename Key, typename Value>
Key anyKey(Random& random, const std::map<Key, Value>& map) {
    return std::next(map.begin(), static_cast<std::ptrdiff_t>(below(random, map.size())))->first;
}

void changePhotos(Random& random, const Making& making, PhotoEdit& edit) {
    const PhotoWork& work = making.work;
    if (oneIn(random, 2)) {
        const std::vector<Photo> added{randomPhoto(random), randomPhoto(random)};
        edit = addPhotos(work, added);
    } else if (!work.photos.empty() && oneIn(random, 2)) {
        const PhotoId id = anyKey(random, work.photos);
        edit.photos[id] = oneIn(random, 3) ? std::nullopt : std::optional(randomPhoto(random));
    }
}

// The photos that are there after the edit so far.
std::vector<PhotoId> photosAfter(const PhotoWork& work, const PhotoEdit& edit) {
    std::vector<PhotoId> ids;
    for (const auto& [id, photo] : work.photos) {
        if (!edit.photos.contains(id)) {
            ids.push_back(id);
        }
    }
    for (const auto& [id, photo] : edit.photos) {
        if (photo) {
            ids.push_back(id);
        }
    }
    return ids;
}

}  // namespace

int within(Random& random, int low, int high) {
    return low + static_cast<int>(below(random, static_cast<std::uint64_t>(high - low) + 1));
}

Photo plainPhoto(int number, PixelSize upright) {
    Photo photo;
    photo.path = fmt::format("/photos/{}.jpg", number);
    photo.content = contentKeyOf(photo.path);
    photo.bytes = 1'000 + static_cast<std::uintmax_t>(number);
    photo.upright = upright;
    return photo;
}

Photo randomPhoto(Random& random) {
    Photo photo;
    photo.path = randomPath(random);
    photo.content = randomContent(random);
    photo.bytes = below(random, 1'000'000'000'000);
    photo.upright = {within(random, 1, maxPhotoPixelsASide), within(random, 1, 9'000)};
    if (oneIn(random, 2)) {
        photo.taken = fmt::format("2026-07-{:02} 16:03:22", within(random, 1, 31));
        photo.rating = within(random, -1, 5);
    }
    photo.favourite = oneIn(random, 3);
    if (oneIn(random, 2)) {
        photo.wish = inches(within(random, 1, 12), within(random, 1, 12));
    }
    photo.tone = randomTone(random);
    return photo;
}

Making randomMaking(Random& random, int pieces, int photos) {
    Making making;
    making.sketch = randomSketch(random, pieces);
    for (int i = 0; i < photos; ++i) {
        making.work.photos.emplace(PhotoId{static_cast<std::uint32_t>(within(random, 1, 90))},
                                   randomPhoto(random));
    }
    if (making.work.photos.empty()) {
        return making;
    }
    for (const PieceId slot : slotsOf(making.sketch)) {
        if (!oneIn(random, 4)) {
            making.work.placements.emplace(
                slot, randomPlacement(random, anyKey(random, making.work.photos),
                                      making.sketch.pieces.at(slot)));
        }
    }
    if (oneIn(random, 2)) {
        making.work.focal = anyKey(random, making.work.photos);
        making.work.papers.emplace(randomPaper(random), randomLook(random));
    }
    return making;
}

PageEdit randomPageEdit(Random& random, const Making& making) {
    PageEdit edit;
    if (oneIn(random, 2)) {
        edit.sketch = randomEdit(random, making.sketch);
    }
    PhotoEdit& photos = edit.photos;
    changePhotos(random, making, photos);
    const std::vector<PhotoId> there = photosAfter(making.work, photos);
    for (const PieceId slot : slotsOf(making.sketch)) {
        if (edit.sketch.pieces.contains(slot)) {
            const auto& after = edit.sketch.pieces.at(slot);
            const Placement* placement = find(making.work, slot);
            if (after && after->kind == PieceKind::PhotoSlot && placement != nullptr &&
                findFault(*placement, *after)) {
                photos.placements[slot] = std::nullopt;  // its border would be too wide
            }
        } else if (oneIn(random, 3)) {
            photos.placements[slot] = std::nullopt;
        } else if (!there.empty() && oneIn(random, 2)) {
            photos.placements[slot] = randomPlacement(random, there[below(random, there.size())],
                                                      making.sketch.pieces.at(slot));
        }
    }
    if (!there.empty() && oneIn(random, 3)) {
        photos.focal =
            oneIn(random, 2) ? std::nullopt : std::optional(there[below(random, there.size())]);
    }
    if (oneIn(random, 3)) {
        photos.papers[randomPaper(random)] =
            oneIn(random, 3) ? std::nullopt : std::optional(randomLook(random));
    }
    return edit;
}

Piece slotAt(Point place, Size size) {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.place = place;
    piece.size = size;
    piece.printSize = size;
    return piece;
}

Making fourSlots() {
    Making making;
    making.sketch = blankSketch();
    const auto at = [](std::int64_t x, std::int64_t y) {
        return Point{Length::inches(x), Length::inches(y)};
    };
    const Piece slots[] = {slotAt(at(1, 1), inches(4, 6)), slotAt(at(5, 1), inches(6, 4)),
                           slotAt(at(1, 7), inches(3, 4)), slotAt(at(5, 7), inches(3, 4))};
    (void)apply(making.sketch, addPieces(making.sketch, slots));
    return making;
}

}  // namespace matwright::test
