// SPDX-License-Identifier: MIT
#include "app/settings/palettes.h"

#include <gtest/gtest.h>

#include <QMetaEnum>
#include <algorithm>

#include "tests/support/contrast.h"

namespace matwright::app {
namespace {

using test::contrast;

struct Pair {
    QPalette::ColorRole front;
    QPalette::ColorRole back;
};
// Every text role on every ground that widgets lay it on.
constexpr Pair textPairs[] = {
    {QPalette::WindowText, QPalette::Window},
    {QPalette::WindowText, QPalette::Base},
    {QPalette::WindowText, QPalette::Button},
    {QPalette::WindowText, QPalette::Midlight},
    {QPalette::Text, QPalette::Base},
    {QPalette::Text, QPalette::AlternateBase},
    {QPalette::Text, QPalette::Window},
    {QPalette::Text, QPalette::Button},
    {QPalette::ButtonText, QPalette::Button},
    {QPalette::ButtonText, QPalette::Window},
    {QPalette::ButtonText, QPalette::Midlight},
    {QPalette::BrightText, QPalette::Window},
    {QPalette::PlaceholderText, QPalette::Base},
    {QPalette::PlaceholderText, QPalette::Window},
    {QPalette::Link, QPalette::Base},
    {QPalette::Link, QPalette::Window},
    {QPalette::LinkVisited, QPalette::Base},
    {QPalette::LinkVisited, QPalette::Window},
    {QPalette::ToolTipText, QPalette::ToolTipBase},
    {QPalette::HighlightedText, QPalette::Highlight},
};

class Palettes : public testing::TestWithParam<bool> {
  protected:
    QPalette palette() const { return GetParam() ? darkPalette() : lightPalette(); }
    void expectContrast(QPalette::ColorGroup group, Pair pair, double least) const {
        const auto roles = QMetaEnum::fromType<QPalette::ColorRole>();
        EXPECT_GE(contrast(palette().color(group, pair.front), palette().color(group, pair.back)),
                  least)
            << roles.valueToKey(pair.front) << " on " << roles.valueToKey(pair.back);
    }
};

TEST(Contrast, IsTwentyOneForBlackOnWhiteAndOneForEqualColours) {
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21, 1e-9);
    EXPECT_EQ(contrast(Qt::red, Qt::red), 1);
    // #767676 is the palest grey that passes on white: WCAG 2.2, understanding document 1.4.3.
    EXPECT_GE(contrast(0x767676, Qt::white), 4.5);
    EXPECT_LT(contrast(0x777777, Qt::white), 4.5);
}

TEST_P(Palettes, TheEdgeOfFieldsStandsOutFromWindowAndField) {
    for (const auto ground : {QPalette::Window, QPalette::Base, QPalette::Button}) {
        EXPECT_GE(contrast(edgeColour(palette()), palette().color(ground)), 3.0) << ground;
    }
}

TEST_P(Palettes, ShowTextAtFourAndAHalfToOne) {
    for (const Pair pair : textPairs) {
        expectContrast(QPalette::Active, pair, 4.5);
        expectContrast(QPalette::Inactive, pair, 4.5);
    }
}

TEST_P(Palettes, KeepGreyedOutTextReadable) {
    for (const Pair pair : textPairs) {
        expectContrast(QPalette::Disabled, pair, 3);
    }
}

TEST_P(Palettes, MarkTheFocusAtThreeToOne) {
    for (const auto ground : {QPalette::Window, QPalette::Base, QPalette::Button}) {
        expectContrast(QPalette::Active, {QPalette::Highlight, ground}, 3);
    }
}

TEST_P(Palettes, GreyOutVisibly) {
    EXPECT_NE(palette().color(QPalette::Active, QPalette::ButtonText),
              palette().color(QPalette::Disabled, QPalette::ButtonText));
}

TEST_P(Palettes, KnowWhetherTheyAreDark) {
    EXPECT_EQ(isDark(palette()), GetParam());
}

INSTANTIATE_TEST_SUITE_P(Both, Palettes, testing::Bool(),
                         [](const auto& which) { return which.param ? "Dark" : "Light"; });

}  // namespace
}  // namespace matwright::app
