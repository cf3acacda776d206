// SPDX-License-Identifier: MIT
#include "app/editing/session.h"

#include <gtest/gtest.h>

namespace matwright::app {
namespace {

Piece slot() {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.size = {Length::inches(4), Length::inches(6)};
    piece.printSize = piece.size;
    return piece;
}

Photo photo(std::uint8_t mark) {
    Photo made;
    made.path = "/photos/" + std::to_string(mark) + ".jpg";
    made.content.bytes[0] = mark;
    made.upright = {3024, 4032};
    return made;
}

class PageSession : public testing::Test {
  protected:
    PageSession() {
        const Piece piece = slot();
        EXPECT_TRUE(session.perform(addPieces(session.sketch(), {&piece, 1}), {}));
        const Photo photos[] = {photo(1), photo(2)};
        EXPECT_TRUE(session.perform(addPhotos(session.work(), photos), {}));
        QObject::connect(&session, &Session::changed, [this](const Change& c) { last = c; });
    }
    void put(PhotoId id) {
        ASSERT_TRUE(session.perform(placePhoto(session.making(), PieceId{1}, id), {}));
    }

    Session session;
    Change last;
};

TEST_F(PageSession, IsASketchWithoutPhotosAtFirst) {
    const Session fresh;
    EXPECT_TRUE(fresh.work().isEmpty());
    EXPECT_EQ(fresh.sketch(), blankSketch());
}

TEST_F(PageSession, AChangeThatChangesNothingIsNoStepAndKeepsWhatCanBeRedone) {
    put(PhotoId{2});
    session.undoStack().undo();
    PhotoEdit same;
    same.photos[PhotoId{1}] = session.work().photos.at(PhotoId{1});
    ASSERT_TRUE(session.perform(same, {}));
    EXPECT_TRUE(session.undoStack().canRedo());
}

TEST_F(PageSession, TellsWhichPhotosAndSlotsAChangeTouches) {
    put(PhotoId{2});
    EXPECT_EQ(last.kinds, unsigned{Change::Placements});
    EXPECT_EQ(last.pieces, std::set{PieceId{1}});
    const PhotoId gone[] = {PhotoId{1}};
    ASSERT_TRUE(session.perform(removePhotos(session.work(), gone), {}));
    EXPECT_EQ(last.kinds, unsigned{Change::Photos});
    EXPECT_EQ(last.photos, std::set{PhotoId{1}});
}

TEST_F(PageSession, NamesBothPhotosOfAFocalMarkThatMoves) {
    PhotoEdit edit;
    edit.focal = PhotoId{1};
    ASSERT_TRUE(session.perform(edit, {}));
    edit.focal = PhotoId{2};
    ASSERT_TRUE(session.perform(edit, {}));
    EXPECT_EQ(last.photos, (std::set{PhotoId{1}, PhotoId{2}}));
    session.undoStack().undo();
    EXPECT_EQ(session.work().focal, PhotoId{1});
}

TEST_F(PageSession, BringsThePhotoBackWithTheSlot) {
    put(PhotoId{1});
    const Making before = session.making();
    const PieceId ids[] = {PieceId{1}};
    ASSERT_TRUE(session.perform(removePieces(session.sketch(), ids), {}));
    EXPECT_TRUE(session.work().placements.empty());
    EXPECT_TRUE(last.has(Change::Pieces));
    EXPECT_TRUE(last.has(Change::Placements));
    session.undoStack().undo();
    EXPECT_EQ(session.making(), before);
}

TEST_F(PageSession, UndoesEverythingStepByStep) {
    put(PhotoId{1});
    put(PhotoId{2});
    const Making after = session.making();
    while (session.undoStack().canUndo()) {
        session.undoStack().undo();
    }
    EXPECT_EQ(session.making(), (Making{blankSketch(), {}}));
    while (session.undoStack().canRedo()) {
        session.undoStack().redo();
    }
    EXPECT_EQ(session.making(), after);
}

TEST_F(PageSession, TakesAFoundPhotoForNoEditOfThePerson) {
    session.setClean();
    const int steps = session.undoStack().count();
    session.photoFound(PhotoId{1}, "/moved/1.jpg");
    EXPECT_EQ(session.work().photos.at(PhotoId{1}).path, "/moved/1.jpg");
    EXPECT_TRUE(session.isClean());
    EXPECT_EQ(session.undoStack().count(), steps);
    EXPECT_EQ(last.kinds, unsigned{Change::Photos});
    session.photoFound(PhotoId{9}, "/moved/9.jpg");
    EXPECT_EQ(session.work().photos.size(), 2u);
}

TEST_F(PageSession, KeepsAFoundPlaceWhenAnEarlierStepIsUndone) {
    PhotoEdit mark;
    mark.photos[PhotoId{1}] = photo(1);
    mark.photos[PhotoId{1}]->favourite = true;
    ASSERT_TRUE(session.perform(mark, {}));
    session.photoFound(PhotoId{1}, "/moved/1.jpg");
    session.photoFound(PhotoId{1}, "/again/1.jpg");
    session.undoStack().undo();
    EXPECT_EQ(session.work().photos.at(PhotoId{1}).path, "/again/1.jpg");
    EXPECT_FALSE(session.work().photos.at(PhotoId{1}).favourite);
    session.photoFound(PhotoId{1}, "/photos/1.jpg");  // back where it was
    session.undoStack().redo();
    EXPECT_EQ(session.work().photos.at(PhotoId{1}).path, "/photos/1.jpg");
    EXPECT_TRUE(session.work().photos.at(PhotoId{1}).favourite);
}

TEST_F(PageSession, JoinsTheStepsOfOneGesture) {
    put(PhotoId{1});
    const int steps = session.undoStack().count();
    const Making before = session.making();
    const int gesture = Session::newGesture();
    for (const int zoom : {1'100'000, 1'200'000, 1'300'000}) {
        PhotoEdit edit;
        edit.placements[PieceId{1}] = session.work().placements.at(PieceId{1});
        edit.placements[PieceId{1}]->crop.zoom = zoom;
        ASSERT_TRUE(session.perform(edit, {}, gesture));
    }
    EXPECT_EQ(session.undoStack().count(), steps + 1);
    session.undoStack().undo();
    EXPECT_EQ(session.making(), before);
}

TEST_F(PageSession, ChangesNothingWhereAnEditIsRefused) {
    const Making before = session.making();
    PhotoEdit edit;
    edit.placements[PieceId{9}] = Placement{PhotoId{1}, {}, {}};
    EXPECT_FALSE(session.perform(edit, {}));
    EXPECT_EQ(session.making(), before);
}

}  // namespace
}  // namespace matwright::app
