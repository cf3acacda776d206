// SPDX-License-Identifier: MIT
#include "core/pagefile/photo_reader.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <limits>

#include "core/pagefile/page_paths.h"
#include "core/pagefile/vocabulary.h"
#include "core/sketch/soundness.h"

namespace matwright {

namespace {

constexpr const char* remedy = "Correct it, or open an earlier copy of the file.";

template <typename Id>
Id readId(ModelElement& element, const char* name, Id largest) {
    return Id{static_cast<std::uint32_t>(element.whole(name, 1, largest.value))};
}

int readInt(ModelElement& element, const char* name, int low, int high) {
    return static_cast<int>(element.whole(name, low, high));
}

int readSlider(ModelElement& element, const char* name, int low = -100) {
    return static_cast<int>(element.optionalWhole(name, low, 100).value_or(0));
}

ContentKey readContent(ModelElement& element) {
    const std::string_view text = element.word(pagewords::content);
    const auto key = parseContentKey(text);
    if (!key && !element.hasFailed()) {
        element.fail(fmt::format("{} is no content of a file: it has 32 digits from 0 to f. {}",
                                 inQuotes(text), remedy));
    }
    return key.value_or(ContentKey());
}

struct FoundPath {
    std::string path;
    std::string elsewhere;  // empty: nowhere else
};

FoundPath readPath(ModelElement& element, const std::string& folder) {
    FoundPath found{std::string(element.word(pagewords::path)), {}};
    const auto near = element.optionalWord(pagewords::near);
    if (near && !leadsDown(*near)) {
        element.fail(fmt::format("{} does not lead down from the file's folder. {}",
                                 inQuotes(*near), remedy));
    } else if (near && !folder.empty()) {
        const std::string written = std::move(found.path);
        found.path = below(folder, *near);
        found.elsewhere = written == found.path || !isValidText(written, false) ? "" : written;
    }
    return found;
}

Colour readColour(ModelElement& element) {
    const std::string_view text = element.word(pagewords::colour);
    std::uint32_t value = 0;
    const auto isDigit = [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); };
    if (text.size() == 7 && text.front() == '#' && std::ranges::all_of(text.substr(1), isDigit)) {
        std::from_chars(text.begin() + 1, text.end(), value, 16);
    } else if (!element.hasFailed()) {
        element.fail(fmt::format("{} is no colour as \"#a0b1c2\". {}", inQuotes(text), remedy));
    }
    const auto byteAt = [&](int shift) { return static_cast<std::uint8_t>(value >> shift & 0xFF); };
    return {byteAt(16), byteAt(8), byteAt(0)};
}

Tone readTone(ModelElement& element) {
    return {element.optionalFlag(pagewords::evenOut),   readSlider(element, pagewords::brightness),
            readSlider(element, pagewords::contrast),   readSlider(element, pagewords::warmth),
            readSlider(element, pagewords::saturation), readSlider(element, pagewords::sharpen, 0)};
}

// Its path aside.
Photo readPhoto(ModelElement& element) {
    Photo photo;
    photo.content = readContent(element);
    photo.bytes = static_cast<std::uintmax_t>(
        element.optionalWhole(pagewords::bytes, 0, std::numeric_limits<std::int64_t>::max())
            .value_or(0));
    photo.upright = {readInt(element, pagewords::width, 1, maxPhotoPixelsASide),
                     readInt(element, pagewords::height, 1, maxPhotoPixelsASide)};
    photo.taken = element.optionalWord(pagewords::taken).value_or("");
    if (const auto rating = element.optionalWhole(pagewords::rating, -1, 5)) {
        photo.rating = static_cast<int>(*rating);
    }
    photo.favourite = element.optionalFlag(pagewords::favourite);
    element.once(pagewords::wish, [&](ModelElement& wish) {
        photo.wish = wish.size(pagewords::width, pagewords::height);
    });
    element.once(pagewords::tone, [&](ModelElement& tone) { photo.tone = readTone(tone); });
    return photo;
}

void addPhoto(ModelElement& element, const std::string& folder, LoadedPage& page) {
    const PhotoId id = readId(element, pagewords::id, maxPhotoId);
    Photo photo = readPhoto(element);
    FoundPath found = readPath(element, folder);
    photo.path = std::move(found.path);
    auto& photos = page.making.work.photos;
    const auto fault = findFault(photo);
    if (fault && !element.hasFailed()) {
        element.fail(*fault);
    } else if (!photos.emplace(id, std::move(photo)).second) {
        element.fail(fmt::format("A second photo has the id {}; each needs one of its own. {}",
                                 id.value, remedy));
    } else if (photos.size() > maxPhotos) {
        element.fail(
            fmt::format("The page has more than the {} photos it can hold. {}", maxPhotos, remedy));
    }
    if (!found.elsewhere.empty()) {
        page.photosElsewhere.emplace(id, std::move(found.elsewhere));
    }
}

Placement readPlacement(ModelElement& element) {
    Placement placement;
    placement.photo = readId(element, pagewords::photo, maxPhotoId);
    Crop& crop = placement.crop;
    crop.centreX = readInt(element, pagewords::x, 0, Crop::one);
    crop.centreY = readInt(element, pagewords::y, 0, Crop::one);
    crop.zoom = readInt(element, pagewords::zoom, Crop::one, Crop::largestZoom);
    crop.quarterTurns =
        static_cast<int>(element.optionalWhole(pagewords::quarterTurns, 0, 3).value_or(0));
    crop.straighten = element.optionalAngle(pagewords::straighten);
    placement.border = element.optionalLength(pagewords::border).value_or(Length());
    return placement;
}

void addPlacement(ModelElement& element, LoadedPage& page) {
    const PieceId slot = readId(element, pagewords::slot, maxPieceId);
    const Placement placement = readPlacement(element);
    if (element.hasFailed()) {
        return;
    }
    Making& making = page.making;
    const Piece* piece = find(making.sketch, slot);
    if (piece == nullptr) {
        element.fail(
            fmt::format("A photo stands in piece {}, which is not there. {}", slot.value, remedy));
    } else if (auto fault = findFault(placement, *piece)) {
        element.fail(*fault);
    } else if (!making.work.photos.contains(placement.photo)) {
        element.fail(
            fmt::format("Photo {} stands in a slot, but is not among the page's photos. {}",
                        placement.photo.value, remedy));
    } else if (!making.work.placements.emplace(slot, placement).second) {
        element.fail(fmt::format("A second photo stands in piece {}. {}", slot.value, remedy));
    }
}

void addPaper(ModelElement& element, const std::string& folder, LoadedPage& page) {
    const std::string name(element.word(pagewords::name));
    PaperLook look;
    look.colour = readColour(element);
    if (element.optionalWord(pagewords::path)) {
        FoundPath found = readPath(element, folder);
        look.picture = std::move(found.path);
        look.content = readContent(element);
        look.pictureWidth = element.length(pagewords::width);
        if (look.picture.empty()) {
            element.fail(fmt::format("The path of a paper's picture is empty. {}", remedy));
        }
        if (!found.elsewhere.empty()) {
            page.papersElsewhere.emplace(name, std::move(found.elsewhere));
        }
    }
    auto& papers = page.making.work.papers;
    const auto fault = findFault(name, look);
    if (fault && !element.hasFailed()) {
        element.fail(*fault);
    } else if (!papers.emplace(name, std::move(look)).second) {
        element.fail(fmt::format("The paper {} looks two ways. {}", inQuotes(name), remedy));
    } else if (papers.size() > maxPapers) {
        element.fail(fmt::format("The page has more than {} papers. {}", maxPapers, remedy));
    }
}

}  // namespace

void readPhotos(ModelElement& photos, const std::string& folder, LoadedPage& page) {
    photos.forEach(pagewords::photo, [&](ModelElement& photo) { addPhoto(photo, folder, page); });
}

void readFocal(ModelElement& focal, LoadedPage& page) {
    const PhotoId id = readId(focal, pagewords::photo, maxPhotoId);
    if (!focal.hasFailed() && !page.making.work.photos.contains(id)) {
        focal.fail(fmt::format("The page is about photo {}, which is not among its photos. {}",
                               id.value, remedy));
    }
    page.making.work.focal = id;
}

void readPlacements(ModelElement& placements, LoadedPage& page) {
    placements.forEach(pagewords::placement,
                       [&](ModelElement& placement) { addPlacement(placement, page); });
}

void readPapers(ModelElement& papers, const std::string& folder, LoadedPage& page) {
    papers.forEach(pagewords::paper, [&](ModelElement& paper) { addPaper(paper, folder, page); });
}

}  // namespace matwright
