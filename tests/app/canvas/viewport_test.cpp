// SPDX-License-Identifier: MIT
#include "app/canvas/viewport.h"

#include <gtest/gtest.h>

namespace matwright::app {
namespace {

constexpr double perTick(double pixelsPerInch) {
    return pixelsPerInch / static_cast<double>(Length::ticksPerInch);
}

TEST(ViewportTest, ThereAndBackIsTheSamePointAtEveryZoom) {
    const Point point{Length::fromTicks(1'234'567), Length::fromTicks(-7'654'321)};
    for (const double ppi : {4.8, 33.3, 96.0, 250.5, 3072.0}) {
        const Viewport viewport(perTick(ppi), {12.25, -700.5});
        EXPECT_EQ(viewport.toPage(viewport.toView(point)), point) << ppi;
    }
}

TEST(ViewportTest, APixelIsNotRoundedToAWholeOne) {
    const Viewport viewport(perTick(10), {0, 0});
    EXPECT_EQ(viewport.toPage(QPointF(0.5, 0.25)),
              (Point{Length::inches(0, 1, 20), Length::inches(0, 1, 40)}));
}

TEST(ViewportTest, ZoomingKeepsThePointUnderTheAnchor) {
    const Viewport before(perTick(96), {40, 30});
    const QPointF anchor(333.3, 217.9);
    const Viewport after = before.zoomedTo(perTick(500), anchor);
    const Point moved = before.toPage(anchor) - after.toPage(anchor);
    EXPECT_LE(abs(moved.x).ticks(), 1);
    EXPECT_LE(abs(moved.y).ticks(), 1);
    EXPECT_DOUBLE_EQ(after.pixelsPerInch(), 500);
}

TEST(ViewportTest, FittingCentresTheAreaWithItsPadding) {
    const Rect page = Rect::at({}, {Length::inches(12), Length::inches(6)});
    const Viewport viewport = Viewport::fitting(page, {640, 480}, 20);
    const QRectF shown = viewport.toView(page);
    EXPECT_NEAR(shown.left(), 20, 1e-6);
    EXPECT_NEAR(shown.right(), 620, 1e-6);
    EXPECT_NEAR(shown.center().y(), 240, 1e-6);
}

TEST(ViewportTest, FarPixelsStayWithinTheCoordinateLimit) {
    const Viewport viewport(perTick(5), {0, 0});
    const Point far = viewport.toPage(QPointF(1e12, -1e12));
    EXPECT_EQ(far.x, Length::coordinateLimit());
    EXPECT_EQ(far.y, -Length::coordinateLimit());
}

TEST(ViewportTest, AlignedOriginsStandOnDevicePixels) {
    const Viewport viewport = Viewport(perTick(96), {10.3, -4.45}).aligned(2);
    EXPECT_EQ(viewport.origin(), QPointF(10.5, -4.5));
}

}  // namespace
}  // namespace matwright::app
