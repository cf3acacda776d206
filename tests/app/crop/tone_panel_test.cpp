// SPDX-License-Identifier: MIT
#include "app/crop/tone_panel.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QSlider>
#include <QTest>

namespace matwright::app {
namespace {

class TonePanelTest : public testing::Test {
  protected:
    TonePanelTest() {
        panel.resize(300, 260);
        panel.show();
        QObject::connect(&panel, &TonePanel::toneChanged, &panel,
                         [this](const Tone& tone, const QString&, int gesture) {
                             tones.push_back(tone);
                             gestures.push_back(gesture);
                         });
    }
    QSlider* slider(const char* name) {
        for (QSlider* one : panel.findChildren<QSlider*>()) {
            if (one->accessibleName() == name) {
                return one;
            }
        }
        return nullptr;
    }

    TonePanel panel;
    std::vector<Tone> tones;
    std::vector<int> gestures;
};

TEST_F(TonePanelTest, BeforeStaysUntilItIsPressedAgainOrTheToneChanges) {
    QPushButton* before = nullptr;
    for (auto* one : panel.findChildren<QPushButton*>()) {
        before = one->isCheckable() ? one : before;
    }
    ASSERT_NE(before, nullptr);
    EXPECT_FALSE(before->isEnabled());
    const QSignalSpy shown(&panel, &TonePanel::beforeShown);
    panel.setTone({.brightness = 20});
    before->click();
    EXPECT_TRUE(panel.showsBefore());
    before->click();
    EXPECT_FALSE(panel.showsBefore());
    before->click();
    QTest::keyClick(slider("Contrast"), Qt::Key_Right);
    EXPECT_FALSE(panel.showsBefore());
    EXPECT_EQ(shown.count(), 4);
}

TEST_F(TonePanelTest, KeysOnASliderAreOneGestureAndAnotherSliderIsAnother) {
    QSlider* brightness = slider("Brightness");
    ASSERT_NE(brightness, nullptr);
    QTest::keyClick(brightness, Qt::Key_Right);
    QTest::keyClick(brightness, Qt::Key_Right);
    QTest::keyClick(slider("Warmth"), Qt::Key_PageUp);
    ASSERT_EQ(tones.size(), 3u);
    EXPECT_EQ(gestures[0], gestures[1]);
    EXPECT_NE(gestures[1], gestures[2]);
    EXPECT_GT(gestures[0], 0);
    EXPECT_EQ(tones.back().brightness, 2);
    EXPECT_EQ(tones.back().warmth, 10);
}

TEST_F(TonePanelTest, SwitchAndPuttingBackAreStepsOfTheirOwn) {
    QTest::mouseClick(panel.findChild<QCheckBox*>(), Qt::LeftButton, {}, QPoint(10, 12));
    ASSERT_EQ(tones.size(), 1u);
    EXPECT_TRUE(tones[0].evenOut);
    EXPECT_EQ(gestures[0], 0);
    for (QPushButton* button : panel.findChildren<QPushButton*>()) {
        if (button->text().contains("was")) {
            EXPECT_TRUE(button->isEnabled());
            QTest::mouseClick(button, Qt::LeftButton);
        }
    }
    EXPECT_EQ(tones.back(), Tone{});
}

TEST_F(TonePanelTest, SettingFromTheProgramTellsNothing) {
    Tone tone;
    tone.contrast = -40;
    panel.setTone(tone);
    EXPECT_EQ(slider("Contrast")->value(), -40);
    EXPECT_TRUE(tones.empty());
}

TEST_F(TonePanelTest, SharpeningHasNoOtherSide) {
    EXPECT_EQ(slider("Sharpen")->minimum(), 0);
    EXPECT_EQ(slider("Saturation")->minimum(), -100);
}

}  // namespace
}  // namespace matwright::app
