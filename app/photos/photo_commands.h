// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <optional>
#include <span>
#include <vector>

#include "app/editing/session.h"

namespace matwright::app {

// What a person does with photos, each one undo step. Every function gives the sentence for the
// status line: what was done and what should be known of it, or why nothing was.

// ---- what there is

// The selected pieces that are photo slots, from bottom to top.
std::vector<PieceId> selectedSlots(const Session& session);
// The selected slot, where it is the only one; else the first free slot as one reads (left page
// first, then from the top, from the left); nothing where all are taken.
std::optional<PieceId> slotForNext(const Session& session);
// Whether the photo stands in a slot.
bool isOnPage(const PhotoWork& work, PhotoId photo);
// "IMG_2041.jpg".
QString nameOf(const Photo& photo);
// A slot as a person knows it: its name, or "slot 3".
QString nameOf(const Sketch& sketch, PieceId slot);

// What the print of the slot takes off the photo, and what does not fit: "4 × 6 takes off 1/9 of
// this photo." "This photo lies, the slot stands."
QString fitText(const Session& session, PieceId slot, PhotoId photo);

// ---- into the slots and out

QString putIntoSlot(Session& session, PieceId slot, PhotoId photo);
QString putIntoNextSlot(Session& session, PhotoId photo);
QString takeOutOf(Session& session, std::span<const PieceId> from);
// Two slots, at least one of them with a photo.
QString swapSlots(Session& session, PieceId a, PieceId b);
QString fillSlots(Session& session);
// The photo a quarter turn to the right in its window.
QString turnPhotoIn(Session& session, PieceId slot);
// The slot stands where it lay, about its middle; its photo begins with a new crop.
QString turnSlot(Session& session, PieceId slot);

// ---- in the tray

QString setFavourite(Session& session, std::span<const PhotoId> photos, bool favourite);
// Nothing: no photo is the focal one.
QString setFocal(Session& session, std::optional<PhotoId> photo);
QString setWish(Session& session, std::span<const PhotoId> photos, std::optional<Size> wish);
// The slots they stand in become free.
QString removeFromTray(Session& session, std::span<const PhotoId> photos);
// The same photo at another place.
QString setPath(Session& session, PhotoId photo, const std::string& path);

// Another file in its place: what is told of the file changes, what the person chose stays. Refused
// where that picture is in the tray already.
QString replacePhoto(Session& session, PhotoId photo, const Photo& file);

}  // namespace matwright::app
