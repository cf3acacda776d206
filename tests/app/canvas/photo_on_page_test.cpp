// SPDX-License-Identifier: MIT
#include <QPainter>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include "tests/app/canvas/canvas_fixture.h"
#include "tests/app/photos/fake_photo_service.h"

namespace matwright::app {
namespace {

constexpr PhotoId photo{1};

// A 4 x 6 in slot in the middle of the page with a photo whose left half is red, right half blue.
class PhotoOnPageTest : public CanvasFixture {
  protected:
    PhotoOnPageTest() {
        Making making;
        making.sketch = blankSketch();
        Piece piece;
        piece.kind = PieceKind::PhotoSlot;
        piece.place = {inches(4), inches(3)};
        piece.size = {inches(4), inches(6)};
        piece.printSize = piece.size;
        piece.mats.push_back({inches(0, 1, 4), {}, "kraft"});
        EXPECT_TRUE(apply(making.sketch, addPieces(making.sketch, std::span(&piece, 1))));
        Photo one;
        one.path = "/photos/harbour.jpg";
        one.upright = {4000, 3000};
        making.work.photos[photo] = one;
        making.work.placements[slot] = {photo, startingCrop(one.upright, piece.size), {}};
        session.reset(making);
        QImage copy(800, 600, QImage::Format_RGB32);
        for (int y = 0; y < 600; ++y) {
            for (int x = 0; x < 800; ++x) {
                copy.setPixel(x, y, x < 400 ? qRgb(200, 0, 0) : qRgb(0, 0, 200));
            }
        }
        service.copies[one.content] = copy;
        page().slotPictures().useService(&service);
        page().update();
        session.select({slot});
    }
    ~PhotoOnPageTest() override { page().slotPictures().useService(nullptr); }

    QColor colourAt(Point point) { return page().grab().toImage().pixelColor(at(point).toPoint()); }
    const Placement& placement() { return session.work().placements.at(slot); }
    void wheel(QPointF view, int notches) {
        QWheelEvent event(view, page().mapToGlobal(view), {}, {0, 120 * notches}, {}, {},
                          Qt::NoScrollPhase, false);
        QApplication::sendEvent(&page(), &event);
    }

