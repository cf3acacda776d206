// SPDX-License-Identifier: MIT
#include "app/batch/page_making.h"

#include <fmt/format.h>

#include <cmath>
#include <ostream>

#include "app/batch/files.h"
#include "app/batch/page_listing.h"
#include "core/making/fold.h"
#include "core/making/making_edit.h"
#include "core/pagefile/page_file.h"
#include "core/photo/photo_source.h"
#include "core/prints/rendering.h"

namespace matwright::app {

namespace {

constexpr std::size_t maxListingBytes = 4'000'000;

std::unexpected<Error> refusal(ErrorCode code, std::string sentence, std::string where = "") {
    return std::unexpected(Error{code, std::move(sentence), std::move(where)});
}

std::filesystem::path seenFrom(const std::filesystem::path& listing,
                               const std::filesystem::path& file) {
    return std::filesystem::absolute(listing).parent_path() / file;
}

Result<Photo> photoOf(const ListedPlace& place, const std::filesystem::path& file) {
    const Result<PhotoFacts> facts = photoFacts(file);
    if (!facts) {
        return std::unexpected(facts.error());
    }
    Photo photo;
    photo.path = file.lexically_normal().string();
    photo.content = facts->content;
    photo.bytes = facts->bytes;
    photo.upright = facts->upright;
    photo.taken = facts->taken;
    photo.rating = facts->rating;
    photo.favourite = place.isFavourite;
    photo.wish = place.wish;
    photo.tone.evenOut = place.evenOut;
    return photo;
}

// By its number as `pieces` shows it, else by its name.
Result<PieceId> slotOf(const Sketch& sketch, const std::string& word) {
    std::vector<PieceId> found;
    for (const PieceId id : sketch.order) {
        const Piece& piece = sketch.pieces.at(id);
        if (piece.kind != PieceKind::PhotoSlot) {
            continue;
        }
        if (std::to_string(pieceNumber(sketch, id)) == word) {
            return id;
        }
        if (piece.name == word) {
            found.push_back(id);
        }
    }
    if (found.size() == 1) {
        return found.front();
    }
    return refusal(
        ErrorCode::NotFound,
        found.empty()
            ? fmt::format("The sketch has no photo slot \"{}\".", word)
            : fmt::format("Several photo slots are called \"{}\"; give its number.", word));
}

std::int32_t millionths(double share) {
    return static_cast<std::int32_t>(std::lround(share * Crop::one));
}

Placement placementOf(const ListedPlace& place, const Piece& slot, const PageSetup& page,
                      PhotoId id, const Photo& photo) {
    const Size window = shownWindow(slot, place.border, page);
    const PixelSize lying = place.quarterTurns % 2 == 0 ? photo.upright : photo.upright.turned();
    Crop crop = startingCrop(lying, window);
    crop.quarterTurns = place.quarterTurns;
    crop.zoom = millionths(place.zoom);
    crop.straighten = Angle::roundedFromDegrees(place.straighten);
    if (place.centre) {
        crop.centreX = millionths(place.centre->first);
        crop.centreY = millionths(place.centre->second);
    }
    return {id, settled(crop, photo.upright, window), place.border};
}

Result<void> changed(Making& making, const PhotoEdit& edit) {
    const Result<PageEdit> done = apply(making, PageEdit{{}, edit});
    return done ? Result<void>() : std::unexpected(done.error());
}

// The photo's id in the tray; one that is listed twice has one.
Result<PhotoId> broughtIn(Making& making, const Photo& photo) {
    if (const auto done = changed(making, addPhotos(making.work, std::span(&photo, 1))); !done) {
        return std::unexpected(done.error());
    }
    for (const auto& [id, there] : making.work.photos) {
        if (there.content == photo.content) {
            return id;
        }
    }
    return refusal(ErrorCode::BadEdit, "The photo could not be taken into the tray.", photo.path);
}

Result<void> addPlace(Making& making, const ListedPlace& place,
                      const std::filesystem::path& listing) {
    const Result<Photo> photo = photoOf(place, seenFrom(listing, place.photo));
    if (!photo) {
        return std::unexpected(photo.error());
    }
    const Result<PhotoId> id = broughtIn(making, *photo);
    if (!id) {
        return std::unexpected(id.error());
    }
    PhotoEdit edit;
    if (place.isFocal) {
        edit.focal = *id;
    }
    if (place.slot) {
        const Result<PieceId> slot = slotOf(making.sketch, *place.slot);
        if (!slot) {
            return std::unexpected(slot.error());
        }
        const Piece& piece = making.sketch.pieces.at(*slot);
        if (!shownWindow(piece, place.border, making.sketch.page).isPositive()) {
            return refusal(
                ErrorCode::Malformed,
                fmt::format("The white border leaves nothing of slot \"{}\".", *place.slot));
        }
        edit.placements[*slot] = placementOf(place, piece, making.sketch.page, *id, *photo);
    }
    return changed(making, edit);
}

// What shows in a slot's window, small.
std::string smallPicture(const Making& making, PieceId slot) {
    const auto placed = making.work.placements.find(slot);
    if (placed == making.work.placements.end()) {
        return "";
    }
    const Photo& photo = making.work.photos.at(placed->second.photo);
    Print print;
    print.window =
        shownWindow(making.sketch.pieces.at(slot), placed->second.border, making.sketch.page);
    print.paper = print.window;
    print.trim = Rect::at({}, print.window);
    print.crop = placed->second.crop;
    print.tone = photo.tone;
    PrintOptions small;
    small.ppi = smallestPpi;
    const Result<Raster> raster = renderPrint(print, photo, small);
    constexpr int quality = 80;
    return raster ? smallJpeg(*raster, quality) : "";
}

}  // namespace

int runPage(const PageCommand& command, BatchPorts& ports) {
    if (!command.output.string().ends_with(pageFileSuffix)) {
        return refuseSuffix(command.output, pageFileSuffix, ports);
    }
    const Result<std::string> bytes = ports.files.read(command.listing, maxListingBytes);
    if (!bytes) {
        return fail(ports, InputRefused, bytes.error());
    }
    const Result<PageListing> listing = readListing(*bytes);
    if (!listing) {
        return fail(ports, InputRefused,
                    {listing.error().code, listing.error().sentence, command.listing.string()});
    }
    const auto sketch = readInput(seenFrom(command.listing, listing->sketch), ports);
    if (!sketch) {
        return sketch.error();
    }
    Making making{*sketch, {}};
    for (const ListedPlace& place : listing->places) {
        if (const auto done = addPlace(making, place, command.listing); !done) {
            const std::string& where = done.error().where;
            return fail(ports, InputRefused,
                        {done.error().code, done.error().sentence,
                         where.empty() ? command.listing.string() : where});
        }
    }
    if (listing->fill) {
        (void)changed(making, fillFreeSlots(making));
    }
    const auto saved = savePage(ports.files, std::filesystem::absolute(command.output), making,
                                [&](PieceId slot) { return smallPicture(making, slot); });
    if (!saved) {
        return fail(ports, CouldNotWrite, saved.error());
    }
    ports.out << fmt::format("Wrote {}: {} of {} photos placed\n", command.output.string(),
                             making.work.placements.size(), making.work.photos.size());
    return Done;
}

}  // namespace matwright::app
