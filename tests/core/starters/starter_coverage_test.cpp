// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <map>

#include "core/measure/catalogue.h"
#include "tests/support/starters/starters.h"

// What the set as a whole offers.
namespace matwright {
namespace {

using Holds = std::function<bool(const Piece&)>;

std::int64_t countOf(const Sketch& sketch, const Holds& holds) {
    return std::ranges::count_if(sketch.pieces,
                                 [&](const auto& entry) { return holds(entry.second); });
}

bool isPhoto(const Piece& piece) {
    return piece.kind == PieceKind::PhotoSlot;
}

std::int64_t sketchesWhere(const std::function<bool(const Sketch&)>& holds) {
    return std::ranges::count_if(
        test::starters(), [&](const test::Starter& starter) { return holds(starter.sketch); });
}

std::int64_t sketchesWith(const Holds& holds) {
    return sketchesWhere([&](const Sketch& sketch) { return countOf(sketch, holds) > 0; });
}

TEST(StarterCoverage, ThereAreAtLeastThirtySix) {
    EXPECT_GE(test::starters().size(), 36u);
}

TEST(StarterCoverage, EveryCountFromOneToNinePhotosComesAtLeastTwice) {
    std::map<std::int64_t, int> sketchesByCount;
    for (const auto& starter : test::starters()) {
        ++sketchesByCount[countOf(starter.sketch, isPhoto)];
    }
    for (int photos = 1; photos <= 9; ++photos) {
        EXPECT_GE(sketchesByCount[photos], 2) << photos << " photos";
    }
    EXPECT_EQ(sketchesByCount.begin()->first, 1);
    EXPECT_EQ(sketchesByCount.rbegin()->first, 9);
}

TEST(StarterCoverage, PagesOfEveryCommonSizeAreThere) {
    std::map<std::string_view, int> byPage;
    for (const auto& starter : test::starters()) {
        const NamedSize* page = pageSizeOf(starter.sketch.page.size);
        ASSERT_NE(page, nullptr) << starter.file;
        ++byPage[page->id];
    }
    EXPECT_GE(byPage["12x12"], 12);
    EXPECT_GE(byPage["8.5x11"], 6);
    EXPECT_GE(byPage["11x8.5"], 6);
    EXPECT_GE(byPage["8x8"], 2);
    EXPECT_GE(byPage["a4"] + byPage["a4-lying"], 2);
}

TEST(StarterCoverage, AtLeastSixAreDoublePages) {
    EXPECT_GE(sketchesWhere([](const Sketch& sketch) { return sketch.page.doublePage; }), 6);
}

TEST(StarterCoverage, UprightLyingAndSquarePhotosAreThere) {
    const auto photoWhere = [](const std::function<bool(Size)>& holds) {
        return sketchesWith(
            [&](const Piece& piece) { return isPhoto(piece) && holds(piece.size); });
    };
    EXPECT_GE(photoWhere([](Size size) { return size.height > size.width; }), 8);
    EXPECT_GE(photoWhere([](Size size) { return size.height < size.width; }), 8);
    EXPECT_GE(photoWhere([](Size size) { return size.height == size.width; }), 8);
}

TEST(StarterCoverage, EveryPrintSizeIsUsed) {
    for (const NamedSize& print : printSizes()) {
        EXPECT_GE(sketchesWith([&](const Piece& piece) {
                      return piece.printSize && printSizeOf(*piece.printSize) == &print;
                  }),
                  1)
            << print.id;
    }
}

TEST(StarterCoverage, AFewHaveRoundAndTurnedPhotos) {
    EXPECT_GE(sketchesWith([](const Piece& piece) {
                  return isPhoto(piece) && std::holds_alternative<OvalShape>(piece.shape);
              }),
              3);
    EXPECT_GE(
        sketchesWith([](const Piece& piece) { return isPhoto(piece) && !piece.rotation.isZero(); }),
        3);
}

TEST(StarterCoverage, SingleDoubleAndBottomHeavyMatsAreThere) {
    EXPECT_GE(sketchesWith([](const Piece& piece) { return piece.mats.size() == 1; }), 6);
    EXPECT_GE(sketchesWith([](const Piece& piece) { return piece.mats.size() == 2; }), 6);
    EXPECT_GE(sketchesWith([](const Piece& piece) {
                  return std::ranges::any_of(piece.mats, [](const Mat& mat) {
                      return mat.bottomBorder && *mat.bottomBorder > mat.border;
                  });
              }),
              2);
}

TEST(StarterCoverage, EverySketchHasATitlePaperAndThreeOrnaments) {
    const std::int64_t count = static_cast<std::int64_t>(test::starters().size());
    const auto kindIs = [](PieceKind kind) {
        return [kind](const Piece& piece) { return piece.kind == kind; };
    };
    EXPECT_EQ(sketchesWith(kindIs(PieceKind::Title)), count);
    EXPECT_EQ(sketchesWith(isPaper), count);
    EXPECT_EQ(sketchesWhere([&](const Sketch& sketch) {
                  return countOf(sketch, kindIs(PieceKind::Embellishment)) >= 3;
              }),
              count);
    EXPECT_GE(sketchesWith(kindIs(PieceKind::Journaling)), count * 9 / 10);
}

}  // namespace
}  // namespace matwright
