// SPDX-License-Identifier: MIT
#pragma once

namespace matwright::pagewords {

// The words of the page file, version 1, beside those of the sketch file. They never change. No
// element is called as one of SVG: some viewers do not look at namespaces.

inline constexpr const char* making = "making";
inline constexpr const char* version = "version";

inline constexpr const char* photos = "photos";
inline constexpr const char* photo = "photo";
inline constexpr const char* id = "id";
inline constexpr const char* path = "path";
inline constexpr const char* near = "near";  // from the folder of the file, where it is below it
inline constexpr const char* content = "content";
inline constexpr const char* bytes = "bytes";
inline constexpr const char* width = "width";
inline constexpr const char* height = "height";
inline constexpr const char* taken = "taken";
inline constexpr const char* rating = "rating";
inline constexpr const char* favourite = "favourite";
inline constexpr const char* wish = "wish";

inline constexpr const char* tone = "tone";
inline constexpr const char* evenOut = "even-out";
inline constexpr const char* brightness = "brightness";
inline constexpr const char* contrast = "contrast";
inline constexpr const char* warmth = "warmth";
inline constexpr const char* saturation = "saturation";
inline constexpr const char* sharpen = "sharpen";

inline constexpr const char* focal = "focal";

inline constexpr const char* placements = "placements";
inline constexpr const char* placement = "placement";
inline constexpr const char* slot = "slot";
inline constexpr const char* x = "x";
inline constexpr const char* y = "y";
inline constexpr const char* zoom = "zoom";
inline constexpr const char* quarterTurns = "quarter-turns";
inline constexpr const char* straighten = "straighten";
inline constexpr const char* border = "border";

inline constexpr const char* papers = "papers";
inline constexpr const char* paper = "paper";
inline constexpr const char* name = "name";
inline constexpr const char* colour = "colour";

inline constexpr const char* yes = "yes";

// In the picture: what the id of a small picture begins with, the slot's number follows.
inline constexpr const char* smallPicture = "photo-";
inline constexpr const char* dataStart = "data:image/jpeg;base64,";

}  // namespace matwright::pagewords
