// SPDX-License-Identifier: MIT
#include "app/rendering/paint.h"

#include <gtest/gtest.h>

#include <QPainter>
#include <cmath>

namespace matwright::app {
namespace {

constexpr Colour black{0, 0, 0};

Path box(double left, double top, double right, double bottom) {
    Path path;
    const double inch = Length::ticksPerInch;
    path.start = {left * inch, top * inch};
    path.lineTo({right * inch, top * inch});
    path.lineTo({right * inch, bottom * inch});
    path.lineTo({left * inch, bottom * inch});
    path.closed = true;
    return path;
}

Path line(double x0, double y0, double x1, double y1) {
    const double inch = Length::ticksPerInch;
    Path path;
    path.start = {x0 * inch, y0 * inch};
    path.lineTo({x1 * inch, y1 * inch});
    return path;
}

Drawing squareInches(std::vector<DrawingItem> items, std::int64_t side = 1) {
    Drawing drawing;
    drawing.size = {Length::inches(side), Length::inches(side)};
    drawing.layers.push_back({"all", "All", std::move(items)});
    return drawing;
}

int grey(const QImage& image, int x, int y) {
    return qGray(image.pixel(x, y));
}

TEST(Paint, AnImageHasTheSizeAndDensityOfTheDrawing) {
    Drawing drawing = squareInches({});
    drawing.size = {Length::inches(8, 1, 2), Length::millimetres(297)};
    const QImage image = imageOf(drawing, 100);
    EXPECT_EQ(image.width(), 850);
    EXPECT_EQ(image.height(), 1170);  // 1169.29 rounded up
    EXPECT_NEAR(image.dotsPerMeterX() * 0.0254, 100, 0.02);
}

TEST(Paint, AnImageBeyondTheLimitIsNull) {
    EXPECT_TRUE(imageOf(squareInches({}, 100), 300).isNull());
    EXPECT_TRUE(imageOf(squareInches({}), std::nan("")).isNull());
    EXPECT_FALSE(imageOf(squareInches({}, 100), 100).isNull());
}

TEST(Paint, AFillCoversItsPixelsAndNoOthers) {
    const QImage image =
        imageOf(squareInches({PathItem{{box(0.25, 0.5, 0.75, 0.9)}, {}, black}}), 100);
    for (int y = 0; y < 100; ++y) {
        for (int x = 0; x < 100; ++x) {
            const bool inside = x >= 25 && x < 75 && y >= 50 && y < 90;
            ASSERT_EQ(grey(image, x, y), inside ? 0 : 255) << x << "," << y;
        }
    }
}

// A line of 1/1,000 in at 100 px an inch: a tenth of a pixel wide.
QImage previewOf(const DrawingItem& item, double leastWidth) {
    QImage image(100, 100, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(100.0 / Length::ticksPerInch, 100.0 / Length::ticksPerInch);
    paintPreview(painter, squareInches({item}), leastWidth);
    return image;
}

TEST(Paint, APreviewKeepsHairlinesVisible) {
    const Stroke hairline{Length::inches(0, 1, 1000), black, {}};
    const PathItem item{{line(0.2, 0.505, 0.8, 0.505)}, hairline, {}};
    EXPECT_GT(grey(previewOf(item, 0), 50, 50), 200);
    const QImage image = previewOf(item, 1);
    EXPECT_LE(grey(image, 50, 50), 5);
    EXPECT_EQ(grey(image, 50, 49), 255);
    EXPECT_EQ(grey(image, 50, 51), 255);
}

TEST(Paint, APreviewKeepsWideLinesAsTheyAre) {
    const Stroke wide{Length::inches(0, 1, 10), black, {}};
    const PathItem item{{line(0.2, 0.5, 0.8, 0.5)}, wide, {}};
    EXPECT_EQ(previewOf(item, 0), previewOf(item, 1));
}

TEST(Paint, APreviewKeepsDashesApart) {
    const Length dash = Length::inches(0, 1, 1000);
    const PathItem item{{line(0, 0.505, 1, 0.505)}, Stroke{dash, black, {dash, dash}}, {}};
    const QImage image = previewOf(item, 1);
    int dark = 0;
    int light = 0;
    for (int x = 0; x < 100; ++x) {
        dark += grey(image, x, 50) < 60 ? 1 : 0;
        light += grey(image, x, 50) > 195 ? 1 : 0;
    }
    EXPECT_GE(dark, 40);
    EXPECT_GE(light, 40);
}

TEST(Paint, NestedOutlinesLeaveAHole) {
    const PathItem frame{{box(0.1, 0.1, 0.9, 0.9), box(0.3, 0.3, 0.7, 0.7)}, {}, black};
    const QImage image = imageOf(squareInches({frame}), 100);
    EXPECT_EQ(grey(image, 20, 50), 0);
    EXPECT_EQ(grey(image, 50, 50), 255);
}

TEST(Paint, AStrokeIsAsWideAsItSaysAndEndsAtItsPoints) {
    const Stroke stroke{Length::inches(0, 1, 10), black, {}};
    const QImage image =
        imageOf(squareInches({PathItem{{line(0.2, 0.5, 0.8, 0.5)}, stroke, {}}}), 100);
    EXPECT_EQ(grey(image, 50, 44), 255);
    EXPECT_EQ(grey(image, 50, 45), 0);
    EXPECT_EQ(grey(image, 50, 54), 0);
    EXPECT_EQ(grey(image, 50, 55), 255);
    EXPECT_EQ(grey(image, 19, 50), 255);  // butt ends, not square ones
    EXPECT_EQ(grey(image, 20, 50), 0);
    EXPECT_EQ(grey(image, 79, 50), 0);
    EXPECT_EQ(grey(image, 80, 50), 255);
}

TEST(Paint, DashesAreAsLongAsTheySay) {
    // An odd list repeats itself: 0.2 on, 0.1 off, 0.1 on, 0.2 off, 0.1 on, 0.1 off.
    const Length tenth = Length::inches(0, 1, 10);
    const Stroke stroke{Length::inches(0, 1, 20), black, {tenth * 2, tenth, tenth}};
    const QImage image = imageOf(squareInches({PathItem{{line(0, 0.5, 1, 0.5)}, stroke, {}}}), 100);
    const bool on[] = {true, true, false, true, false, false, true, false, true, true};
    for (int tenths = 0; tenths < 10; ++tenths) {
        for (int x : {tenths * 10 + 1, tenths * 10 + 8}) {
            EXPECT_EQ(grey(image, x, 50), on[tenths] ? 0 : 255) << x;
        }
    }
}

TEST(Paint, AMitredCornerIsSharp) {
    const Stroke stroke{Length::inches(0, 2, 10), black, {}};
    const QImage image =
        imageOf(squareInches({PathItem{{box(0.3, 0.3, 0.7, 0.7)}, stroke, {}}}), 100);
    EXPECT_EQ(grey(image, 20, 20), 0);
    EXPECT_EQ(grey(image, 79, 79), 0);
    EXPECT_EQ(grey(image, 19, 19), 255);
}

TEST(Paint, ThePainterComesBackAsItWas) {
    QImage image(10, 10, QImage::Format_RGB32);
    QPainter painter(&image);
    painter.scale(0.001, 0.001);
    painter.setPen(Qt::red);
    const QTransform before = painter.transform();
    paintDrawing(painter, squareInches({PathItem{{box(0, 0, 1, 1)}, {}, black}}));
    paintItem(painter, TextItem{{0, 0}, Length::points(10), "a", {}, {}, true, black});
    EXPECT_EQ(painter.transform(), before);
    EXPECT_EQ(painter.pen().color(), QColor(Qt::red));
}

// Columns that hold any ink.
std::pair<double, double> inkedInches(const QImage& image, double ppi) {
    int first = image.width();
    int last = -1;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (grey(image, x, y) < 200) {
                first = std::min(first, x);
                last = std::max(last, x);
            }
        }
    }
    return {first / ppi, (last + 1) / ppi};
}

class TextAtResolution : public testing::TestWithParam<double> {};

TEST_P(TextAtResolution, IsAsWideAsAtEveryOther) {
    const double inch = Length::ticksPerInch;
    const std::string text = "Trim 3 1/2 x 5 in, mat 1/8 in";
    const Drawing drawing = squareInches(
        {TextItem{{0.25 * inch, 2 * inch}, Length::points(11), text, {}, {}, false, black}}, 4);
    const auto [left, right] = inkedInches(imageOf(drawing, GetParam()), GetParam());
    const double width = paintedTextWidth(text, Length::points(11), false) / inch;
    EXPECT_NEAR(left, 0.25, 0.02);
    EXPECT_NEAR(right, 0.25 + width, 0.02);
}

INSTANTIATE_TEST_SUITE_P(Ppi, TextAtResolution, testing::Values(72.0, 96.0, 300.0, 613.0));

TEST(Paint, AnchorsPlaceTheTextAboutItsPoint) {
    const double inch = Length::ticksPerInch;
    const Length height = Length::points(24);
    const double width = paintedTextWidth("HHHH", height, true) / inch;
    const std::pair<TextAnchor, double> cases[] = {
        {TextAnchor::Start, 2}, {TextAnchor::Middle, 2 - width / 2}, {TextAnchor::End, 2 - width}};
    for (const auto& [anchor, left] : cases) {
        const Drawing drawing = squareInches(
            {TextItem{{2 * inch, 2 * inch}, height, "HHHH", anchor, {}, true, black}}, 4);
        EXPECT_NEAR(inkedInches(imageOf(drawing, 200), 200).first, left, 0.04);
    }
}

TEST(Paint, TurnedTextRunsDownThePageAtAQuarterTurn) {
    const double inch = Length::ticksPerInch;
    const Drawing drawing = squareInches({TextItem{{2 * inch, 1 * inch},
                                                   Length::points(24),
                                                   "HHHH",
                                                   TextAnchor::Start,
                                                   Angle::degrees(90),
                                                   false,
                                                   black}},
                                         4);
    const auto [left, right] = inkedInches(imageOf(drawing, 200), 200);
    EXPECT_NEAR(left, 2, 0.02);                         // the baseline: letters stand to its right
    EXPECT_NEAR(right - left, 24 / 72.0 * 0.73, 0.02);  // cap height, from memory
}

TEST(Paint, PathsKeepTheirCurvesAndTicks) {
    Path path;
    path.start = {10, 20};
    path.lineTo({30, 20});
    path.curveTo({30, 40}, {20, 50}, {10, 50});
    path.closed = true;
    const QPainterPath painted = toPainterPath(path);
    EXPECT_EQ(painted.elementAt(0), QPointF(10, 20));
    EXPECT_EQ(painted.elementAt(1), QPointF(30, 20));
    EXPECT_TRUE(painted.elementAt(2).type == QPainterPath::CurveToElement);
    EXPECT_EQ(painted.currentPosition(), QPointF(10, 20));
    EXPECT_EQ(painted.boundingRect(), QRectF(10, 20, 20, 30));
}

}  // namespace
}  // namespace matwright::app
