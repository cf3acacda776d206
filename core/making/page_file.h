// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "core/filestore/file_store.h"
#include "core/making/making.h"

namespace matwright {

// A page file is an SVG picture of the page in the making with the model inside it, as a sketch
// file is (core/sketchfile): first child of the root, namespace below, the sketch itself standing
// in it in its own words. The picture shows small copies of the photos as they are cropped, so that
// any browser, file manager or phone shows the page. Suffix ".page.svg".
inline constexpr const char* pageNamespace = "urn:matwright:page";
inline constexpr int pageFormatVersion = 1;
inline constexpr const char* pageFileSuffix = ".page.svg";

struct LoadedPage {
    Making making;
    std::vector<std::string> warnings;  // parts this version does not know
};

// A small JPEG of what shows in a slot, for the picture; empty where there is none.
using SmallPictures = std::function<std::string(PieceId)>;

// As readSketch(): never looks outside `bytes`, same guards, same errors. A sketch file is read as
// a page without photos.
Result<LoadedPage> readPage(std::string_view bytes);
// The JPEGs a page file carries, by slot: a stand-in for photos that are out of reach.
std::map<PieceId, std::string> smallPicturesIn(std::string_view bytes);

// Equal pages and pictures give equal bytes; readPage(writePage(m)) gives m.
std::string writePage(const Making& making, const SmallPictures& pictures = {});

}  // namespace matwright
