// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>
#include <optional>
#include <set>

#include "core/checks/checks.h"
#include "tests/support/starters/starters.h"

// What every sketch of the set keeps to. The limits are the designer's own; no outside source.
namespace matwright {
namespace {

Length stepOf(const test::Starter& starter) {
    return isMetric(starter) ? Length::millimetres(1) : Length::inches(0, 1, 16);
}

std::vector<Piece> photosOf(const Sketch& sketch) {
    std::vector<Piece> photos;
    for (const auto& [id, piece] : sketch.pieces) {
        if (piece.kind == PieceKind::PhotoSlot) {
            photos.push_back(piece);
        }
    }
    return photos;
}

double squareInches(Size size) {
    return size.width.toInches() * size.height.toInches();
}

TEST(StarterRules, NoSketchHasAnythingToMend) {
    for (const auto& starter : test::starters()) {
        CheckSettings settings;
        if (isMetric(starter)) {
            settings = {Length::millimetres(1), Scale::WholeMillimetre};
        }
        for (const CheckFinding& finding : checkSketch(starter.sketch, settings)) {
            ADD_FAILURE() << starter.file << ": " << finding.sentence;
        }
    }
}

TEST(StarterRules, NamesAreShortAndUniqueAndNotesAreOneLine) {
    std::set<std::string> names;
    for (const auto& [file, sketch] : test::starters()) {
        EXPECT_TRUE(names.insert(sketch.name).second) << file << ": " << sketch.name;
        EXPECT_FALSE(sketch.name.empty()) << file;
        EXPECT_LE(sketch.name.size(), 40u) << file;
        EXPECT_FALSE(sketch.note.empty()) << file;
        EXPECT_LE(sketch.note.size(), 110u) << file;
        EXPECT_EQ(sketch.note.find('\n'), std::string::npos) << file;
    }
}

TEST(StarterRules, FileNamesAreLowerCaseWordsAndUnique) {
    const std::string ending = ".sketch.svg";
    std::set<std::string> files;
    for (const auto& [file, sketch] : test::starters()) {
        EXPECT_TRUE(files.insert(file).second) << file;
        ASSERT_TRUE(file.ends_with(ending)) << file;
        const std::string stem = file.substr(0, file.size() - ending.size());
        EXPECT_EQ(stem.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-"),
                  std::string::npos)
            << file;
    }
}

TEST(StarterRules, EveryMeasureIsOnTheTrimmersScale) {
    for (const auto& starter : test::starters()) {
        std::vector<Length> measures{starter.sketch.page.margins.left, starter.sketch.page.gutter,
                                     starter.sketch.page.foldGap};
        for (const auto& [id, piece] : starter.sketch.pieces) {
            const Rect box = trimBox(piece);
            measures.insert(measures.end(), {box.left(), box.top(), box.right(), box.bottom()});
            for (const Mat& mat : piece.mats) {
                measures.insert(measures.end(),
                                {mat.border, mat.bottomBorder.value_or(mat.border)});
            }
        }
        for (const Length measure : measures) {
            EXPECT_TRUE(measure.isMultipleOf(stepOf(starter)))
                << starter.file << ": " << measure.toInches() << " in";
        }
    }
}

// The free stretch between two boxes that face each other; nothing where they do not.
std::optional<Length> facingGap(const Rect& a, const Rect& b) {
    const auto between = [](Interval p, Interval q) {
        return std::max(p.low, q.low) - std::min(p.high, q.high);
    };
    const Length across = between(a.x, b.x);
    const Length down = between(a.y, b.y);
    if (across.isPositive() == down.isPositive()) {
        return std::nullopt;
    }
    return std::max(across, down);
}

bool isUprightRectangle(const Piece& piece) {
    return piece.rotation.isZero() && std::holds_alternative<RectangleShape>(piece.shape);
}

TEST(StarterRules, NeighbouringPhotosAreOneGutterApart) {
    for (const auto& [file, sketch] : test::starters()) {
        const std::vector<Piece> photos = photosOf(sketch);
        for (auto a = photos.begin(); a != photos.end(); ++a) {
            for (auto b = a + 1; b != photos.end(); ++b) {
                const auto gap = facingGap(outermostBox(*a), outermostBox(*b));
                if (gap && isUprightRectangle(*a) && isUprightRectangle(*b) &&
                    *gap < Length::inches(0, 3, 4)) {
                    EXPECT_EQ(gap->toInches(), sketch.page.gutter.toInches())
                        << file << ": " << displayName(*a) << ", " << displayName(*b);
                }
            }
        }
    }
}

// The largest with its mats, or else all photos are equals in an even grid.
TEST(StarterRules, TheFocalPhotoStandsOut) {
    for (const auto& [file, sketch] : test::starters()) {
        const std::vector<Piece> photos = photosOf(sketch);
        const auto isFocal = [](const Piece& photo) { return photo.name == "focal photo"; };
        const auto focal = std::ranges::find_if(photos, isFocal);
        EXPECT_LE(std::ranges::count_if(photos, isFocal), 1) << file;
        for (const Piece& photo : photos) {
            if (focal == photos.end()) {
                EXPECT_EQ(photo.size, photos.front().size) << file;
            } else if (!isFocal(photo)) {
                EXPECT_GT(squareInches(outermostBox(*focal).size()),
                          squareInches(outermostBox(photo).size()))
                    << file;
            }
        }
    }
}

TEST(StarterRules, OrnamentsLeaveThePrintSizesReadable) {
    for (const auto& [file, sketch] : test::starters()) {
        for (const Piece& photo : photosOf(sketch)) {
            if (!std::holds_alternative<RectangleShape>(photo.shape)) {
                continue;
            }
            // Where the picture of a sketch writes it.
            const Rect trim = trimBox(photo);
            const Rect text = Rect::at(
                {trim.left() + Length::inches(0, 1, 8), trim.bottom() - Length::inches(0, 1, 4)},
                {Length::inches(0, 1, 2), Length::inches(0, 1, 8)});
            for (const auto& [id, piece] : sketch.pieces) {
                const bool covers = piece.kind == PieceKind::Embellishment &&
                                    trimBox(piece).interiorIntersects(text);
                EXPECT_FALSE(covers)
                    << file << ": at " << text.left().toInches() << ", " << text.top().toInches();
            }
        }
    }
}

TEST(StarterRules, AFifthOfEveryPageIsFreeOfPhotosAndWords) {
    for (const auto& [file, sketch] : test::starters()) {
        double taken = 0;
        for (const auto& [id, piece] : sketch.pieces) {
            const bool counts = !isPaper(piece) && piece.kind != PieceKind::Embellishment;
            taken += counts ? squareInches(outermostBox(piece).size()) : 0;
        }
        const double pageArea =
            squareInches(sketch.page.size) * static_cast<double>(pages(sketch.page).size());
        EXPECT_LE(taken / pageArea, 0.8) << file;
    }
}

}  // namespace
}  // namespace matwright
