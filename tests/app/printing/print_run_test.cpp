// SPDX-License-Identifier: MIT
#include "app/printing/print_run.h"

#include <gtest/gtest.h>

namespace matwright::app {
namespace {

TemplateChoice tiled(Scale scale = Scale::SixteenthInch) {
    TemplateChoice choice;
    choice.tiled = true;
    choice.look.scale = scale;
    return choice;
}

QString question(Length unreachable, const TemplateChoice& choice) {
    return marginQuestion(QStringLiteral("Kitchen"), unreachable, choice);
}

TEST(MarginQuestion, IsAskedOnlyWhereThePrinterReachesLessThanTheMargin) {
    const Length margin = tiled().printerMargin;
    const Length grain = Length::hundredthMillimetres(10);
    EXPECT_TRUE(question(Length(), tiled()).isEmpty());
    EXPECT_TRUE(question(margin, tiled()).isEmpty());
    EXPECT_TRUE(question(margin + grain, tiled()).isEmpty());
    EXPECT_FALSE(question(margin + grain + Length::fromTicks(1), tiled()).isEmpty());
}

TEST(MarginQuestion, IsNotAskedAboutAPageInOnePiece) {
    TemplateChoice whole = tiled();
    whole.tiled = false;
    EXPECT_TRUE(question(Length::inches(1), whole).isEmpty());
}

// 11.68 mm is what some printers leave free at the bottom: 0.46 in, so 1/2 in on the scale.
TEST(MarginQuestion, NamesAMarginThatIsEnoughInTheUnitInUse) {
    const Length bottom = Length::hundredthMillimetres(1168);
    EXPECT_TRUE(
        question(bottom, tiled()).contains(QStringLiteral("Set the printer margin to 1/2 in")))
        << question(bottom, tiled()).toStdString();
    const QString metric = question(bottom, tiled(Scale::WholeMillimetre));
    EXPECT_TRUE(metric.contains(QStringLiteral("to 12 mm"))) << metric.toStdString();
}

TEST(MarginQuestion, IsSettledByTheMarginItNames) {
    TemplateChoice choice = tiled();
    choice.printerMargin = Length::inches(0, 1, 2);
    EXPECT_TRUE(question(Length::hundredthMillimetres(1168), choice).isEmpty());
}

}  // namespace
}  // namespace matwright::app
