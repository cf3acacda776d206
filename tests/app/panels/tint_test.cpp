// SPDX-License-Identifier: MIT
#include "app/panels/tint.h"

#include <gtest/gtest.h>

#include <QVBoxLayout>
#include <cmath>

#include "app/settings/palettes.h"

namespace matwright::app {
namespace {

// WCAG 2.1, "relative luminance" and "contrast ratio".
double luminance(const QColor& colour) {
    const auto linear = [](double c) {
        return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

double contrast(const QColor& a, const QColor& b) {
    const double high = std::max(luminance(a), luminance(b));
    const double low = std::min(luminance(a), luminance(b));
    return (high + 0.05) / (low + 0.05);
}

TEST(Tint, IsReadableInBothThemes) {
    for (const QPalette& palette : {lightPalette(), darkPalette()}) {
        for (const Tint tint : {Tint::Quiet, Tint::Wrong}) {
            EXPECT_GE(contrast(tintOf(palette, tint), palette.color(QPalette::Window)), 4.5);
        }
        EXPECT_GE(contrast(tintOf(palette, Tint::Wrong), palette.color(QPalette::Base)), 3)
            << "the red border around a field";
    }
}

TEST(TintedLabel, FollowsTheThemeWhileItIsShown) {
    QWidget window;
    auto* layout = new QVBoxLayout(&window);
    auto* label = new TintedLabel(Tint::Wrong, QStringLiteral("Wrong."));
    layout->addWidget(label);
    window.show();
    for (const QPalette& palette : {darkPalette(), lightPalette(), darkPalette()}) {
        window.setPalette(palette);
        EXPECT_EQ(label->palette().color(QPalette::WindowText), tintOf(palette, Tint::Wrong));
    }
}

}  // namespace
}  // namespace matwright::app
