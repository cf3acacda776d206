// SPDX-License-Identifier: MIT
#include "app/crop/crop_dialog.h"

#include <QLineEdit>
#include <QPushButton>

#include "app/crop/final_pixels.h"
#include "app/crop/tone_panel.h"
#include "app/panels/angle_field.h"
#include "app/panels/length_field.h"
#include "app/photos/rasters.h"
#include "tests/app/crop/crop_fixture.h"

namespace matwright::app {
namespace {

class CropDialogTest : public CropFixture {
  protected:
    void type(TypedField* field, const QString& text) {
        field->setFocus();
        field->lineEdit()->selectAll();
        QTest::keyClicks(field->lineEdit(), text);
        QTest::keyClick(field->lineEdit(), Qt::Key_Return);
    }
    template <typename Field>
    Field* field() {
        return window->findChild<Field*>();
    }
};

TEST_F(CropDialogTest, SaysHowFinelyItPrintsAndWhatIsLost) {
    open();
    // 4000 px over 6 in are 666.7 ppi (never told as more); of 3000 rows 2667 show.
    EXPECT_TRUE(window->panel().finenessText().contains("666"))
        << window->panel().finenessText().toStdString();
    EXPECT_TRUE(window->panel().lossText().contains("1/9"))
        << window->panel().lossText().toStdString();
}

TEST_F(CropDialogTest, WarnsBelow200AndRefusesToPretendBelow100) {
    open();
    view().zoomBy(4);
    EXPECT_TRUE(window->panel().finenessText().contains("166"));
    EXPECT_TRUE(window->panel().finenessText().contains("soft"));
    view().zoomBy(2);
    EXPECT_TRUE(window->panel().finenessText().contains("83"));
    EXPECT_FALSE(window->panel().finenessText().contains("soft"));
    EXPECT_TRUE(window->panel().lossText().contains("%"));
}

TEST_F(CropDialogTest, TypedAngleStraightensAsOneStep) {
    open();
    type(field<AngleField>(), "2.5 left");
    EXPECT_EQ(crop().straighten, -Angle::millidegrees(2500));
    EXPECT_EQ(steps(), 1u);
    EXPECT_TRUE(window->isVisible()) << "Enter in a field belongs to the field";
}

TEST_F(CropDialogTest, WhiteBorderMakesTheWindowSmallerAndStaysInRange) {
    open();
    type(field<LengthField>(), "1/4");
    EXPECT_EQ(window->state().border, Length::inches(0, 1, 4));
    EXPECT_NEAR(view().frame().window.width() / view().frame().trim.width(), 5.5 / 6, 1e-9);
    type(field<LengthField>(), "3");
    EXPECT_TRUE(field<LengthField>()->hasError());
    EXPECT_EQ(window->state().border, Length::inches(0, 1, 4));
}

TEST_F(CropDialogTest, ToneIsPartOfTheStepsAndBeforeShowsThePhotoAsItIs) {
    open();
    view().setLines(CropView::Lines::None);
    const QPoint at = middle().toPoint();
    const QColor plain = view().grab().toImage().pixelColor(at);
    Tone bright;
    bright.brightness = 60;
    emit window->panel().tone().toneChanged(bright, "Change brightness", 0);
    const QColor toned = view().grab().toImage().pixelColor(at);
    EXPECT_GT(toned.green(), plain.green());
    EXPECT_EQ(window->state().tone, bright);
    QTest::keyPress(&view(), Qt::Key_B);
    EXPECT_EQ(view().grab().toImage().pixelColor(at), plain);
    QTest::keyRelease(&view(), Qt::Key_B);
    EXPECT_EQ(view().grab().toImage().pixelColor(at), toned);
}

TEST_F(CropDialogTest, ShowsTheFinalPixelsOneByOne) {
    CropTask given = task();
    Raster print{{300, 200}, {}};
    for (int i = 0; i < 300 * 200 * 3; ++i) {
        print.pixels.push_back(static_cast<std::uint8_t>(i * 7 % 251));
    }
    int wishes = 0;
    given.finalPixels = [&](const CropState&, const std::stop_token&) {
        ++wishes;
        return Result<Raster>(print);
    };
    open(given);
    window->setShowsFinal(true);
    ASSERT_TRUE(QTest::qWaitFor([&] { return view().isShowingFinal(); }, 5000));
    const QImage shown = view().grab().toImage().copy(QRect(view().finalOrigin(), QSize(300, 200)));
    EXPECT_EQ(rasterOf(shown), print);
    EXPECT_EQ(wishes, 1);
    window->setShowsFinal(false);
    EXPECT_FALSE(view().isShowingFinal());
}

TEST_F(CropDialogTest, TellsWhyTheFinalPixelsCannotBeMade) {
    CropTask given = task();
    given.finalPixels = [](const CropState&, const std::stop_token&) -> Result<Raster> {
        return std::unexpected(Error{ErrorCode::NotFound, "The photo is not there any more.", ""});
    };
    open(given);
    window->setShowsFinal(true);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window->showsFinal(); }, 5000));
    EXPECT_FALSE(view().isShowingFinal());
}

}  // namespace
}  // namespace matwright::app
