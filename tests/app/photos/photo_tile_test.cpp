// SPDX-License-Identifier: MIT
#include "app/photos/photo_tile.h"

#include <gtest/gtest.h>

#include <QPainter>

#include "app/photos/rasters.h"

namespace matwright::app {
namespace {

QImage painted(const PhotoTile& tile, QSize size) {
    QImage image(size, QImage::Format_RGB32);
    image.fill(Qt::magenta);
    QPainter painter(&image);
    tile.paint(painter, QRect({}, size));
    return image;
}

QImage halves() {  // left black, right white
    QImage image(400, 300, QImage::Format_RGB32);
    image.fill(Qt::black);
    QPainter(&image).fillRect(200, 0, 200, 300, Qt::white);
    return image;
}

TEST(PhotoTile, MovingWithinReachMakesNothingAnew) {
    PhotoTile tile;
    tile.setCopy(halves(), {400, 300});
    tile.prepare(QTransform(), 0, {200, 200}, 1);
    EXPECT_EQ(tile.renders(), 1);
    tile.prepare(QTransform::fromTranslate(-60, -30), 0, {200, 200}, 1);
    EXPECT_EQ(tile.renders(), 1);
    const QImage image = painted(tile, {200, 200});
    EXPECT_EQ(image.pixelColor(138, 20), QColor(Qt::black));
    EXPECT_EQ(image.pixelColor(142, 20), QColor(Qt::white));
}

TEST(PhotoTile, AnotherZoomTurnOrToneMakesItAnew) {
    PhotoTile tile;
    tile.setCopy(halves(), {400, 300});
    tile.prepare(QTransform(), 0, {200, 200}, 1);
    tile.prepare(QTransform::fromScale(0.5, 0.5), 0, {200, 200}, 1);
    EXPECT_EQ(tile.renders(), 2);
    tile.prepare(QTransform::fromScale(0.5, 0.5), 1, {200, 200}, 1);
    EXPECT_EQ(tile.renders(), 3);
    ToneMap map{};
    for (auto& curve : map.curve) {
        curve.fill(99);
    }
    tile.setTone(map);
    tile.prepare(QTransform::fromScale(0.5, 0.5), 1, {200, 200}, 1);
    EXPECT_EQ(tile.renders(), 4);
    EXPECT_EQ(painted(tile, {200, 200}).pixelColor(50, 50), QColor(99, 99, 99));
}

TEST(PhotoTile, QuarterTurnsGoToTheRight) {
    PhotoTile tile;
    tile.setCopy(halves(), {400, 300});
    // After one quarter to the right the left side is at the top.
    tile.prepare(QTransform(), 1, {300, 400}, 1);
    EXPECT_EQ(painted(tile, {300, 400}).pixelColor(150, 190), QColor(Qt::black));
    EXPECT_EQ(painted(tile, {300, 400}).pixelColor(150, 210), QColor(Qt::white));
    tile.prepare(QTransform(), 3, {300, 400}, 1);
    EXPECT_EQ(painted(tile, {300, 400}).pixelColor(150, 190), QColor(Qt::white));
    tile.prepare(QTransform(), 2, {400, 300}, 1);
    EXPECT_EQ(painted(tile, {400, 300}).pixelColor(190, 150), QColor(Qt::white));
}

TEST(PhotoTile, ToneLeavesTheSurroundingsAlone) {
    PhotoTile tile;
    tile.setAround(QColor(10, 200, 30));
    tile.setCopy(halves(), {400, 300});
    ToneMap map{};
    for (auto& curve : map.curve) {
        curve.fill(99);
    }
    tile.setTone(map);
    tile.prepare(QTransform::fromTranslate(50, 50), 0, {200, 200}, 1);
    const QImage image = painted(tile, {200, 200});
    EXPECT_EQ(image.pixelColor(20, 20), QColor(10, 200, 30));
    EXPECT_EQ(image.pixelColor(100, 100), QColor(99, 99, 99));
}

TEST(Rasters, ImagesOfAnyWidthComeBackAsTheyWere) {
    Raster raster{{5, 3}, {}};
    for (int i = 0; i < 45; ++i) {
        raster.pixels.push_back(static_cast<std::uint8_t>(i * 5));
    }
    EXPECT_EQ(rasterOf(imageOf(raster)), raster);
}

TEST(Rasters, WhatIsTransparentLiesOnWhite) {
    QImage image(1, 1, QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    EXPECT_EQ(rasterOf(image).pixels, (std::vector<std::uint8_t>{255, 255, 255}));
}

}  // namespace
}  // namespace matwright::app
