// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/content/content_key.h"
#include "core/crop/crop.h"
#include "core/drawing/drawing.h"
#include "core/sketch/sketch.h"
#include "core/tone/tone.h"

namespace matwright {

// Names one photo of one page in the making for as long as it lives; 0 is no photo.
struct PhotoId {
    std::uint32_t value = 0;
    friend constexpr auto operator<=>(PhotoId, PhotoId) = default;
};

// A photo in the tray of a page. What is told of the file was true when it was read last; the page
// can be shown and planned with it when the file is out of reach.
struct Photo {
    std::string path;           // absolute, UTF-8, where it was seen last
    ContentKey content;         // of the whole file: finds it again under another name
    std::uintmax_t bytes = 0;   // how long that file is, below 2^63; 0: not known
    PixelSize upright;          // after its EXIF turn
    std::string taken;          // "2026-07-14 16:03:22", local to the camera; may be empty
    std::optional<int> rating;  // -1 .. 5, the file's own (XMP)
    bool favourite = false;     // the person's own mark
    std::optional<Size> wish;   // the print size wished for it, upright or lying alike
    Tone tone;
    friend bool operator==(const Photo&, const Photo&) = default;
};

// A photo in a slot.
struct Placement {
    PhotoId photo;
    Crop crop;
    Length border = Length::inches(0);  // white, inside the trim; 0 or more
    friend bool operator==(const Placement&, const Placement&) = default;
};

// How a paper looks: pieces and mats name their paper in words, and every paper of that name looks
// alike.
struct PaperLook {
    Colour colour;        // where there is no picture, or it is out of reach
    std::string picture;  // path of a picture of the paper; empty: a plain colour
    ContentKey content;   // of that picture; both zero where there is none
    Length pictureWidth;  // how wide what it shows is in truth; positive where there is one
    friend bool operator==(const PaperLook&, const PaperLook&) = default;
};

// What a page in the making has beyond its sketch, as a regular value.
struct PhotoWork {
    std::map<PhotoId, Photo> photos;          // every photo in the tray
    std::optional<PhotoId> focal;             // the photo the page is about
    std::map<PieceId, Placement> placements;  // by photo slot
    std::map<std::string, PaperLook> papers;  // by the paper's words

    bool isEmpty() const {
        return photos.empty() && !focal && placements.empty() && papers.empty();
    }
    friend bool operator==(const PhotoWork&, const PhotoWork&) = default;
};

// A page in the making: a sketch of its own (a copy; the sketch it began from never changes), and
// the photos and choices.
struct Making {
    Sketch sketch;
    PhotoWork work;
    friend bool operator==(const Making&, const Making&) = default;
};

inline constexpr std::size_t maxPhotos = 2'000;
inline constexpr PhotoId maxPhotoId{1'000'000'000};
inline constexpr std::size_t maxPapers = 2'000;
inline constexpr int maxPhotoPixelsASide = 200'000;
// What a white border leaves of the trim at least, either way.
inline constexpr Length smallestWindow = Length::inches(0, 1, 8);

// One past the largest id in use; where the largest is maxPhotoId, the smallest that is free.
PhotoId nextPhotoId(const PhotoWork& work);

// The first rule broken (code Malformed, `where` names the photo, slot or paper), or nothing:
// - the sketch is sound
// - photo ids are 1 .. maxPhotoId; at most maxPhotos photos; their sizes positive and at most
//   maxPhotoPixelsASide; a rating -1 .. 5; a wished size within what a print may be
// - focal and every placement name a photo that is there; placements stand at photo slots
// - crop, tone and border are in range; a border leaves smallestWindow of the trim
// - a paper has a name; at most maxPapers; one with a picture has a width of at most 200 in, one
//   without has neither width nor content
// - paths and words are valid text of at most maxTextBytes, without line breaks
std::optional<Error> findFault(const Making& making);
std::optional<Error> findFault(const Photo& photo);
std::optional<Error> findFault(const std::string& paper, const PaperLook& look);
// `slot` is the piece it stands at; whether the photo is there is not asked.
std::optional<Error> findFault(const Placement& placement, const Piece& slot);

// nullptr where there is none.
const Photo* find(const PhotoWork& work, PhotoId id);
const Placement* find(const PhotoWork& work, PieceId slot);

// The window of a slot: its trim, less the border of the placement on every side.
Size windowOf(const Piece& slot, Length border);

}  // namespace matwright
