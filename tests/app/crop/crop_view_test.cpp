// SPDX-License-Identifier: MIT
#include "app/crop/crop_view.h"

#include <cmath>

#include "tests/app/crop/crop_fixture.h"

namespace matwright::app {
namespace {

class CropViewTest : public CropFixture {};

// The frame is 6 x 4 in, the photo 4:3: as wide as the frame, half an inch too tall.
TEST_F(CropViewTest, DraggingMovesThePhotoUnderTheFrameAndIsOneStep) {
    open();
    const double pixelsPerInch = view().frame().pixelsPerTick * Length::ticksPerInch;
    const Crop before = crop();
    drag(middle(), middle() + QPointF(0, 0.1 * pixelsPerInch));
    EXPECT_EQ(steps(), 1u);
    // 1/10 in down is 1/45 of the photo's 4 1/2 in upwards.
    EXPECT_NEAR(crop().centreY, before.centreY - 1e6 / 45, 2);
    EXPECT_EQ(crop().centreX, before.centreX);
    EXPECT_EQ(crop().zoom, Crop::one);
}

TEST_F(CropViewTest, PhotoStopsAtItsEdges) {
    open();
    drag(middle(), middle() + QPointF(300, 900));
    // The shown part is 8/9 of the height: its middle stops at 4/9.
    EXPECT_NEAR(crop().centreY, 4e6 / 9, 2);
    EXPECT_EQ(crop().centreX, Crop::one / 2);
}

TEST_F(CropViewTest, EscDuringADragPutsThePhotoBackExactly) {
    open();
    const Crop before = crop();
    press(middle());
    moveTo(middle() + QPointF(3, 40));
    ASSERT_NE(crop(), before);
    key(Qt::Key_Escape);
    EXPECT_EQ(crop(), before);
    EXPECT_EQ(steps(), 0u);
    EXPECT_TRUE(window->isVisible());
    moveTo(middle() + QPointF(3, 80));
    EXPECT_EQ(crop(), before);
}

TEST_F(CropViewTest, WheelZoomsAboutThePointer) {
    open();
    const QPointF at = middle() + QPointF(120, -70);
    const auto under = [&] {
        return photoToView(crop(), task().subject, {}, view().frame()).inverted().map(at);
    };
    const QPointF before = under();
    wheel(at, 3);
    EXPECT_NEAR(crop().zoom, 1e6 * std::pow(CropView::zoomPerNotch, 3), 4);
    EXPECT_NEAR(under().x(), before.x(), 0.05);
    EXPECT_NEAR(under().y(), before.y(), 0.05);
    EXPECT_EQ(steps(), 1u);
}

TEST_F(CropViewTest, HandleStraightensByTheAngleItIsDragged) {
    open();
    const QPointF centre = view().frame().print.center();
    const QPointF from = view().handleAt();
    const double radius = from.x() - centre.x();
    const double turn = 3 * M_PI / 180;
    drag(from, centre + QPointF(std::cos(turn), std::sin(turn)) * radius);
    EXPECT_EQ(crop().straighten, Angle::degrees(3));
    EXPECT_EQ(steps(), 1u);
    // The handle stands where the pointer is.
    EXPECT_NEAR(QLineF(view().handleAt(), centre).length(), radius, 1e-6);
    EXPECT_GT(view().handleAt().y(), centre.y());
}

TEST_F(CropViewTest, StraighteningStopsAt45Degrees) {
    open();
    const QPointF centre = view().frame().print.center();
    drag(view().handleAt(), centre + QPointF(-5, 200));
    EXPECT_EQ(crop().straighten, Angle::degrees(45));
}

TEST_F(CropViewTest, DragMakesNoPictureAnew) {
    open();
    view().zoomBy(2);
    view().repaint();
    const int before = view().tile().renders();
    press(middle());
    for (int i = 0; i < 40; ++i) {
        moveTo(middle() + QPointF(2 * i, i));
        view().repaint();
    }
    release(middle() + QPointF(80, 40));
    EXPECT_EQ(view().tile().renders(), before);
}

// Every place in the window shows the pixel of the photo that the arithmetic says.
TEST_F(CropViewTest, WindowShowsThePartThatWindowInSays) {
    open();
    view().turnRight();
    view().zoomBy(1.7);
    view().turnBy(4000);
    view().setLines(CropView::Lines::None);
    const QImage shown = view().grab().toImage();
    const QTransform toPhoto = photoToView(crop(), task().subject, {}, view().frame()).inverted();
    const QRectF frame = view().frame().window;
    for (const QPointF share : {QPointF(0.1, 0.1), {0.5, 0.5}, {0.9, 0.2}, {0.3, 0.85}}) {
        const QPoint at =
            (frame.topLeft() + QPointF(frame.width() * share.x(), frame.height() * share.y()))
                .toPoint();
        const QPointF turned = toPhoto.map(QPointF(at) + QPointF(0.5, 0.5));
        // One quarter to the right: what was at the left is at the top.
        const QPointF upright(turned.y(), 3000 - turned.x());
        const QColor colour = shown.pixelColor(at);
        EXPECT_NEAR(colour.red(), upright.x() * 255 / 4000, 3);
        EXPECT_NEAR(colour.green(), upright.y() * 255 / 3000, 3);
    }
}

TEST_F(CropViewTest, WhatIsOutsideOfTheFrameIsFadedAndTheTrimmersPartIsHatched) {
    CropTask trimmed = task();
    trimmed.subject.trim = {Length::inches(5), Length::inches(3)};
    trimmed.start.crop = startingCrop(trimmed.subject.upright, trimmed.subject.trim);
    trimmed.start.border = Length::inches(0, 1, 4);
    open(trimmed);
    view().setLines(CropView::Lines::None);
    const CropFrame frame = view().frame();
    const QImage shown = view().grab().toImage();
    EXPECT_NEAR(frame.print.width() / frame.trim.width(), 6.0 / 5, 1e-9);
    EXPECT_NEAR(frame.trim.width() / frame.window.width(), 5 / 4.5, 1e-9);
    const QPointF inBorder((frame.trim.left() + frame.window.left()) / 2, frame.trim.center().y());
    EXPECT_EQ(shown.pixelColor(inBorder.toPoint()), QColor(Qt::white));
    const QPointF cut((frame.print.left() + frame.trim.left()) / 2, frame.print.center().y());
    EXPECT_GT(shown.pixelColor(cut.toPoint()).lightness(), 90);
    int inked = 0;
    for (int i = 0; i < 16; ++i) {
        inked += shown.pixelColor(cut.toPoint() + QPoint(i, 0)).lightness() < 170 ? 1 : 0;
    }
    EXPECT_GT(inked, 0);
    EXPECT_LT(inked, 12);
}

}  // namespace
}  // namespace matwright::app
