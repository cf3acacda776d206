// SPDX-License-Identifier: MIT
#include <QComboBox>

#include "tests/app/crop/crop_fixture.h"

namespace matwright::app {
namespace {

class CropKeysTest : public CropFixture {};

TEST_F(CropKeysTest, ArrowsMoveA32thAndWithShiftAQuarterInch) {
    open();
    const double perInch = 1e6 / 4.5;  // the photo is 4 1/2 in tall at this size
    const int before = crop().centreY;
    key(Qt::Key_Up);
    EXPECT_NEAR(crop().centreY, before + perInch / 32, 2);
    key(Qt::Key_Down);
    EXPECT_NEAR(crop().centreY, before, 2);
    key(Qt::Key_Down, Qt::ShiftModifier);
    // A third of the half inch is above: it stops before a quarter.
    EXPECT_NEAR(crop().centreY, 4e6 / 9, 2);
}

TEST_F(CropKeysTest, BurstOfKeysIsOneStep) {
    open();
    key(Qt::Key_Plus);
    key(Qt::Key_Plus);
    key(Qt::Key_Equal);
    EXPECT_EQ(steps(), 1u);
    key(Qt::Key_Left);
    key(Qt::Key_Left);
    EXPECT_EQ(steps(), 2u);
    key(Qt::Key_BracketRight);
    EXPECT_EQ(steps(), 3u);
    EXPECT_EQ(crop().straighten, Angle::millidegrees(100));
}

TEST_F(CropKeysTest, HomeStartsTheCropAgain) {
    open();
    key(Qt::Key_Plus);
    key(Qt::Key_BracketRight, Qt::ShiftModifier);
    key(Qt::Key_Home);
    EXPECT_EQ(crop(), task().start.crop);
    EXPECT_EQ(steps(), 3u);
}

TEST_F(CropKeysTest, UndoAndRedoGoThroughTheGestures) {
    open();
    const Crop start = crop();
    key(Qt::Key_Plus);
    const Crop zoomed = crop();
    key(Qt::Key_BracketRight);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(crop(), zoomed);
    EXPECT_EQ(view().crop(), zoomed);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(crop(), start);
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(crop(), zoomed);
}

TEST_F(CropKeysTest, EscLeavesEverythingAsItWasAndEnterAccepts) {
    open();
    QSignalSpy rejected(window.get(), &QDialog::rejected);
    key(Qt::Key_Plus);
    key(Qt::Key_Escape);
    EXPECT_EQ(rejected.count(), 1);
    EXPECT_EQ(window->result(), QDialog::Rejected);

    open();
    key(Qt::Key_Plus);
    key(Qt::Key_Return);
    EXPECT_EQ(window->result(), QDialog::Accepted);
    ASSERT_EQ(steps(), 1u);
    EXPECT_EQ(window->steps()[0].state.crop, crop());
}

TEST_F(CropKeysTest, GChangesTheLines) {
    open();
    auto* lines = window->findChild<QComboBox*>(QStringLiteral("lines"));
    ASSERT_EQ(lines->currentIndex(), 1);
    key(Qt::Key_G);
    EXPECT_EQ(lines->currentIndex(), 2);
    key(Qt::Key_G);
    EXPECT_EQ(lines->currentIndex(), 0);
}

}  // namespace
}  // namespace matwright::app
