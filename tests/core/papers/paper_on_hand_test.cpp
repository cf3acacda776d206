// SPDX-License-Identifier: MIT
#include "core/papers/paper_on_hand.h"

#include <gtest/gtest.h>

#include <functional>

namespace matwright {
namespace {

PaperOnHand kraftPaper() {
    PaperOnHand paper;
    paper.name = "kraft cardstock";
    paper.size = {Length::inches(12), Length::inches(12)};
    paper.count = 6;
    return paper;
}

TEST(PaperOnHand, NamesOfOnePaperAreEqualWhateverTheirCaseAndSpaces) {
    EXPECT_EQ(paperKey("  Kraft   Cardstock "), paperKey("kraft cardstock"));
    EXPECT_EQ(paperKey("GRÜN\tgestreift"), paperKey("grün gestreift"));
    EXPECT_NE(paperKey("kraft cardstock"), paperKey("kraft card stock"));
    EXPECT_EQ(paperKey(" \t "), "");
}

TEST(PaperOnHand, SaysItsSizeAndWhetherItIsAScrap) {
    PaperOnHand paper = kraftPaper();
    EXPECT_EQ(paperText(paper, Scale::SixteenthInch), "kraft cardstock, 12 × 12 in");
    paper.kind = PaperKind::Scrap;
    paper.size = {Length::inches(5), Length::inches(7, 1, 2)};
    EXPECT_EQ(paperText(paper, Scale::SixteenthInch), "kraft cardstock, 5 × 7 1/2 in, a scrap");
}

TEST(PaperOnHand, ANameThatIsTooLongIsCountedInLettersNotInBytes) {
    PaperOnHand paper = kraftPaper();
    std::string letters;
    for (int i = 0; i < 200; ++i) {
        letters += "б";  // two bytes
    }
    paper.name = letters;
    EXPECT_FALSE(findFault(paper));
    paper.name += "б";
    ASSERT_TRUE(findFault(paper));
    EXPECT_EQ(findFault(paper)->sentence,
              "The paper's name is too long: 200 of its 201 letters fit. Shorten it.");
    paper.name = "a" + letters;  // the last one would be cut in two
    EXPECT_EQ(findFault(paper)->sentence,
              "The paper's name is too long: 200 of its 201 letters fit. Shorten it.");
}

TEST(PaperOnHand, EveryBoundIsKept) {
    EXPECT_FALSE(findFault(kraftPaper()));
    const Length tick = Length::fromTicks(1);
    const std::function<void(PaperOnHand&)> broken[] = {
        [](PaperOnHand& p) { p.name = std::string(1, ' '); },
        [](PaperOnHand& p) { p.name = "two\nlines"; },
        [](PaperOnHand& p) { p.name = std::string(maxPaperNameBytes + 1, 'x'); },
        [](PaperOnHand& p) { p.thickness = std::string(1, '\xff'); },
        [=](PaperOnHand& p) { p.size.width = smallestPaperSide - tick; },
        [=](PaperOnHand& p) { p.size.height = largestPaperSide + tick; },
        [](PaperOnHand& p) { p.count = -1; },
        [](PaperOnHand& p) { p.count = maxPaperCount + 1; },
        [](PaperOnHand& p) { p.pictureWidth = Length::inches(1); },
        [](PaperOnHand& p) { p.picture = "/p.png"; },
        [=](PaperOnHand& p) {
            p.picture = "/p.png";
            p.pictureWidth = Length::inches(200) + tick;
        },
    };
    for (std::size_t i = 0; i < std::size(broken); ++i) {
        PaperOnHand paper = kraftPaper();
        broken[i](paper);
        const auto fault = findFault(paper);
        ASSERT_TRUE(fault) << i;
        EXPECT_EQ(fault->code, ErrorCode::Malformed);
    }
}

TEST(PaperOnHand, WhatLiesOnABoundIsFine) {
    PaperOnHand paper = kraftPaper();
    paper.name = std::string(maxPaperNameBytes, 'x');
    paper.size = {smallestPaperSide, largestPaperSide};
    paper.count = 0;
    paper.picture = "/p.png";
    paper.pictureWidth = Length::inches(200);
    EXPECT_FALSE(findFault(paper));
    paper.count = maxPaperCount;
    EXPECT_FALSE(findFault(paper));
}

}  // namespace
}  // namespace matwright
