// SPDX-License-Identifier: MIT
#include "app/settings/theme.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QSpinBox>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <QVBoxLayout>
#include <cstdlib>

#include "app/settings/palettes.h"

namespace matwright::app {
namespace {

TEST(Theme, FollowsTheSettingAtOnce) {
    const QTemporaryDir folder;
    SettingsStore store(folder.filePath(QStringLiteral("s.ini")));
    keepTheme(*qApp, store);
    for (const bool dark : {true, false, true}) {
        Settings settings = store.value();
        settings.theme = dark ? Settings::Theme::Dark : Settings::Theme::Light;
        store.set(settings);
        EXPECT_EQ(isDark(QApplication::palette()), dark);
        EXPECT_EQ(isDark(QWidget().palette()), dark);
    }
}

template <typename Widget>
void expectLargeEnough() {
    ThemeStyle style;
    Widget widget;
    widget.setStyle(&style);
    EXPECT_GE(widget.sizeHint().height(), 24) << widget.metaObject()->className();
    EXPECT_GE(widget.sizeHint().width(), 24) << widget.metaObject()->className();
}

TEST(ThemeStyle, MakesNoControlSmallerThanTwentyFourPixels) {
    expectLargeEnough<QPushButton>();
    expectLargeEnough<QToolButton>();
    expectLargeEnough<QCheckBox>();
    expectLargeEnough<QRadioButton>();
    expectLargeEnough<QComboBox>();
    expectLargeEnough<QLineEdit>();
    expectLargeEnough<QSpinBox>();
}

int pixelsOf(const QImage& image, const QColor& colour) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            count += image.pixelColor(x, y) == colour ? 1 : 0;
        }
    }
    return count;
}

TEST(ThemeStyle, DrawsTheIconsOfDocksInTheTextColour) {
    const ThemeStyle style;
    for (const QPalette& palette : {lightPalette(), darkPalette()}) {
        QApplication::setPalette(palette);
        for (const auto which : {QStyle::SP_TitleBarCloseButton, QStyle::SP_TitleBarNormalButton,
                                 QStyle::SP_ToolBarHorizontalExtensionButton,
                                 QStyle::SP_ToolBarVerticalExtensionButton}) {
            const QImage image =
                style.standardIcon(which, nullptr, nullptr).pixmap(64, 64).toImage();
            EXPECT_GT(pixelsOf(image, palette.color(QPalette::WindowText)), 60) << which;
        }
    }
}

template <typename Widget>
void expectEdge(const QPalette& palette) {
    ThemeStyle style;
    Widget widget;
    widget.setStyle(&style);
    widget.setPalette(palette);
    widget.resize(widget.sizeHint());
    const QColor edge = edgeColour(palette);
    const QImage image = widget.grab().toImage();
    int edgePixels = 0;  // nearly: circles have smooth steps
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const QColor at = image.pixelColor(x, y);
            const int off = std::abs(at.red() - edge.red()) + std::abs(at.green() - edge.green()) +
                            std::abs(at.blue() - edge.blue());
            edgePixels += off < 60 ? 1 : 0;
        }
    }
    EXPECT_GT(edgePixels, 12) << widget.metaObject()->className();
}

TEST(ThemeStyle, DrawsAnEdgeAroundFieldsAndBoxesInBothThemes) {
    for (const QPalette& palette : {lightPalette(), darkPalette()}) {
        expectEdge<QLineEdit>(palette);
        expectEdge<QCheckBox>(palette);
        expectEdge<QRadioButton>(palette);
        expectEdge<QComboBox>(palette);
        expectEdge<QSpinBox>(palette);
    }
}

TEST(ThemeStyle, ShowsTheFocusInTheAccentColour) {
    for (const QPalette& palette : {lightPalette(), darkPalette()}) {
        ThemeStyle style;
        QWidget window;
        QVBoxLayout layout(&window);
        QCheckBox box(QStringLiteral("Snap"));
        QLineEdit other;
        layout.addWidget(&box);
        layout.addWidget(&other);
        box.setStyle(&style);
        box.setPalette(palette);
        window.show();
        window.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
        const QColor accent = palette.color(QPalette::Highlight);
        other.setFocus();
        const int without = pixelsOf(box.grab().toImage(), accent);
        box.setFocus(Qt::TabFocusReason);
        EXPECT_GT(pixelsOf(box.grab().toImage(), accent), without + 20);
    }
}

}  // namespace
}  // namespace matwright::app
