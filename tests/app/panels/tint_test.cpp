// SPDX-License-Identifier: MIT
#include "app/panels/tint.h"

#include <gtest/gtest.h>

#include <QVBoxLayout>

#include "app/settings/palettes.h"
#include "tests/support/contrast.h"

namespace matwright::app {
namespace {

using test::contrast;

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
