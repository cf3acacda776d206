// SPDX-License-Identifier: MIT
#include "app/photos/photo_commands.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <algorithm>
#include <tuple>

#include "core/crop/crop.h"
#include "core/making/fold.h"
#include "core/measure/length_text.h"
#include "core/photo/photo_words.h"

namespace matwright::app {

namespace {

QString words(const char* text) {
    return QCoreApplication::translate("Photos", text);
}

// The sentence of an edit: what it says, or why it was refused.
template <typename AnyEdit>
QString done(Session& session, const AnyEdit& edit, const QString& label, const QString& sentence) {
    const auto performed = session.perform(edit, label);
    return performed ? sentence : QString::fromStdString(performed.error().text());
}

// Where a slot comes in reading.
auto readingPlace(const Sketch& sketch, PieceId id) {
    const Piece& piece = sketch.pieces.at(id);
    return std::tuple(pageOf(pages(sketch.page), piece.place.x), piece.place.y, piece.place.x);
}

Size printOf(const Piece& slot) {
    return slot.printSize.value_or(slot.size);
}

// As the photo lies.
Size lyingAs(Size print, PixelSize photo) {
    const bool isPhotoUpright = photo.height > photo.width;
    return print.isUpright() == isPhotoUpright ? print : print.turned();
}

bool isCrosswise(Size slot, PixelSize photo) {
    return slot.width != slot.height && photo.width != photo.height &&
           slot.isUpright() != (photo.height > photo.width);
}

PhotoEdit changed(const Session& session, std::span<const PhotoId> ids, auto change) {
    PhotoEdit edit;
    for (const PhotoId id : ids) {
        if (const Photo* photo = find(session.work(), id)) {
            Photo after = *photo;
            change(after);
            if (after != *photo) {
                edit.photos[id] = std::move(after);
            }
        }
    }
    return edit;
}

}  // namespace

std::vector<PieceId> selectedSlots(const Session& session) {
    std::vector<PieceId> chosen = session.selectedInOrder();
    std::erase_if(chosen, [&](PieceId id) {
        return session.sketch().pieces.at(id).kind != PieceKind::PhotoSlot;
    });
    return chosen;
}

std::optional<PieceId> slotForNext(const Session& session) {
    const Sketch& sketch = session.sketch();
    if (const auto selected = selectedSlots(session); selected.size() == 1) {
        return selected.front();
    }
    std::optional<PieceId> next;
    for (const auto& [id, piece] : sketch.pieces) {
        const bool isFree =
            piece.kind == PieceKind::PhotoSlot && !session.work().placements.contains(id);
        if (isFree && (!next || readingPlace(sketch, id) < readingPlace(sketch, *next))) {
            next = id;
        }
    }
    return next;
}

bool isOnPage(const PhotoWork& work, PhotoId photo) {
    return std::ranges::any_of(work.placements,
                               [&](const auto& entry) { return entry.second.photo == photo; });
}

QString nameOf(const Photo& photo) {
    return QFileInfo(QString::fromStdString(photo.path)).fileName();
}

QString nameOf(const Sketch& sketch, PieceId slot) {
    const Piece* piece = find(sketch, slot);
    return piece && !piece->name.empty() ? QString::fromStdString(piece->name)
                                         : words("slot %1").arg(pieceNumber(sketch, slot));
}

QString fitText(const Session& session, PieceId slot, PhotoId photo) {
    const Piece* piece = find(session.sketch(), slot);
    const Photo* chosen = find(session.work(), photo);
    if (!piece || !chosen) {
        return {};
    }
    const Size print = printOf(*piece);
    if (isCrosswise(print, chosen->upright)) {
        return chosen->upright.width > chosen->upright.height
                   ? words("This photo lies, the slot stands: turn one of them in the Photo menu.")
                   : words("This photo stands, the slot lies: turn one of them in the Photo menu.");
    }
    return QString::fromStdString(lossText(chosen->upright, lyingAs(print, chosen->upright))) +
           u'.';
}

QString putIntoSlot(Session& session, PieceId slot, PhotoId photo) {
    const Photo* chosen = find(session.work(), photo);
    if (!chosen) {
        return {};
    }
    const QString name = nameOf(*chosen);
    const QString sentence = words("%1 is in %2. ").arg(name, nameOf(session.sketch(), slot)) +
                             fitText(session, slot, photo);
    return done(session, placePhoto(session.making(), slot, photo), words("Put in %1").arg(name),
                sentence);
}

QString putIntoNextSlot(Session& session, PhotoId photo) {
    const auto slot = slotForNext(session);
    return slot ? putIntoSlot(session, *slot, photo)
                : words(
                      "There is no free slot. Select the one it should go into, or draw a new "
                      "photo slot.");
}

QString takeOutOf(Session& session, std::span<const PieceId> from) {
    PhotoEdit edit;
    for (const PieceId slot : from) {
        if (find(session.work(), slot)) {
            edit.placements[slot] = std::nullopt;
        }
    }
    if (edit.isEmpty()) {
        return words("There is no photo in the selected slots.");
    }
    const auto count = edit.placements.size();
    return done(session, edit, count == 1 ? words("Take photo out") : words("Take photos out"),
                count == 1 ? words("The photo is back in the tray.")
                           : words("%1 photos are back in the tray.").arg(count));
}

QString swapSlots(Session& session, PieceId a, PieceId b) {
    const PhotoEdit edit = swapPhotos(session.making(), a, b);
    if (edit.isEmpty()) {
        return words("There is no photo in these slots.");
    }
    const bool bothHave = find(session.work(), a) && find(session.work(), b);
    const QString sentence =
        done(session, edit, bothHave ? words("Swap photos") : words("Move photo"),
             bothHave ? words("The photos have changed places.") : words("The photo has moved."));
    const Placement* there = find(session.work(), b);
    return there ? sentence + u' ' + fitText(session, b, there->photo) : sentence;
}

QString fillSlots(Session& session) {
    const PhotoEdit edit = fillFreeSlots(session.making());
    if (edit.isEmpty()) {
        return words("Nothing to fill: there is no free slot, or every photo is on the page.");
    }
    std::size_t crosswise = 0;
    for (const auto& [slot, placement] : edit.placements) {
        const Photo* photo = placement ? find(session.work(), placement->photo) : nullptr;
        crosswise += photo && isCrosswise(session.sketch().pieces.at(slot).size, photo->upright);
    }
    const auto count = edit.placements.size();
    QString sentence =
        count == 1 ? words("One slot was filled.") : words("%1 slots were filled.").arg(count);
    if (crosswise > 0) {
        sentence += u' ' + words("In %1 of them photo and slot do not lie alike.").arg(crosswise);
    }
    return done(session, edit, words("Fill the free slots"), sentence);
}

QString turnPhotoIn(Session& session, PieceId slot) {
    const Placement* placement = find(session.work(), slot);
    const Photo* photo = placement ? find(session.work(), placement->photo) : nullptr;
    if (!photo) {
        return words("There is no photo in this slot.");
    }
    Placement after = *placement;
    after.crop = turnedRight(
        placement->crop, photo->upright,
        shownWindow(session.sketch().pieces.at(slot), placement->border, session.sketch().page));
    PhotoEdit edit;
    edit.placements[slot] = after;
    return done(session, edit, words("Turn photo"),
                words("The photo is turned a quarter to the right."));
}

QString turnSlot(Session& session, PieceId slot) {
    const Piece* piece = find(session.sketch(), slot);
    if (!piece || piece->kind != PieceKind::PhotoSlot) {
        return {};
    }
    if (piece->locked) {
        return words("This slot is locked. Unlock it first.");
    }
    Piece after = *piece;
    const Point middle = Rect::at(piece->place, piece->size).centreRoundedDown();
    after.size = piece->size.turned();
    after.place = {middle.x - after.size.width.halfRoundedDown(),
                   middle.y - after.size.height.halfRoundedDown()};
    if (after.printSize) {
        after.printSize = after.printSize->turned();
    }
    if (auto* polygon = std::get_if<PolygonShape>(&after.shape)) {
        for (Point& corner : polygon->corners) {  // mirrored at the diagonal: stays inside the box
            std::swap(corner.x, corner.y);
        }
    }
    PageEdit edit{changePiece(slot, after), {}};
    if (const Placement* placement = find(session.work(), slot)) {
        if (const Photo* photo = find(session.work(), placement->photo)) {
            Placement fitted = *placement;
            fitted.crop = startingCrop(
                photo->upright, shownWindow(after, placement->border, session.sketch().page));
            edit.photos.placements[slot] = fitted;
        }
    }
    return done(
        session, edit, words("Turn slot"),
        after.size.isUpright() ? words("The slot stands now.") : words("The slot lies now."));
}

QString setFavourite(Session& session, std::span<const PhotoId> photos, bool favourite) {
    return done(session,
                changed(session, photos, [&](Photo& photo) { photo.favourite = favourite; }),
                favourite ? words("Mark as favourite") : words("No favourite"),
                favourite ? words("Marked as favourite.") : words("No favourite any more."));
}

QString setFocal(Session& session, std::optional<PhotoId> photo) {
    PhotoEdit edit;
    edit.focal = photo;
    return done(session, edit, photo ? words("Choose the focal photo") : words("No focal photo"),
                photo ? words("This is the focal photo now: the one the page is about.")
                      : words("No photo is the focal one now."));
}

QString setWish(Session& session, std::span<const PhotoId> photos, std::optional<Size> wish) {
    return done(session, changed(session, photos, [&](Photo& photo) { photo.wish = wish; }),
                words("Wish a print size"),
                wish ? words("Filling the slots will look for %1.")
                           .arg(QString::fromStdString(naturalSizeText(*wish)))
                     : words("Any print size will do."));
}

QString removeFromTray(Session& session, std::span<const PhotoId> photos) {
    const auto freed = std::ranges::count_if(session.work().placements, [&](const auto& entry) {
        return std::ranges::find(photos, entry.second.photo) != photos.end();
    });
    QString sentence =
        photos.size() == 1
            ? words("The photo is out of the tray; its file stays.")
            : words("%1 photos are out of the tray; their files stay.").arg(photos.size());
    if (freed > 0) {
        sentence += u' ' + (freed == 1 ? words("One slot is free again.")
                                       : words("%1 slots are free again.").arg(freed));
    }
    return done(session, removePhotos(session.work(), photos),
                photos.size() == 1 ? words("Remove photo") : words("Remove photos"), sentence);
}

QString setPath(Session& session, PhotoId photo, const std::string& path) {
    const PhotoId ids[] = {photo};
    return done(session, changed(session, ids, [&](Photo& after) { after.path = path; }),
                words("Find photo"), words("The photo is found again."));
}

QString replacePhoto(Session& session, PhotoId photo, const Photo& file) {
    const bool isThere = std::ranges::any_of(session.work().photos, [&](const auto& entry) {
        return entry.first != photo && entry.second.content == file.content;
    });
    if (isThere) {
        return words("That picture is in the tray already.");
    }
    const PhotoId ids[] = {photo};
    const auto change = [&](Photo& after) {
        after.path = file.path;
        after.content = file.content;
        after.bytes = file.bytes;
        after.upright = file.upright;
        after.taken = file.taken;
        after.rating = file.rating;
    };
    return done(session, changed(session, ids, change), words("Find photo"),
                words("The photo is found again."));
}

}  // namespace matwright::app
