// SPDX-License-Identifier: MIT
#include "app/canvas/overlay.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>
#include <QPainter>

#include "tests/support/contrast.h"

namespace matwright::app {
namespace {

using test::contrast;
using test::luminance;

const QRectF bounds(0, 0, 400, 300);

TEST(OverlayTest, ChipsNeverLeaveTheView) {
    for (const QPointF at : {QPointF(-50, -50), QPointF(400, 300), QPointF(1e6, 150),
                             QPointF(200, -1e6), QPointF(0, 300)}) {
        Overlay overlay(bounds, QApplication::font());
        overlay.addChip("1/4 in gutter", at, Overlay::Chip::Word);
        EXPECT_TRUE(bounds.contains(overlay.chipRects().front())) << at.x() << ", " << at.y();
    }
}

TEST(OverlayTest, ChipsAtOnePlaceStandApart) {
    Overlay overlay(bounds, QApplication::font());
    for (int i = 0; i < 5; ++i) {
        overlay.addChip("1/4", {200, 150}, Overlay::Chip::Figure);
    }
    const auto rects = overlay.chipRects();
    for (std::size_t i = 0; i < rects.size(); ++i) {
        for (std::size_t j = i + 1; j < rects.size(); ++j) {
            EXPECT_FALSE(rects[i].intersects(rects[j])) << i << " and " << j;
        }
    }
}

// Paints with and without and compares: nothing may be touched outside region().
TEST(OverlayTest, NothingIsPaintedOutsideTheRegion) {
    Overlay overlay(bounds, QApplication::font());
    overlay.addFrame({{40, 60}, {190, 20}, {210, 90}, {60, 130}}, Overlay::Ink::Selection);
    overlay.addLine({300.3, 10, 300.3, 290}, Overlay::Ink::Guide);
    overlay.addMeasure({{20, 200}, {90, 200}});
    overlay.addSquareHandle({40, 60}, 30);
    overlay.addRoundHandle({210, 90});
    overlay.addPadlock({250, 250});
    overlay.addBand({120, 150, 60, 60});
    overlay.addChip("left 1 1/2", {100, 260}, Overlay::Chip::Word);
    QImage image(400, 300, QImage::Format_RGB32);
    image.fill(Qt::yellow);
    {
        QPainter painter(&image);
        overlay.paint(painter);
    }
    int touched = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (image.pixelColor(x, y) != Qt::yellow) {
                ++touched;
                ASSERT_TRUE(overlay.region().contains(QPoint(x, y))) << x << ", " << y;
            }
        }
    }
    EXPECT_GT(touched, 1000);
}

// The darkest and the lightest pixel of a chip are its text and its ground (contrast formula:
// WCAG 2.2, contrast ratio and relative luminance).
TEST(OverlayTest, ChipTextHasAContrastOfAtLeast4Point5) {
    for (const auto kind : {Overlay::Chip::Word, Overlay::Chip::Figure}) {
        for (const QColor under : {QColor(Qt::white), QColor(Qt::black)}) {
            Overlay overlay(bounds, QApplication::font());
            overlay.addChip("HHHHHH", {200, 150}, kind);
            QImage image(400, 300, QImage::Format_RGB32);
            image.fill(under);
            QPainter painter(&image);
            overlay.paint(painter);
            painter.end();
            const QRect inner = overlay.chipRects().front().toAlignedRect().adjusted(4, 3, -4, -3);
            QColor dark = Qt::white;
            QColor light = Qt::black;
            for (int y = inner.top(); y <= inner.bottom(); ++y) {
                for (int x = inner.left(); x <= inner.right(); ++x) {
                    const QColor pixel = image.pixelColor(x, y);
                    dark = luminance(pixel) < luminance(dark) ? pixel : dark;
                    light = luminance(pixel) > luminance(light) ? pixel : light;
                }
            }
            EXPECT_GE(contrast(dark, light), 4.5);
        }
    }
}

}  // namespace
}  // namespace matwright::app
