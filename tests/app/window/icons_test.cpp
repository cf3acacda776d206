// SPDX-License-Identifier: MIT
#include "app/window/icons.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QGuiApplication>
#include <QImage>

#include "app/window/icon_shapes.h"

namespace matwright::app {
namespace {

// Where it covers a pixel at all, the colour is the one wanted; gives how much is covered, 0 to 1.
double coverInColour(const QImage& image, const QColor& wanted) {
    double cover = 0;
    const double pixels = image.width() * image.height();
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const QColor at = image.pixelColor(x, y);
            cover += double(at.alphaF()) / pixels;
            if (at.alpha() > 250) {
                EXPECT_EQ(at.rgb(), wanted.rgb());
            }
        }
    }
    return cover;
}

TEST(Icons, AreThereForEveryDrawing) {
    const QDir drawings(QStringLiteral(ICONS_FOLDER));
    const QStringList files = drawings.entryList({QStringLiteral("*.svg")});
    EXPECT_GT(files.size(), 15);
    for (const QString& file : files) {
        EXPECT_FALSE(iconShapes(QFileInfo(file).baseName().toStdString()).empty())
            << file.toStdString();
    }
}

TEST(Icons, OfAnUnknownNameAreEmpty) {
    EXPECT_TRUE(lineIcon(QStringLiteral("no such drawing")).isNull());
}

TEST(Icons, AreLinesInThePalettesTextColourAtEverySize) {
    const QColor ink = QGuiApplication::palette().color(QPalette::ButtonText);
    for (const int side : {16, 24, 48, 96}) {
        const QImage image = lineIcon(QStringLiteral("save")).pixmap(side).toImage();
        ASSERT_EQ(image.width(), side);
        const double cover = coverInColour(image, ink);
        // Strokes of 1.6 in a square of 24: about 90 long in all, so near a quarter of it.
        EXPECT_GT(cover, 0.15) << side;
        EXPECT_LT(cover, 0.35) << side;
    }
}

TEST(Icons, KeepTheHolesBetweenTheirLines) {
    const QImage image = lineIcon(QStringLiteral("photo")).pixmap(240).toImage();
    EXPECT_EQ(image.pixelColor(50, 60).alpha(), 0);      // inside the frame, beside the sun
    EXPECT_EQ(image.pixelColor(85, 100).alpha(), 0);     // inside the sun
    EXPECT_GT(image.pixelColor(30, 120).alpha(), 250);   // on the frame
    EXPECT_GT(image.pixelColor(102, 100).alpha(), 250);  // on the rim of the sun
}

TEST(Icons, OfTheProgramIsInItsOwnColours) {
    const QImage image = programIcon().pixmap(64, 64).toImage();
    EXPECT_EQ(image.pixelColor(49, 20), QColor(0x7d, 0x9a, 0x6b));  // the block at the right
    EXPECT_EQ(image.pixelColor(0, 0).alpha(), 0);
}

}  // namespace
}  // namespace matwright::app
