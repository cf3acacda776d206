// SPDX-License-Identifier: MIT
#include "app/editing/piece_mime.h"

#include <gtest/gtest.h>

#include <QMimeData>
#include <memory>

#include "core/making/copies.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/core/making/random_making.h"

namespace matwright::app {
namespace {

TEST(PieceMimeTest, PiecesComeBackEqualAndInOrder) {
    test::Random random(7);
    for (int run = 0; run < 20; ++run) {
        std::vector<Piece> pieces;
        for (int i = 0; i < 5; ++i) {
            pieces.push_back(test::randomPiece(random));
        }
        const std::unique_ptr<QMimeData> mime(toMime(pieces));
        EXPECT_EQ(fromMime(mime.get()), pieces) << "run " << run << ", seed 7";
    }
}

TEST(PieceMimeTest, TheBytesAreASketchFileUnderBothNames) {
    Piece block;
    block.size = {Length::inches(1), Length::inches(2)};
    const std::unique_ptr<QMimeData> mime(toMime({block}));
    EXPECT_TRUE(mime->hasFormat(piecesMimeType));
    EXPECT_EQ(mime->data("image/svg+xml"), mime->data(piecesMimeType));
    const auto loaded = readSketch(mime->data(piecesMimeType).toStdString());
    ASSERT_TRUE(loaded);
    EXPECT_EQ(loaded->sketch.pieces.size(), 1u);
}

TEST(PieceMimeTest, ASketchOfferedAsAPictureOnlyIsTaken) {
    Piece block;
    block.size = {Length::inches(1), Length::inches(2)};
    const std::unique_ptr<QMimeData> mime(toMime({block}));
    QMimeData picture;
    picture.setData("image/svg+xml", mime->data(piecesMimeType));
    EXPECT_EQ(fromMime(&picture), std::vector{block});
}

TEST(PieceMimeTest, PhotosAndPapersComeAlong) {
    test::Random random(11);
    const Making page = test::randomMaking(random, 40, 4);
    const Making copy = copyOf(page, page.sketch.order);
    ASSERT_FALSE(copy.work.placements.empty()) << "seed 11";
    const std::unique_ptr<QMimeData> mime(toMime(copy));
    EXPECT_EQ(copyFromMime(mime.get()), copy);
    EXPECT_TRUE(readSketch(mime->data("image/svg+xml").toStdString()));
    EXPECT_EQ(fromMime(mime.get()).size(), copy.sketch.pieces.size());
}

TEST(PieceMimeTest, AnythingElseGivesNothing) {
    EXPECT_TRUE(fromMime(nullptr).empty());
    QMimeData other;
    other.setText("4x6");
    EXPECT_TRUE(fromMime(&other).empty());
    other.setData("image/svg+xml", "<svg xmlns='http://www.w3.org/2000/svg'/>");
    EXPECT_TRUE(fromMime(&other).empty());
    const std::unique_ptr<QMimeData> none(toMime(std::vector<Piece>{}));
    EXPECT_TRUE(none && none->formats().isEmpty());
}

}  // namespace
}  // namespace matwright::app
