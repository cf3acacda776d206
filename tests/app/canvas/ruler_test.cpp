// SPDX-License-Identifier: MIT
#include "app/canvas/ruler.h"

#include <gtest/gtest.h>

namespace matwright::app {
namespace {

TEST(RulerScaleTest, SixteenthsAreShownWhereThereIsRoom) {
    EXPECT_EQ(rulerScaleFor(Scale::SixteenthInch, 96).tick, Length::inches(0, 1, 16));
    EXPECT_EQ(rulerScaleFor(Scale::SixteenthInch, 79).tick, Length::inches(0, 1, 8));
    EXPECT_EQ(rulerScaleFor(Scale::ThirtySecondInch, 200).tick, Length::inches(0, 1, 32));
    EXPECT_EQ(rulerScaleFor(Scale::WholeMillimetre, 200).tick, Length::millimetres(1));
    EXPECT_EQ(rulerScaleFor(Scale::WholeMillimetre, 60).tick, Length::millimetres(5));
}

TEST(RulerScaleTest, FiguresStayApartAndStandOnStrokesAtEveryZoom) {
    for (const Scale scale : {Scale::EighthInch, Scale::SixteenthInch, Scale::ThirtySecondInch,
                              Scale::WholeMillimetre, Scale::HalfMillimetre}) {
        for (double ppi = 4.8; ppi < 4000; ppi *= 1.3) {
            const RulerScale ruler = rulerScaleFor(scale, ppi);
            EXPECT_GE(ruler.tick.toInches() * ppi, 5) << ppi;
            EXPECT_GE(ruler.figure.toInches() * ppi, 38) << ppi;
            EXPECT_TRUE(ruler.figure.isMultipleOf(ruler.tick)) << ppi;
            EXPECT_FALSE(ruler.levels.empty());
        }
    }
}

TEST(RulerTest, ThePointerMarkRepaintsAndTheExtentIsDrawn) {
    Ruler ruler(Qt::Horizontal);
    ruler.resize(400, Ruler::thickness());
    ruler.setView(Viewport(96.0 / double(Length::ticksPerInch), {10, 0}), Scale::SixteenthInch);
    const QImage plain = ruler.grab().toImage();
    ruler.setExtent(Interval{Length::inches(1), Length::inches(2)});
    const QImage banded = ruler.grab().toImage();
    EXPECT_NE(plain.pixelColor(150, 3), banded.pixelColor(150, 3));
    EXPECT_EQ(plain.pixelColor(350, 3), banded.pixelColor(350, 3));
    ruler.setExtent(std::nullopt);
    ruler.setPointer(300);
    const QImage pointed = ruler.grab().toImage();
    EXPECT_NE(plain.pixelColor(300, 22), pointed.pixelColor(300, 22));
    ruler.setPointer(std::nullopt);
    EXPECT_EQ(plain, ruler.grab().toImage());
}

TEST(RulerTest, CountsFromTheLeftEdgeOfEachPage) {
    constexpr int pixelsPerInch = 96;
    constexpr int secondPage = 600;  // 6 1/4 in
    Ruler ruler(Qt::Horizontal);
    ruler.resize(secondPage + 500, Ruler::thickness());
    ruler.setView(Viewport(pixelsPerInch / double(Length::ticksPerInch), {0, 0}),
                  Scale::SixteenthInch);
    const QImage onePage = ruler.grab().toImage();
    ruler.setPages({Length(), Length::inches(6, 1, 4)});
    const QImage twoPages = ruler.grab().toImage();
    const auto part = [](const QImage& image, int from, int to) {
        return image.copy(from, 0, to - from, image.height());
    };
    // Without the half of the 0 that reaches over the edge.
    EXPECT_EQ(part(twoPages, secondPage + 40, secondPage + 440), part(onePage, 40, 440));
    EXPECT_EQ(part(twoPages, 0, secondPage - 100), part(onePage, 0, secondPage - 100));
    EXPECT_NE(twoPages, onePage);
}

}  // namespace
}  // namespace matwright::app