    const PieceId slot{1};
    FakePhotoService service;
};

TEST_F(PhotoOnPageTest, SlotShowsItsPhotoAndTheMatItsPaper) {
    session.clearSelection();
    EXPECT_EQ(colourAt({inches(5), inches(7)}), QColor(200, 0, 0));
    EXPECT_EQ(colourAt({inches(7), inches(7)}), QColor(0, 0, 200));
    PhotoEdit edit;
    edit.papers["kraft"] = PaperLook{{160, 120, 80}, {}, {}, {}};
    ASSERT_TRUE(session.perform(edit, "Look"));
    EXPECT_EQ(colourAt({inches(3, 7, 8), inches(7)}), QColor(160, 120, 80));
    session.undoStack().undo();
    EXPECT_NE(colourAt({inches(3, 7, 8), inches(7)}), QColor(160, 120, 80));
}

TEST_F(PhotoOnPageTest, SlotSaysThatItsPhotoIsReadWhileOnlyAThumbnailIsThere) {
    const ContentKey content = session.work().photos.at(photo).content;
    service.copies[content] = service.copies[content].scaled(200, 150);
    PhotoFill fill;
    fill.photo = photo;
    fill.crop = placement().crop;
    fill.whole = {inches(4), inches(6)};
    const double scale = 100.0 / static_cast<double>(Length::ticksPerInch);
    const QImage plain = page().slotPictures().windowPicture(slot, fill, scale);
    service.coming.insert(content);
    const QImage marked = page().slotPictures().windowPicture(slot, fill, scale);
    EXPECT_NE(marked, plain);
    EXPECT_EQ(marked.copy(0, 0, 400, 300), plain.copy(0, 0, 400, 300));
    service.coming.clear();
    EXPECT_EQ(page().slotPictures().windowPicture(slot, fill, scale), plain);
}

TEST_F(PhotoOnPageTest, StandInAcrossTheFoldShowsItsShareOnEachSide) {
    service.copies.clear();
    QImage halves(80, 40, QImage::Format_RGB32);
    halves.fill(Qt::red);
    QPainter(&halves).fillRect(40, 0, 40, 40, Qt::blue);
    page().slotPictures().useStandIns([&](PieceId) { return halves; });
    PhotoFill fill;
    fill.photo = photo;
    fill.whole = {inches(4), inches(2)};
    fill.to = 0.5;
    const QImage left = page().slotPictures().windowPicture(slot, fill, 1e-4);
    fill.from = 0.5;
    fill.to = 1;
    const QImage right = page().slotPictures().windowPicture(slot, fill, 1e-4);
    EXPECT_EQ(left.pixelColor(left.width() - 1, 20), QColor(Qt::red));
    EXPECT_EQ(right.pixelColor(0, 20), QColor(Qt::blue));
    page().slotPictures().useStandIns(nullptr);
}

TEST_F(PhotoOnPageTest, DoubleClickThenDragMovesThePhotoInsideItsSlot) {
    const Placement before = placement();
    const Piece slotBefore = piece(slot);
    QTest::mouseDClick(&page(), Qt::LeftButton, {}, middleOf(slot).toPoint());
    drag(middleOf(slot), at({inches(7), inches(6)}));
    EXPECT_EQ(piece(slot), slotBefore);
    // An inch to the right: of the 8 in that the photo is wide an eighth more of the left shows.
    EXPECT_NEAR(placement().crop.centreX, before.crop.centreX - 1e6 / 8, 50);
    EXPECT_EQ(undoSteps(), 1);
    EXPECT_EQ(colourAt({inches(6, 3, 4), inches(7)}), QColor(200, 0, 0));
    session.undoStack().undo();
    EXPECT_EQ(placement(), before);
}

TEST_F(PhotoOnPageTest, EscDropsTheDragFirstAndThenTheTool) {
    const Placement before = placement();
    canvas->workOnPhoto(slot);
    press(middleOf(slot));
    moveTo(middleOf(slot) + QPointF(40, 3));
    EXPECT_FALSE(page().preview().placed.empty());
    key(Qt::Key_Escape);
    EXPECT_EQ(placement(), before);
    EXPECT_TRUE(page().preview().isEmpty());
    release(middleOf(slot) + QPointF(40, 3));
    EXPECT_EQ(undoSteps(), 0);
    key(Qt::Key_Escape);
    QCoreApplication::processEvents();
    drag(middleOf(slot), middleOf(slot) + QPointF(50, 0));
    EXPECT_EQ(placement(), before);
    EXPECT_NE(piece(slot).place.x, inches(4)) << "a drag moves the piece again";
}

TEST_F(PhotoOnPageTest, DragEndsWhenItsSlotIsRemovedOrItsPhotoTakenOut) {
    const QPointF middle = middleOf(slot);
    canvas->workOnPhoto(slot);
    press(middle);
    moveTo(middle + QPointF(40, 3));
    PhotoEdit out;
    out.placements[slot] = std::nullopt;
    ASSERT_TRUE(session.perform(out, "Take out"));
    EXPECT_TRUE(page().preview().isEmpty());
    release(middle + QPointF(40, 3));
    EXPECT_FALSE(session.work().placements.contains(slot));
    session.undoStack().undo();

    canvas->workOnPhoto(slot);
    press(middle);
    moveTo(middle + QPointF(40, 3));
    ASSERT_TRUE(session.perform(removePieces(session.sketch(), std::span(&slot, 1)), "Delete"));
    EXPECT_TRUE(page().preview().isEmpty());
    release(middle + QPointF(40, 3));
    EXPECT_EQ(session.sketch().pieces.size(), 0);
}

TEST_F(PhotoOnPageTest, DragMakesNoSlotPictureAnew) {
    canvas->workOnPhoto(slot);
    page().repaint();
    const int before = page().slotPictures().made();
    press(middleOf(slot));
    for (int i = 1; i < 20; ++i) {
        moveTo(middleOf(slot) + QPointF(3.0 * i, i));
        page().repaint();
    }
    EXPECT_EQ(page().slotPictures().made(), before);
    release(middleOf(slot) + QPointF(60, 20));
}

TEST_F(PhotoOnPageTest, WheelAndKeysZoomAndMoveInBursts) {
    canvas->workOnPhoto(slot);
    wheel(middleOf(slot), 2);
    EXPECT_NEAR(placement().crop.zoom, 1.21e6, 10);
    EXPECT_EQ(undoSteps(), 1);
    key(Qt::Key_Right);
    key(Qt::Key_Right);
    EXPECT_EQ(undoSteps(), 2);
    EXPECT_EQ(piece(slot).place.x, inches(4));
}

TEST_F(PhotoOnPageTest, DragInATurnedSlotFollowsThePointer) {
    Edit turn;
    Piece turned = piece(slot);
    turned.rotation = Angle::degrees(90);
    turn.pieces[slot] = turned;
    ASSERT_TRUE(session.perform(turn, "Turn"));
    const Placement before = placement();
    canvas->workOnPhoto(slot);
    // Down on the page is to the right in a slot that is turned to the right.
    drag(middleOf(slot), middleOf(slot) + QPointF(0, 96 * page().zoom()));
    EXPECT_NEAR(placement().crop.centreX, before.crop.centreX - 1e6 / 8, 400);
}

TEST_F(PhotoOnPageTest, PieceWithItsPhotoIsLiftedAsOnePicture) {
    session.clearSelection();
    press(middleOf(slot));
    for (int i = 1; i < 6; ++i) {
        moveTo(middleOf(slot) + QPointF(12.0 * i, 0));
        page().repaint();
    }
    EXPECT_GE(page().pictures().count(), 1u);
    const QPointF shifted = at({inches(5), inches(7)}) + QPointF(60, 0);
    EXPECT_EQ(page().grab().toImage().pixelColor(shifted.toPoint()), QColor(200, 0, 0));
    key(Qt::Key_Escape);
}

TEST_F(PhotoOnPageTest, PhotoThatIsNotThereIsGreyAndNothingBreaks) {
    service.copies.clear();
    page().slotPictures().useService(&service);
    session.clearSelection();
    Edit move;
    move.pieces[slot] = piece(slot);
    move.pieces[slot]->place.y = inches(3, 1, 4);
    ASSERT_TRUE(session.perform(move, "Move"));
    const QColor grey = colourAt({inches(5), inches(7)});
    EXPECT_EQ(grey.red(), 206);
}

}  // namespace
}  // namespace matwright::app
