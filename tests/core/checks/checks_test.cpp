// SPDX-License-Identifier: MIT
#include "core/checks/checks.h"

#include <set>

#include "tests/core/checks/check_fixture.h"
#include "tests/support/random_sketch.h"

namespace matwright::test {
namespace {

TEST(Checks, AnEmptyPageIsGood) {
    EXPECT_TRUE(checkSketch(blankSketch(), {}).empty());
}

TEST(Checks, TheCommonPageOfFourMattedPhotosIsGood) {
    std::vector<Piece> pieces{pieceAt(PieceKind::Block, "0", "0", "12", "12"),
                              photoAt("1", "1", "4", "6"),
                              photoAt("6", "1", "3", "4"),
                              photoAt("6", "6", "3", "4"),
                              photoAt("1", "7 1/2", "4", "3"),
                              pieceAt(PieceKind::Title, "6", "10 1/2", "5", "1")};
    for (Piece& piece : pieces) {
        if (piece.kind == PieceKind::PhotoSlot) {
            piece.mats = {{in("1/8"), {}, "cream"}};
        }
    }
    EXPECT_TRUE(checkSketch(sketchWith(pieces), {}).empty());
}

TEST(Checks, FindingsComeFromBottomToTopThenByKind) {
    std::vector<Piece> pieces{photoAt("0", "1", "3 1/32", "5"), photoAt("-1", "7", "9", "4")};
    Sketch sketch = sketchWith(pieces);
    const auto kindsAndPieces = [&] {
        std::vector<std::pair<CheckKind, PieceId>> out;
        for (const CheckFinding& finding : checkSketch(sketch, {})) {
            out.emplace_back(finding.kind, finding.pieces.front());
        }
        return out;
    };
    using Expected = std::vector<std::pair<CheckKind, PieceId>>;
    const Expected ofFirst{{CheckKind::OverMargin, PieceId{1}},
                           {CheckKind::OffScale, PieceId{1}},
                           {CheckKind::NoSuchPrintSize, PieceId{1}}};
    const Expected ofSecond{{CheckKind::OffPage, PieceId{2}},
                            {CheckKind::NoSuchPrintSize, PieceId{2}}};
    Expected expected = ofFirst;
    expected.insert(expected.end(), ofSecond.begin(), ofSecond.end());
    EXPECT_EQ(kindsAndPieces(), expected);

    std::ranges::reverse(sketch.order);
    expected = ofSecond;
    expected.insert(expected.end(), ofFirst.begin(), ofFirst.end());
    EXPECT_EQ(kindsAndPieces(), expected);
}

TEST(Checks, APieceIsCalledByItsNumberAndItsOwnName) {
    Piece photo = photoAt("3/8", "1", "4", "6");
    photo.name = "At the lake";
    Sketch sketch = sketchWith({pieceAt(PieceKind::Block, "6", "1", "1", "1"), photo});
    EXPECT_EQ(
        sentences(sketch, CheckKind::OverMargin),
        Sentences{"2 · At the lake runs 1/8 in over the left margin; move it right or make it "
                  "smaller."});
}

TEST(Checks, EveryKindHasItsOwnWordForScripts) {
    // A list that scripts rely on: words are added, never changed.
    const std::vector<std::pair<CheckKind, std::string_view>> words{
        {CheckKind::OffPage, "off-page"},
        {CheckKind::OverMargin, "over-margin"},
        {CheckKind::AcrossFold, "across-fold"},
        {CheckKind::PhotosOverlap, "photos-overlap"},
        {CheckKind::Hidden, "hidden"},
        {CheckKind::OffScale, "off-scale"},
        {CheckKind::NoSuchPrintSize, "no-such-print-size"},
        {CheckKind::TrimOverPrint, "trim-over-print"},
        {CheckKind::CoarsePrint, "coarse-print"},
    };
    for (const auto& [kind, word] : words) {
        EXPECT_EQ(checkWord(kind), word);
    }
}

TEST(Checks, RandomSketchesGiveTheSameSentencesTwiceAndOnlyOfTheirPieces) {
    constexpr std::uint64_t seed = 31;
    Random random(seed);
    for (int run = 0; run < 30; ++run) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", run " << run);
        const Sketch sketch = randomSketch(random, 15);
        const std::vector<CheckFinding> findings = checkSketch(sketch, {});
        EXPECT_EQ(findings, checkSketch(sketch, {}));
        std::size_t place = 0;
        CheckKind kind = CheckKind::OffPage;
        for (const CheckFinding& finding : findings) {
            ASSERT_FALSE(finding.pieces.empty());
            const std::size_t at = pieceNumber(sketch, finding.pieces.front());
            ASSERT_GT(at, 0u);
            EXPECT_TRUE(at > place || (at == place && finding.kind > kind));
            EXPECT_TRUE(finding.sentence.starts_with(std::to_string(at) + " · "));
            EXPECT_TRUE(finding.sentence.ends_with('.'));
            const std::set<PieceId> different(finding.pieces.begin(), finding.pieces.end());
            EXPECT_EQ(different.size(), finding.pieces.size());
            place = at;
            kind = finding.kind;
        }
    }
}

TEST(Checks, StopWhenAskedTo) {
    Piece outside;
    outside.kind = PieceKind::PhotoSlot;
    outside.place = {Length::inches(20), Length::inches(20)};
    outside.size = {Length::inches(4), Length::inches(6)};
    outside.printSize = outside.size;
    const Sketch sketch = sketchWith({outside, outside});
    std::stop_source stop;
    EXPECT_EQ(checkSketch(sketch, {}, stop.get_token()), checkSketch(sketch, {}));
    stop.request_stop();
    EXPECT_TRUE(checkSketch(sketch, {}, stop.get_token()).empty());
    EXPECT_FALSE(checkSketch(sketch, {}).empty());
}

}  // namespace
}  // namespace matwright::test
