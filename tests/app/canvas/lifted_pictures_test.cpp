// SPDX-License-Identifier: MIT
#include "app/canvas/lifted_pictures.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>
#include <QPainter>
#include <algorithm>
#include <cstdlib>

#include "app/canvas/page_painter.h"

namespace matwright::app {
namespace {

Length inches(std::int64_t whole, std::int64_t numerator = 0, std::int64_t denominator = 1) {
    return Length::inches(whole, numerator, denominator);
}

// The largest difference of one channel of one pixel.
int worstDifference(const QImage& a, const QImage& b) {
    int worst = a.size() == b.size() ? 0 : 256;
    for (int y = 0; worst < 256 && y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x) {
            const QColor p = a.pixelColor(x, y);
            const QColor q = b.pixelColor(x, y);
            worst = std::max({worst, std::abs(p.red() - q.red()), std::abs(p.green() - q.green()),
                              std::abs(p.blue() - q.blue())});
        }
    }
    return worst;
}

// Blended twice instead of once; anything in another place differs by far more.
constexpr int rounding = 6;

class LiftedPicturesTest : public testing::Test {
  protected:
    LiftedPicturesTest() {
        m_piece.place = {inches(1), inches(1)};
        m_piece.size = {inches(3), inches(2)};
        m_piece.rotation = Angle::degrees(10);
    }

    QImage shown(double ratio = 1) {
        return painted(ratio, [this](QPainter& painter) {
            m_pictures.paint(painter, 1, m_piece, 4, m_viewport, m_labels);
        });
    }
    QImage drawn(double ratio = 1) {
        return painted(ratio, [this](QPainter& painter) {
            paintPiece(painter, m_piece, 4, m_viewport, m_labels);
        });
    }
    template <typename Paint>
    static QImage painted(double ratio, const Paint& paint) {
        QImage image((QSizeF(400, 400) * ratio).toSize(), QImage::Format_RGB32);
        image.setDevicePixelRatio(ratio);
        image.fill(Qt::white);
        QPainter painter(&image);
        paint(painter);
        return image;
    }

    Piece m_piece;
    Viewport m_viewport{48.0 / static_cast<double>(Length::ticksPerInch), {20, 10}};
    LabelStyle m_labels = labelStyleFor(QApplication::font(), Scale::SixteenthInch);
    LiftedPictures m_pictures;
};

TEST_F(LiftedPicturesTest, APieceThatOnlyMovesIsDrawnOnceAndPutDownAsAPicture) {
    shown();
    EXPECT_EQ(m_pictures.count(), 0u);
    for (int i = 0; i < 5; ++i) {
        m_piece.place.x += inches(0, 1, 2);  // 24 whole pixels
        EXPECT_LE(worstDifference(shown(), drawn()), rounding) << i;
        EXPECT_EQ(m_pictures.count(), 1u);
    }
}

TEST_F(LiftedPicturesTest, BetweenPixelsItStandsOnTheNearestOne) {
    shown();
    shown();
    const QImage start = shown();
    m_piece.place.x += inches(0, 1, 120);  // 0.4 pixels
    EXPECT_EQ(shown(), start);
    m_piece.place.x += inches(0, 1, 240);  // 0.6
    const QImage next = shown();
    EXPECT_EQ(next.copy(1, 0, 399, 400), start.copy(0, 0, 399, 400));
}

TEST_F(LiftedPicturesTest, APieceThatChangesIsDrawnAnewEachTime) {
    for (int i = 0; i < 5; ++i) {
        m_piece.size.width += inches(0, 1, 4);
        EXPECT_LE(worstDifference(shown(), drawn()), rounding) << i;
        EXPECT_EQ(m_pictures.count(), 0u);
    }
}

TEST_F(LiftedPicturesTest, AnotherZoomOrDensityDrawsItAnew) {
    shown();
    shown();
    m_viewport = m_viewport.zoomedTo(m_viewport.pixelsPerTick() * 1.5, {100, 100});
    EXPECT_LE(worstDifference(shown(), drawn()), rounding);
    EXPECT_LE(worstDifference(shown(), drawn()), rounding);
    EXPECT_LE(worstDifference(shown(2), drawn(2)), rounding);
}

TEST_F(LiftedPicturesTest, AHugePieceIsNotKept) {
    m_viewport = m_viewport.zoomedTo(m_viewport.pixelsPerTick() * 30, {100, 100});
    shown();
    EXPECT_LE(worstDifference(shown(), drawn()), rounding);
    EXPECT_EQ(m_pictures.count(), 0u);
}

TEST_F(LiftedPicturesTest, ClearingForgetsThemAll) {
    shown();
    shown();
    ASSERT_EQ(m_pictures.count(), 1u);
    m_pictures.clear();
    EXPECT_EQ(m_pictures.count(), 0u);
}

}  // namespace
}  // namespace matwright::app
