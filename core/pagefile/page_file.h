// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "core/filestore/file_store.h"
#include "core/making/making.h"

namespace matwright {

// A page file is an SVG picture of the page in the making with the model inside it, as a sketch
// file is (core/sketchfile): first child of the root, namespace below, the sketch itself standing
// in it in its own words. The picture shows small copies of the photos as they are cropped, so that
// any browser, file manager or phone shows the page. The format is written down in DEVELOPERS.md.
// Suffix ".page.svg".
inline constexpr const char* pageNamespace = "urn:matwright:page";
inline constexpr int pageFormatVersion = 1;
inline constexpr const char* pageFileSuffix = ".page.svg";
// Files above this are refused before anything is built from them.
inline constexpr std::size_t maxPageFileBytes = std::size_t{64} * 1024 * 1024;
// What all small pictures of a file may have together as JPEGs; those past it, from bottom to top,
// are left out. They are stand-ins only.
inline constexpr std::size_t maxSmallPictureBytes = std::size_t{24} * 1024 * 1024;

struct LoadedPage {
    Making making;
    std::vector<std::string> warnings;  // parts this version does not know
    // A photo or the picture of a paper that lay below the page file's folder is looked for below
    // the folder where that file is now, so that a folder can be moved or synced as a whole. Where
    // that is another place than the one that was written, that one stands here.
    std::map<PhotoId, std::string> photosElsewhere;
    std::map<std::string, std::string> papersElsewhere;
};

// A small JPEG of what shows in a slot's window (the crop, without the white border), for the
// picture; empty where there is none.
using SmallPictures = std::function<std::string(PieceId)>;

// As readSketch(): never looks outside `bytes`, same guards, same errors. A sketch file is read as
// a page without photos. `folder` is where the file lies (absolute, no slash at its end); empty:
// paths are what was written.
Result<LoadedPage> readPage(std::string_view bytes, const std::string& folder = {});
// The JPEGs a page file carries, by slot: a stand-in for photos that are out of reach. Whatever is
// no such picture is passed over; nothing where the bytes are no page file.
std::map<PieceId, std::string> smallPicturesIn(std::string_view bytes);

// Equal pages, pictures and folders give equal bytes; readPage(writePage(m, p, f), f) gives m.
// Precondition: the page is sound.
std::string writePage(const Making& making, const SmallPictures& pictures = {},
                      const std::string& folder = {});
// writePage(), or TooLarge where readPage() would refuse so many bytes.
Result<std::string> savablePageBytes(const Making& making, const SmallPictures& pictures = {},
                                     const std::string& folder = {});

// Reading and writing a file, its folder being `folder` above; `where` of an error begins with the
// file's name.
Result<LoadedPage> loadPage(FileStore& store, const std::filesystem::path& path);
Result<void> savePage(FileStore& store, const std::filesystem::path& path, const Making& making,
                      const SmallPictures& pictures = {});

}  // namespace matwright
