// SPDX-License-Identifier: MIT
#include "app/photos/photo_commands.h"

#include <gtest/gtest.h>

namespace matwright::app {
namespace {

class PhotoCommands : public testing::Test {
  protected:
    PieceId addSlot(int left, int width, int height) {
        Piece piece;
        piece.kind = PieceKind::PhotoSlot;
        piece.place = {Length::inches(left), Length::inches(1)};
        piece.size = {Length::inches(width), Length::inches(height)};
        piece.printSize = piece.size;
        const PieceId id = nextId(session.sketch());
        EXPECT_TRUE(session.perform(addPieces(session.sketch(), {&piece, 1}), {}));
        return id;
    }
    PhotoId addPhoto(PixelSize upright) {
        Photo photo;
        const PhotoId id = nextPhotoId(session.work());
        photo.path = "/photos/" + std::to_string(id.value) + ".jpg";
        photo.content.bytes[0] = static_cast<std::uint8_t>(id.value);
        photo.upright = upright;
        EXPECT_TRUE(session.perform(addPhotos(session.work(), {&photo, 1}), {}));
        return id;
    }
    PhotoId in(PieceId slot) const {
        const Placement* placement = find(session.work(), slot);
        return placement ? placement->photo : PhotoId{};
    }

    static constexpr PixelSize lying{4032, 3024};
    static constexpr PixelSize standing{3024, 4032};
    Session session;
};

TEST_F(PhotoCommands, PutPhotosIntoTheSelectedOrTheNextFreeSlot) {
    const PieceId right = addSlot(6, 4, 6);
    const PieceId left = addSlot(1, 4, 6);
    const PhotoId one = addPhoto(standing);
    const PhotoId two = addPhoto(standing);
    putIntoNextSlot(session, one);
    EXPECT_EQ(in(left), one);
    session.select({left});
    putIntoNextSlot(session, two);
    EXPECT_EQ(in(left), two);
    EXPECT_EQ(in(right), PhotoId{});
    session.clearSelection();
    putIntoNextSlot(session, one);
    EXPECT_EQ(in(right), one);
    EXPECT_TRUE(putIntoNextSlot(session, one).contains(QStringLiteral("no free slot")));
}

TEST_F(PhotoCommands, SayWhatThePrintTakesOff) {
    // 3:2 out of 4:3 keeps 8/9 (check by hand: 4032 x 2688 of 4032 x 3024).
    const PieceId slot = addSlot(1, 6, 4);
    const QString said = putIntoSlot(session, slot, addPhoto(lying));
    EXPECT_TRUE(said.contains(QStringLiteral("takes off 1/9"))) << said.toStdString();
}

TEST_F(PhotoCommands, NeverTurnAPhotoButSaySo) {
    const PieceId slot = addSlot(1, 4, 6);
    const QString said = putIntoSlot(session, slot, addPhoto(lying));
    EXPECT_TRUE(said.contains(QStringLiteral("This photo lies, the slot stands")))
        << said.toStdString();
    EXPECT_EQ(find(session.work(), slot)->crop.quarterTurns, 0);
    turnPhotoIn(session, slot);
    EXPECT_EQ(find(session.work(), slot)->crop.quarterTurns, 1);
    session.undoStack().undo();
    const Point middle =
        Rect::at(session.sketch().pieces.at(slot).place, session.sketch().pieces.at(slot).size)
            .centreRoundedDown();
    turnSlot(session, slot);
    const Piece& piece = session.sketch().pieces.at(slot);
    EXPECT_FALSE(piece.size.isUpright());
    EXPECT_FALSE(piece.printSize->isUpright());
    EXPECT_EQ(Rect::at(piece.place, piece.size).centreRoundedDown(), middle);
}

TEST_F(PhotoCommands, SwapAndMovePhotosBetweenSlots) {
    const PieceId a = addSlot(1, 4, 6);
    const PieceId b = addSlot(6, 3, 4);
    const PhotoId one = addPhoto(standing);
    putIntoSlot(session, a, one);
    swapSlots(session, a, b);
    EXPECT_EQ(in(a), PhotoId{});
    EXPECT_EQ(in(b), one);
    const PhotoId two = addPhoto(standing);
    putIntoSlot(session, a, two);
    swapSlots(session, a, b);
    EXPECT_EQ(in(a), one);
    EXPECT_EQ(in(b), two);
    session.undoStack().undo();
    EXPECT_EQ(in(a), two);
}

TEST_F(PhotoCommands, TakePhotosOutAndBringThemBack) {
    const PieceId a = addSlot(1, 4, 6);
    putIntoSlot(session, a, addPhoto(standing));
    const PieceId ids[] = {a};
    EXPECT_TRUE(takeOutOf(session, ids).contains(QStringLiteral("back in the tray")));
    EXPECT_EQ(in(a), PhotoId{});
    EXPECT_EQ(session.work().photos.size(), 1u);
    session.undoStack().undo();
    EXPECT_NE(in(a), PhotoId{});
}

TEST_F(PhotoCommands, TellHowManySlotsBecomeFreeWithAPhoto) {
    const PhotoId one = addPhoto(standing);
    putIntoSlot(session, addSlot(1, 4, 6), one);
    putIntoSlot(session, addSlot(6, 4, 6), one);
    const QString said = removeFromTray(session, {&one, 1});
    EXPECT_TRUE(said.contains(QStringLiteral("2 slots are free"))) << said.toStdString();
    EXPECT_TRUE(session.work().isEmpty());
    session.undoStack().undo();
    EXPECT_EQ(session.work().placements.size(), 2u);
}

TEST_F(PhotoCommands, KeepTheCropOfAPhotoThatIsFoundAgain) {
    const PhotoId one = addPhoto(standing);
    const PieceId slot = addSlot(1, 4, 6);
    putIntoSlot(session, slot, one);
    const Placement before = *find(session.work(), slot);
    setPath(session, one, "/elsewhere/1.jpg");
    EXPECT_EQ(session.work().photos.at(one).path, "/elsewhere/1.jpg");
    EXPECT_EQ(*find(session.work(), slot), before);
    const PhotoId two = addPhoto(lying);
    const Photo other = session.work().photos.at(two);
    EXPECT_TRUE(replacePhoto(session, one, other).contains(QStringLiteral("already")));
    EXPECT_EQ(session.work().photos.at(one).path, "/elsewhere/1.jpg");
}

}  // namespace
}  // namespace matwright::app
