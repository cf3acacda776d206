// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <iostream>

#include "core/paperplan/paper_plan.h"
#include "tests/core/paperplan/plan_laws.h"
#include "tests/support/example_sketches.h"
#include "tests/support/plausible_sketch.h"

namespace matwright {
namespace {

using test::Random;

constexpr const char* paperNames[] = {"kraft", "White ", "dots", "blue stripes"};

// Plans everyday pages at once and stops soon: the laws hold for every plan.
PaperPlanOptions quickly() {
    PaperPlanOptions options;
    options.limits = {20'000, std::chrono::milliseconds(2000)};
    return options;
}

std::string anyPaper(Random& random, std::uint64_t names) {
    return test::below(random, 6) == 0 ? "" : paperNames[test::below(random, names)];
}

// The fewer names, the more is cut from one paper.
void choosePapers(Sketch& sketch, Random& random, std::uint64_t names) {
    for (auto& [id, piece] : sketch.pieces) {
        piece.paper = test::below(random, 2) == 0 ? anyPaper(random, names) : "";
        if (test::below(random, 5) == 0) {
            piece.rotation = Angle::degrees(90 * static_cast<int>(test::below(random, 4)));
        }
        for (Mat& mat : piece.mats) {
            mat.paper = anyPaper(random, names);
            mat.gutted = test::below(random, 3) != 0;
        }
    }
}

// A photo over most of the page on a gutted mat: paper enough for small mats lies hidden in it.
void addLargePhoto(Sketch& sketch, Random& random) {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.size = {
        Length::inches(9) + Length::inches(0, static_cast<int>(test::below(random, 40)), 16),
        Length::inches(10)};
    piece.printSize = piece.size;
    piece.mats.push_back({Length::inches(0, 1, 8), Length::inches(0, 1, 2), paperNames[0], true});
    piece.rotation = Angle::degrees(90 * static_cast<int>(test::below(random, 4)));
    const PieceId id = nextId(sketch);
    sketch.order.push_back(id);
    sketch.pieces.emplace(id, std::move(piece));
}

std::vector<PaperOnHand> anyPapersOnHand(Random& random) {
    std::vector<PaperOnHand> papers;
    for (auto count = test::below(random, 9); count > 0; --count) {
        PaperOnHand paper;
        paper.id = {static_cast<std::int64_t>(count)};
        paper.name = paperNames[test::below(random, 4)];
        const bool isScrap = test::below(random, 2) == 0;
        paper.kind = isScrap ? PaperKind::Scrap : PaperKind::WholeSheet;
        paper.count = static_cast<int>(test::below(random, 4));
        const auto side = [&] {
            return Length::inches(2) +
                   Length::inches(0, static_cast<int>(test::below(random, 96)), 16);
        };
        paper.size = isScrap ? Size{side(), side()} : Size{Length::inches(12), Length::inches(12)};
        paper.pattern = test::below(random, 4) == 0 ? PaperPattern::HasUp : PaperPattern::None;
        papers.push_back(paper);
    }
    return papers;
}

void expectLaws(const std::vector<PaperPage>& pages, const std::vector<PaperOnHand>& onHand,
                const PaperPlanOptions& options, int& middles) {
    const auto plan = planPapers(pages, onHand, options);
    ASSERT_TRUE(plan) << plan.error().text();
    EXPECT_EQ(test::brokenPlanLaws(*plan, pages, onHand, options), std::vector<std::string>());
    for (const PaperSheet& sheet : plan->sheets) {
        middles += std::holds_alternative<FromMiddle>(sheet.source);
    }
}

TEST(PaperPlanLaws, HoldForTheExamplePages) {
    int middles = 0;
    std::vector<PaperPage> all;
    for (const test::ExampleSketch& example : test::exampleSketches()) {
        all.push_back({example.sketch.name, example.sketch});
        PaperPlanOptions options = quickly();
        options.scale = example.metric ? Scale::WholeMillimetre : Scale::SixteenthInch;
        expectLaws({all.back()}, {}, options, middles);
    }
    expectLaws(all, {}, quickly(), middles);
}

TEST(PaperPlanLaws, HoldForRandomPagesAndPapers) {
    int middles = 0;
    for (std::uint64_t seed = 1; seed <= 240; ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        Random random(seed);
        std::vector<PaperPage> pages;
        for (auto count = 1 + test::below(random, 3); count > 0; --count) {
            pages.push_back({"page " + std::to_string(count), test::plausibleSketch(random)});
            choosePapers(pages.back().sketch, random, seed % 3 == 0 ? 4 : 1);
            if (seed % 2 == 0) {
                addLargePhoto(pages.back().sketch, random);
            }
        }
        const auto onHand = anyPapersOnHand(random);
        PaperPlanOptions options = quickly();
        options.glueEdge = Length::inches(0, static_cast<int>(test::below(random, 9)), 8);
        options.rules.kerf = test::below(random, 4) == 0 ? Length::inches(0, 1, 32) : Length();
        if (test::below(random, 3) == 0) {
            options.toBuy.clear();
        }
        expectLaws(pages, onHand, options, middles);
    }
    std::cout << middles << " middles of mats used\n";
    EXPECT_GT(middles, 20);
}

TEST(PaperPlanLaws, HoldForPagesOfEveryOddity) {
    int middles = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        Random random(seed);
        PaperPage page{"odd", test::randomSketch(random, 8)};
        if (seed % 2 == 0) {
            choosePapers(page.sketch, random, 4);
        }
        expectLaws({page}, anyPapersOnHand(random), quickly(), middles);
    }
}

}  // namespace
}  // namespace matwright
