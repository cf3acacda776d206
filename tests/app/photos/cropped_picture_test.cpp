// SPDX-License-Identifier: MIT
#include "app/photos/cropped_picture.h"

#include <gtest/gtest.h>

namespace matwright::app {
namespace {

constexpr PixelSize upright{400, 300};
const Size square{Length::inches(3), Length::inches(3)};

// Each quarter of the picture in a colour of its own.
QImage quarters() {
    QImage image(upright.width, upright.height, QImage::Format_RGB32);
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const bool right = x >= image.width() / 2;
            const bool low = y >= image.height() / 2;
            image.setPixel(
                x, y, low ? (right ? 0xFF404040 : 0xFF0000FF) : (right ? 0xFF00FF00 : 0xFFFF0000));
        }
    }
    return image;
}

QRgb at(const QImage& image, double x, double y) {
    return image.pixel(static_cast<int>(x * image.width()), static_cast<int>(y * image.height()));
}

TEST(CroppedPicture, ShowsTheMiddleAtFirst) {
    const QImage shown = croppedPicture(quarters(), Crop(), upright, square, 150);
    EXPECT_EQ(shown.size(), QSize(150, 150));
    EXPECT_EQ(at(shown, 0.25, 0.25), 0xFFFF0000);
    EXPECT_EQ(at(shown, 0.75, 0.25), 0xFF00FF00);
    EXPECT_EQ(at(shown, 0.25, 0.75), 0xFF0000FF);
    EXPECT_EQ(at(shown, 0.75, 0.75), 0xFF404040);
}

TEST(CroppedPicture, TurnsByQuartersToTheRight) {
    // Of a quarter turn to the right the lower left corner comes to the upper left.
    const QRgb upperLeft[] = {0xFFFF0000, 0xFF0000FF, 0xFF404040, 0xFF00FF00};
    for (int turns = 0; turns < 4; ++turns) {
        Crop crop;
        crop.quarterTurns = turns;
        const QImage shown = croppedPicture(quarters(), crop, upright, square, 150);
        EXPECT_EQ(at(shown, 0.25, 0.25), upperLeft[turns]) << turns;
        EXPECT_EQ(at(shown, 0.75, 0.25), upperLeft[(turns + 3) % 4]) << turns;
    }
}

TEST(CroppedPicture, ZoomsIntoACorner) {
    Crop crop;
    crop.zoom = 3 * Crop::one;
    crop.centreX = 0;
    crop.centreY = 0;
    const QImage shown = croppedPicture(quarters(), crop, upright, square, 90);
    for (const double v : {0.1, 0.5, 0.9}) {
        EXPECT_EQ(at(shown, v, v), 0xFFFF0000);
    }
}

TEST(CroppedPicture, IsTheSameOfASmallerCopy) {
    const QImage whole = croppedPicture(quarters(), Crop(), upright, square, 60);
    const QImage small = quarters().scaled(200, 150);
    const QImage less = croppedPicture(small, Crop(), upright, square, 60);
    for (const double x : {0.2, 0.8}) {
        for (const double y : {0.2, 0.8}) {
            EXPECT_EQ(at(whole, x, y), at(less, x, y));
        }
    }
}

TEST(CroppedPicture, LeavesNoWhiteWhenStraightened) {
    QImage red(upright.width, upright.height, QImage::Format_RGB32);
    red.fill(Qt::red);
    for (const int degrees : {5, 20, 340, 355}) {
        Crop crop;
        crop.straighten = Angle::degrees(degrees);
        const QImage shown = croppedPicture(red, crop, upright, square, 120);
        for (const double x : {0.02, 0.5, 0.98}) {
            for (const double y : {0.02, 0.5, 0.98}) {
                EXPECT_EQ(at(shown, x, y), QColor(Qt::red).rgb()) << degrees;
            }
        }
    }
}

}  // namespace
}  // namespace matwright::app
