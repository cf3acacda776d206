// SPDX-License-Identifier: MIT
#include "app/canvas/piece_label.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFontMetricsF>
#include <QImage>
#include <QPainter>
#include <cmath>

#include "app/canvas/page_painter.h"
#include "app/rendering/paint.h"
#include "core/outline/outline.h"
#include "core/picture/picture.h"

namespace matwright::app {
namespace {

Piece slot(Length width, Length height) {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.place = {Length::inches(1), Length::inches(1)};
    piece.size = {width, height};
    piece.printSize = piece.size;
    return piece;
}

Viewport at(double pixelsPerInch) {
    return {pixelsPerInch / static_cast<double>(Length::ticksPerInch), {0, 0}};
}

LabelStyle style(Scale scale = Scale::SixteenthInch) {
    return labelStyleFor(QApplication::font(), scale);
}

QStringList linesOf(const Piece& piece, double pixelsPerInch, Scale scale = Scale::SixteenthInch) {
    const auto label = PieceLabel::of(piece, 3, at(pixelsPerInch), style(scale));
    return label ? label->lines : QStringList();
}

// The WCAG 2 contrast ratio, from its definition of relative luminance.
double luminance(QColor colour) {
    const auto linear = [](double c) {
        return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

double contrast(QColor a, QColor b) {
    const double la = luminance(a);
    const double lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

QColor toQt(Colour c) {
    return {c.red, c.green, c.blue};
}

TEST(PieceLabelTest, SaysNumberAndSizeOrNumberNameAndSize) {
    Piece piece = slot(Length::inches(4), Length::inches(6));
    EXPECT_EQ(linesOf(piece, 43), QStringList{QStringLiteral("3 · 4 × 6 in")});
    piece.name = "Beach";
    EXPECT_EQ(linesOf(piece, 43),
              (QStringList{QStringLiteral("3 · Beach"), QStringLiteral("4 × 6 in")}));
}

TEST(PieceLabelTest, ASlotSaysItsPrintSizeAnotherPieceItsOwn) {
    Piece piece = slot(Length::inches(4), Length::inches(6));
    piece.size = {Length::inches(3), Length::inches(5)};
    EXPECT_EQ(linesOf(piece, 43), QStringList{QStringLiteral("3 · 4 × 6 in")});
    piece.printSize.reset();
    EXPECT_EQ(linesOf(piece, 43), QStringList{QStringLiteral("3 · 3 × 5 in")});
}

TEST(PieceLabelTest, TheSizeFollowsTheScaleOfTheRulers) {
    const Piece piece = slot(Length::millimetres(100), Length::millimetres(150));
    EXPECT_EQ(linesOf(piece, 43, Scale::WholeMillimetre),
              QStringList{QStringLiteral("3 · 100 × 150 mm")});
}

TEST(PieceLabelTest, WhatHasNoRoomIsLeftOutStepByStep) {
    Piece piece = slot(Length::inches(3), Length::inches(3));
    piece.name = "Everybody at the beach on the first day";
    const QStringList shortened = linesOf(piece, 40);
    ASSERT_EQ(shortened.size(), 2);
    EXPECT_TRUE(shortened[0].startsWith(QStringLiteral("3 · Every")));
    EXPECT_TRUE(shortened[0].endsWith(QStringLiteral("…")));
    EXPECT_EQ(shortened[1], QStringLiteral("3 × 3 in"));
    EXPECT_EQ(linesOf(piece, 9), QStringList{QStringLiteral("3")});
    EXPECT_EQ(linesOf(piece, 4), QStringList());
    // Room for one line only, but a long one.
    Piece strip = slot(Length::inches(12), Length::inches(0, 1, 2));
    strip.name = "Border";
    EXPECT_EQ(linesOf(strip, 50), QStringList{QStringLiteral("3 · Border · 12 × 1/2 in")});
}

TEST(PieceLabelTest, KeepsItsSizeAtEveryZoomAndStandsInTheLowerLeftCorner) {
    const Piece piece = slot(Length::inches(4), Length::inches(6));
    const auto far = PieceLabel::of(piece, 3, at(43), style());
    const auto near = PieceLabel::of(piece, 3, at(300), style());
    ASSERT_TRUE(far && near);
    EXPECT_EQ(far->rect.size(), near->rect.size());
    EXPECT_GE(QFontInfo(near->font).pixelSize(), 12);
    for (const double zoom : {43.0, 300.0}) {
        const auto label = PieceLabel::of(piece, 3, at(zoom), style());
        const QRectF box = at(zoom).toView(trimBox(piece));
        const QRectF rect = label->frame.mapRect(label->rect);
        EXPECT_TRUE(box.contains(rect));
        EXPECT_LT(rect.left() - box.left(), 8);
        EXPECT_LT(box.bottom() - rect.bottom(), 8);
    }
}

TEST(PieceLabelTest, NeverLeavesThePieceWhateverItsShapeAndTurn) {
    PolygonShape triangle;
    triangle.corners = {{Length(), Length()},
                        {Length::inches(4), Length()},
                        {Length::inches(2), Length::inches(3)}};
    int shown = 0;
    for (const Shape& shape :
         {Shape(RectangleShape{}), Shape(RoundedRectangleShape{Length::inches(1)}),
          Shape(OvalShape{}), Shape(triangle)}) {
        for (int degrees = 0; degrees < 360; degrees += 15) {
            Piece piece = slot(Length::inches(4), Length::inches(3));
            piece.shape = shape;
            piece.name = "Beach";
            piece.rotation = Angle::degrees(degrees);
            const Viewport viewport = at(40);
            const auto label = PieceLabel::of(piece, 3, viewport, style());
            if (!label) {
                continue;
            }
            ++shown;
            const QPainterPath outline =
                viewport.transform().map(toPainterPath(trimOutline(piece)));
            QPainterPath rect;
            rect.addPolygon(label->frame.map(QPolygonF(label->rect)));
            EXPECT_TRUE(rect.subtracted(outline).boundingRect().isEmpty() ||
                        rect.subtracted(outline).boundingRect().width() < 0.5)
                << shape.index() << " turned by " << degrees;
        }
    }
    EXPECT_GE(shown, 80);
}

TEST(PieceLabelTest, IsNeverSteeperThanHalfAQuarterTurn) {
    Piece piece = slot(Length::inches(4), Length::inches(3));
    for (int degrees = 0; degrees < 360; ++degrees) {
        piece.rotation = Angle::degrees(degrees);
        const auto label = PieceLabel::of(piece, 3, at(43), style());
        ASSERT_TRUE(label) << degrees;
        EXPECT_GE(label->frame.m11(), std::sqrt(0.5) - 1e-9) << degrees;
    }
}

TEST(PieceLabelTest, CanBeReadOnEveryFillAndEveryMark) {
    for (const PieceKind kind : allPieceKinds) {
        const PieceLook look = lookOf(kind);
        EXPECT_GE(contrast(labelInk, toQt(look.fill)), 4.5);
        EXPECT_GE(contrast(labelInk, toQt(look.mark)), 4.5);
    }
}

TEST(PieceLabelTest, IsPaintedWhereItSays) {
    const Piece piece = slot(Length::inches(4), Length::inches(6));
    const Viewport viewport = at(43);
    const auto label = PieceLabel::of(piece, 3, viewport, style());
    ASSERT_TRUE(label);
    QImage image(300, 400, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    label->paint(painter);
    painter.end();
    const QRect where = label->frame.mapRect(label->rect).toAlignedRect().adjusted(-1, -1, 1, 1);
    int dark = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const QColor colour = image.pixelColor(x, y);
            dark += colour.lightness() < 100 ? 1 : 0;
            if (!where.contains(x, y)) {
                ASSERT_EQ(colour, QColor(Qt::white)) << x << "," << y;
            }
        }
    }
    EXPECT_GT(dark, 40);
}

}  // namespace
}  // namespace matwright::app
