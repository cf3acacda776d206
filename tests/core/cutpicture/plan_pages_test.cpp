// SPDX-License-Identifier: MIT
#include "core/cutpicture/plan_pages.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/measure/catalogue.h"
#include "tests/core/cutpicture/planned_sheets.h"

namespace matwright {
namespace {

using test::Random;

std::vector<TextItem> textsOn(const Drawing& page) {
    return test::textsOf(page.layers.front().items);
}

std::string allWords(const std::vector<Drawing>& pages) {
    std::string words;
    for (const Drawing& page : pages) {
        for (const TextItem& text : textsOn(page)) {
            words += text.text + " ";
        }
    }
    return words;
}

std::size_t countOf(const std::string& what, const std::string& text) {
    std::size_t count = 0;
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + 1)) {
        ++count;
    }
    return count;
}

TEST(PlanPages, BeginWithTitleSummaryAndOneCaution) {
    const std::vector<PlannedSheet> sheets{test::smallSheet(), test::smallSheet()};
    PlanPagesOptions options;
    options.title = "Cutting plan for Beach";
    options.summary = {"2 sheets, proved fewest.", "To buy: 1 sheet of kraft"};
    const auto pages = planPages(sheets, options);
    const auto texts = textsOn(pages.front());
    EXPECT_EQ(texts[0].text, "Cutting plan for Beach");
    EXPECT_EQ(texts[1].text, "2 sheets, proved fewest.");
    EXPECT_EQ(texts[2].text, "To buy: 1 sheet of kraft");
    EXPECT_EQ(countOf("fresh blade", allWords(pages)), 1U);
}

TEST(PlanPages, AnEmptyPlanIsOnePage) {
    PlanPagesOptions options;
    options.summary = {"Nothing is to be cut."};
    const auto pages = planPages({}, options);
    ASSERT_EQ(pages.size(), 1U);
    EXPECT_EQ(countOf("blade", allWords(pages)), 0U);
}

TEST(PlanPages, EveryStepStandsThereInOrderAndNothingLeavesTheMargin) {
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        Random random(seed);
        const auto sheets = test::plannedSheets(test::randomCutJob(random));
        for (const char* paper : {"letter", "a4"}) {
            SCOPED_TRACE(testing::Message() << "seed " << seed << ", " << paper);
            PlanPagesOptions options;
            options.paper = findSheetSize(paper)->size;
            options.title = "Cutting plan";
            const auto pages = planPages(sheets, options);
            const std::string words = allWords(pages);
            std::size_t at = 0;
            for (const PlannedSheet& sheet : sheets) {
                at = words.find(sheet.heading, at);
                ASSERT_NE(at, std::string::npos);
                for (std::size_t step = 0; step < sheet.steps.steps.size(); ++step) {
                    std::string number(1, ' ');
                    number.append(std::to_string(step + 1)).append(". ");
                    at = words.find(number, at);
                    ASSERT_NE(at, std::string::npos) << number;
                }
            }
            const Rect inside = Rect::at({}, options.paper)
                                    .expanded(Length::hundredthMillimetres(5) - options.margin);
            for (const Drawing& page : pages) {
                for (const DrawingItem& item : page.layers.front().items) {
                    // Page numbers have descenders below the margin's line.
                    const auto* text = std::get_if<TextItem>(&item);
                    if (!text || !text->text.starts_with("Page ")) {
                        EXPECT_TRUE(inside.contains(test::inkOf(item)))
                            << (text ? text->text : "a path");
                    }
                }
            }
        }
    }
}

TEST(PlanPages, AHeadingNeverStandsAloneAtTheFootOfAPage) {
    const std::vector<PlannedSheet> sheets(6, test::smallSheet());
    for (const Drawing& page : planPages(sheets, {})) {
        const auto texts = textsOn(page);
        const auto last = std::ranges::find_if(
            texts.rbegin(), texts.rend(),
            [](const TextItem& text) { return !text.text.starts_with("Page "); });
        ASSERT_NE(last, texts.rend());
        EXPECT_FALSE(last->text.starts_with("Sheet ")) << last->text;
    }
}

TEST(PlanPages, ALongWordIsShortenedRatherThanRunOff) {
    PlanPagesOptions options;
    options.title = std::string(300, 'W');
    const auto pages = planPages({}, options);
    EXPECT_TRUE(textsOn(pages.front()).front().text.ends_with("\u2026"));
}

TEST(PlanPages, KnifeCutsRepeatTheirCaution) {
    PlannedSheet sheet = test::smallSheet();
    const auto piece = std::ranges::find(sheet.plan.parts, CutPart::Use::Piece, &CutPart::use);
    sheet.knifeCuts = {{static_cast<int>(piece - sheet.plan.parts.begin()),
                        piece->area.expanded(-Length::inches(0, 1, 2)), "it is sheet 2"}};
    const std::vector<PlannedSheet> sheets{sheet, sheet};
    EXPECT_EQ(countOf("metal rule", allWords(planPages(sheets, {}))), 2U);
}

}  // namespace
}  // namespace matwright
