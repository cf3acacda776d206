// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>
#include <QSize>
#include <filesystem>
#include <string>

namespace matwright::test {

// Photos of nowhere and nobody, painted by us: a small family's year outdoors. Equal arguments give
// equal pictures.
inline constexpr int paintedScenes = 8;
// A word for it: "winter-hill".
std::string sceneName(int scene);
QImage paintedPhoto(int scene, QSize size);

// How a phone would have written it.
struct PhotoTags {
    std::string taken;    // "2026:07:14 16:03:22"; empty: no time
    int orientation = 1;  // 1 .. 8: how the stored picture is to be turned
    int rating = -2;      // -1 .. 5 in XMP; below: none
    int quality = 80;
};
// As JPEG. `upright` is what is to be seen; it is stored turned as the orientation asks for.
void writeJpeg(const std::filesystem::path& file, const QImage& upright, const PhotoTags& tags);

}  // namespace matwright::test
