// SPDX-License-Identifier: MIT
// What the crop window shows at 100 % is what the file holds.
#include <QImage>
#include <QSignalSpy>
#include <QTest>
#include <cstdlib>

#include "app/crop/crop_flow.h"
#include "app/crop/crop_panel.h"
#include "app/crop/tone_panel.h"
#include "app/editing/session.h"
#include "app/photos/reading/photo_reader.h"
#include "app/prints/slot_pixels.h"
#include "tests/app/prints/prints_fixture.h"

namespace matwright::app {
namespace {

class FinalPixelsTest : public PrintsFixture {};

int worstDifference(const QImage& a, const QImage& b) {
    int worst = 0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x) {
            const QRgb p = a.pixel(x, y);
            const QRgb q = b.pixel(x, y);
            worst = std::max({worst, std::abs(qRed(p) - qRed(q)), std::abs(qGreen(p) - qGreen(q)),
                              std::abs(qBlue(p) - qBlue(q))});
        }
    }
    return worst;
}

TEST_F(FinalPixelsTest, ShowBothPartsOfAPhotoAcrossTheFoldAsTheyMeet) {
    making.sketch.page.doublePage = true;
    making.sketch.page.foldGap = Length::inches(0, 1, 4);
    const Length fold = making.sketch.page.size.width;
    const PieceId slot = addSlot({fold - Length::inches(1), Length::inches(1)},
                                 {Length::inches(3), Length::inches(2)});
    put(addPhoto(2, {2400, 1800}), slot);
    const std::vector<Print> prints = printsOf(making, {});
    ASSERT_EQ(prints.size(), 2U);
    const auto shown = finalPixelsOf(making, slot, {});
    ASSERT_TRUE(shown) << shown.error().text();
    EXPECT_EQ(shown->size, (PixelSize{300 + 525, 600}));  // 1 in, and 3 in less 1 in and the gap
    const auto right = renderPrint(prints[1], making.work.photos.at(PhotoId{1}), {});
    ASSERT_TRUE(right);
    const auto row = shown->row(300);
    EXPECT_TRUE(std::ranges::equal(row.subspan(900), right->row(300)));
}

TEST_F(FinalPixelsTest, At100PercentTheWindowShowsThePixelsOfTheFileWithinOneOf255) {
    const PieceId slot = addSlot({Length::inches(1), Length::inches(1)},
                                 {Length::inches(2), Length::inches(1, 1, 2)});
    put(addPhoto(2, {2400, 1800}), slot);
    Placement& placement = making.work.placements.at(slot);
    placement.crop.zoom = 1'700'000;
    placement.crop.straighten = Angle::millidegrees(2300);
    placement.crop = settled(placement.crop, {2400, 1800}, making.sketch.pieces.at(slot).size);
    Photo& photo = making.work.photos.at(placement.photo);
    photo.tone = {.evenOut = true,
                  .brightness = 12,
                  .contrast = 20,
                  .warmth = 15,
                  .saturation = 25,
                  .sharpen = 60};
    Session session;
    session.reset(making);
    PhotoReader reader(QString::fromStdString(folder() / "cache"));
    std::unique_ptr<CropDialog> window(
        makeCropDialog(session, slot, Scale::SixteenthInch, &reader, finalPixelsOf, nullptr));
    window->resize(1200, 800);
    window->show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    window->setShowsFinal(true);
    ASSERT_TRUE(QTest::qWaitFor([&] { return window->view().isShowingFinal(); }, 60'000));

    PrintOptions options;
    options.format = PrintFormat::Png;
    const std::vector<Print> prints = printsOf(making, options);
    ASSERT_EQ(prints.size(), 1u);
    const auto bytes = printFile(prints[0], photo, options);
    ASSERT_TRUE(bytes);
    const QImage file = QImage::fromData(
        QByteArray::fromRawData(bytes->data(), static_cast<qsizetype>(bytes->size())), "PNG");
    ASSERT_EQ(file.size(), QSize(600, 450));
    // The bars of this window may cover a part of a large print; all of this one is in view.
    const QImage shown =
        window->view().grab().toImage().copy(QRect(window->view().finalOrigin(), file.size()));
    const int worst = worstDifference(shown, file);
    std::printf("at 100 %% against the PNG file: worst difference %d of 255\n", worst);
    EXPECT_LE(worst, 1);
    // That would be worth nothing if both were one colour.
    EXPECT_GT(worstDifference(shown, shown.mirrored(true, false)), 40);
}

TEST_F(FinalPixelsTest, EveryGestureOfAnAcceptedWindowIsOneUndoStepOfThePage) {
    const PieceId slot = addSlot({}, {Length::inches(4), Length::inches(6)});
    put(addPhoto(3, {1200, 900}), slot);
    Session session;
    session.reset(making);
    std::unique_ptr<CropDialog> window(
        makeCropDialog(session, slot, Scale::SixteenthInch, nullptr, finalPixelsOf, nullptr));
    window->show();
    window->view().zoomBy(1.5);
    window->view().turnRight();
    Tone tone;
    tone.warmth = 30;
    emit window->panel().tone().toneChanged(tone, "Change warmth", 0);
    EXPECT_EQ(session.making(), making) << "nothing changes before it is accepted";
    const CropState wanted = window->state();
    window->accept();
    EXPECT_EQ(session.undoStack().count(), 3);
    EXPECT_EQ(session.making(), withState(making, slot, wanted));
    session.undoStack().undo();
    EXPECT_EQ(session.work().photos.at(PhotoId{1}).tone, Tone{});
    session.undoStack().undo();
    session.undoStack().undo();
    EXPECT_EQ(session.making(), making);
}

}  // namespace
}  // namespace matwright::app
