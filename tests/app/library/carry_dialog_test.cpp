// SPDX-License-Identifier: MIT
#include "app/library/carry_dialog.h"

#include <gtest/gtest.h>

#include <QTest>

#include "core/sketch/sketch.h"

namespace matwright::app {
namespace {

Sketch onePhoto(bool doublePage) {
    Piece photo;
    photo.kind = PieceKind::PhotoSlot;
    photo.place = {Length::inches(1), Length::inches(1)};
    photo.size = {Length::inches(4), Length::inches(6)};
    photo.printSize = photo.size;
    Sketch sketch = blankSketch();
    sketch.page.doublePage = doublePage;
    sketch.order = {PieceId{1}};
    sketch.pieces.emplace(PieceId{1}, photo);
    return sketch;
}

constexpr Length sixteenth = Length::inches(0, 1, 16);

TEST(CarryDialogTest, BeginsWithAnotherSizeThanTheSketchHas) {
    const Sketch sketch = onePhoto(false);
    CarryDialog dialog(sketch, sixteenth);
    dialog.show();
    EXPECT_NE(dialog.result().sketch.page.size, sketch.page.size);
    EXPECT_FALSE(dialog.result().sketch.page.doublePage);
    EXPECT_TRUE(dialog.startButton().isEnabled());
}

TEST(CarryDialogTest, CarriesToADoublePageOfTheSameSizeAndSaysWhere) {
    const Sketch sketch = onePhoto(false);
    CarryDialog dialog(sketch, sixteenth);
    dialog.show();
    dialog.sizes().setCurrentText(QStringLiteral("12 × 12 in"));
    EXPECT_FALSE(dialog.startButton().isEnabled()) << "it is that page";
    EXPECT_TRUE(dialog.verdict().contains(QStringLiteral("This is the page it is on")));
    dialog.doublePage().click();
    EXPECT_TRUE(dialog.startButton().isEnabled());
    EXPECT_TRUE(dialog.result().sketch.page.doublePage);
    EXPECT_TRUE(dialog.verdict().contains(QStringLiteral("goes onto the left page")))
        << dialog.verdict().toStdString();
}

TEST(CarryDialogTest, BringsADoublePageTogetherOnOne) {
    CarryDialog dialog(onePhoto(true), sixteenth);
    dialog.show();
    EXPECT_TRUE(dialog.doublePage().isChecked());
    EXPECT_TRUE(dialog.result().sketch.page.doublePage);
    dialog.doublePage().click();
    EXPECT_FALSE(dialog.result().sketch.page.doublePage);
    EXPECT_TRUE(dialog.verdict().contains(QStringLiteral("brought together on one")))
        << dialog.verdict().toStdString();
}

TEST(CarryDialogTest, RoundsToThePersonsTrimmer) {
    Sketch sketch = onePhoto(false);
    Piece strip;
    strip.kind = PieceKind::Strip;
    strip.place = {Length::inches(1), Length::inches(8)};
    strip.size = {Length::inches(10), Length::inches(0, 13, 16)};
    sketch.order.push_back(PieceId{2});
    sketch.pieces.emplace(PieceId{2}, strip);
    CarryDialog dialog(sketch, Length::millimetres(1));
    dialog.show();
    const Size size = dialog.result().sketch.pieces.at(PieceId{2}).size;
    EXPECT_TRUE(size.width.isMultipleOf(Length::millimetres(1)));
    EXPECT_TRUE(size.height.isMultipleOf(Length::millimetres(1)));
}

}  // namespace
}  // namespace matwright::app
