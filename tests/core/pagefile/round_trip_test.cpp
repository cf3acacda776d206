// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <iostream>

#include "tests/core/making/random_making.h"
#include "tests/core/pagefile/example_page.h"

namespace matwright::test {
namespace {

constexpr std::uint64_t seed = 20'261'134;

void expectRoundTrip(const Making& making, const std::string& folder) {
    const std::string written = writePage(making, {}, folder);
    const auto loaded = readPage(written, folder);
    ASSERT_TRUE(loaded) << loaded.error().text() << "\n" << written;
    ASSERT_EQ(loaded->making, making) << written;
    ASSERT_TRUE(loaded->warnings.empty()) << loaded->warnings.front();
    ASSERT_TRUE(loaded->photosElsewhere.empty());
    ASSERT_EQ(writePage(loaded->making, {}, folder), written);
}

TEST(PageRoundTrip, TenThousandRandomPagesGiveEqualPagesAndEqualBytes) {
    constexpr int count = 10'000;
    Random random(seed);
    std::size_t placements = 0;
    for (int i = 0; i < count; ++i) {
        const Making making = randomMaking(random, within(random, 0, 8), within(random, 0, 6));
        placements += making.work.placements.size();
        const char* folder = below(random, 2) == 0 ? "/photos" : "";
        ASSERT_NO_FATAL_FAILURE(expectRoundTrip(making, folder))
            << "page " << i << ", seed " << seed;
    }
    std::cout << count << " pages byte-equal, seed " << seed << " (" << placements
              << " placed photos)\n";
}

TEST(PageRoundTrip, TheExampleAndTheBlankPageComeBack) {
    expectRoundTrip(examplePage(), exampleFolder);
    expectRoundTrip(Making{blankSketch(), {}}, "");
}

TEST(PageRoundTrip, OddPathsAndWordsKeepEverySign) {
    for (const char* text : {" ", "  two  spaces ", "<&>\"'", "&amp;", "]]>", "\u00A0",
                             "\U0001F642", "\uFEFFa", "%20", "a\\b"}) {
        Making making = examplePage();
        making.work.photos.at(PhotoId{1}).path = std::string("/photos/") + text;
        making.work.photos.at(PhotoId{1}).taken = text;
        making.work.papers[text] = making.work.papers.at("patterned, 6 x 12");
        expectRoundTrip(making, "");
        expectRoundTrip(making, "/photos");
    }
}

TEST(PageRoundTrip, TheLargestAndSmallestValuesComeBack) {
    Making making = examplePage();
    Photo& photo = making.work.photos.at(PhotoId{1});
    photo.bytes = (std::uint64_t{1} << 63) - 1;
    photo.upright = {maxPhotoPixelsASide, 1};
    photo.rating = -1;
    photo.tone = {false, -100, 100, -100, 100, 100};
    making.work.photos.emplace(maxPhotoId, photo);
    making.work.placements.at(PieceId{1}).crop = {0, Crop::one, Crop::largestZoom, 3,
                                                  Angle::degrees(45)};
    making.work.placements.at(PieceId{2}).border = Length::fromTicks(1);
    expectRoundTrip(making, "");
}

}  // namespace
}  // namespace matwright::test
