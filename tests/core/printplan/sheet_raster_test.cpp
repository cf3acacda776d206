// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "core/photo/photo_source.h"
#include "core/printplan/sheet_files.h"
#include "core/prints/pixel_places.h"
#include "tests/core/printplan/made_plans.h"
#include "tests/support/temporary_folder.h"

namespace matwright {

namespace {

using test::inches;
constexpr int ppi = 300;

class RenderedSheet : public testing::Test {
  protected:
    // One photo of one shade for all, with fewer pixels than the prints have.
    void usePhoto(PlanPage& page) {
        const std::filesystem::path file = m_folder / "dark.jpg";
        const Raster dark{{800, 600}, std::vector<std::uint8_t>(3U * 800 * 600, shade)};
        test::writeFile(file, smallJpeg(dark, 95));
        for (auto& [id, photo] : page.making.work.photos) {
            photo.path = file;
            photo.content = contentKeyOf(test::readFile(file));
            photo.upright = dark.size;
        }
    }
    PlanInput inputFor(const std::vector<Size>& prints, std::vector<Printer> printers) {
        PlanPage page = test::madePage("A page", prints);
        usePhoto(page);
        return test::inputOf({page}, std::move(printers));
    }
    static std::vector<Printer> onePaper(Size size, bool borderless,
                                         std::optional<Correction> correction) {
        std::vector<Printer> printers = test::keptPrinters();
        printers.resize(1);
        printers[0].papers.resize(1);
        PrinterPaper& paper = printers[0].papers[0];
        paper.size = size;
        paper.borderless = borderless;
        (borderless ? paper.withoutBorders : paper.withBorders) = std::move(correction);
        return printers;
    }
    static bool isDark(const Raster& sheet, int x, int y) {
        return sheet.row(y)[3 * static_cast<std::size_t>(x)] < 128;
    }
    // The dark stretch of a row or column through the middle.
    static std::pair<int, int> stretch(const Raster& sheet, bool across) {
        const int end = across ? sheet.size.width : sheet.size.height;
        const auto dark = [&](int i) {
            return across ? isDark(sheet, i, sheet.size.height / 2)
                          : isDark(sheet, sheet.size.width / 2, i);
        };
        int first = 0;
        while (first < end && !dark(first)) {
            ++first;
        }
        int last = end;
        while (last > first && !dark(last - 1)) {
            --last;
        }
        return {first, last};
    }
    test::TemporaryFolder m_folder;
    std::uint8_t shade = 40;
};

TEST_F(RenderedSheet, ShowsThePictureBeyondTheTrimAsPlanned) {
    PlanInput input = inputFor({inches(2, 3)}, onePaper(inches(4, 6), true, std::nullopt));
    input.pages[0].making.sketch.pieces.begin()->second.printSize = inches(4, 6);
    input.bleed = Length::inches(0, 1, 10);
    const PrintPlan plan = test::soundPlan(input);
    const auto sheet = renderSheet(plan, plan.sheets[0], input.printers, {});
    ASSERT_TRUE(sheet) << sheet.error().text();
    // 2 in of 4 in, and 1/10 in on either side.
    EXPECT_EQ(stretch(*sheet, true), std::pair(270, 930));
}

TEST_F(RenderedSheet, IsTheGangWhereNothingIsCorrected) {
    const PlanInput input =
        inputFor({inches(3, 4), inches(3, 4)}, onePaper(inches(4, 6), true, std::nullopt));
    const PrintPlan plan = test::soundPlan(input);
    const auto sheet = renderSheet(plan, plan.sheets[0], input.printers, {});
    ASSERT_TRUE(sheet) << sheet.error().text();
    EXPECT_EQ(sheet->size, (PixelSize{1200, 1800}));
    // Full of picture, also where both meet.
    EXPECT_EQ(stretch(*sheet, true), std::pair(0, 1200));
    for (int y = 0; y < 1800; ++y) {
        ASSERT_TRUE(isDark(*sheet, 600, y)) << y;
    }
}

TEST_F(RenderedSheet, ComesOutTrueOfAPrinterThatEnlarges) {
    // A print in the middle of a larger paper, sent smaller by what the test sheet measured; what
    // the printer makes of it is arithmetic about the paper's middle.
    double worst = 0;
    for (const auto& [across, down] :
         {std::pair(1.02, 1.033), std::pair(1.05, 1.005), std::pair(0.98, 1.01)}) {
        const auto correction = correctionOf(
            inches(5, 5),
            {Length::roundedFromInches(5 * across), Length::roundedFromInches(5 * down)},
            "2026-07-14");
        ASSERT_TRUE(correction);
        const PlanInput input =
            inputFor({inches(5, 7)}, onePaper(inches(8, 10), false, *correction));
        const PrintPlan plan = test::soundPlan(input);
        PrintSheet centred = plan.sheets[0];
        Gang::Place& place = centred.gang.places[0];
        const Size lying = place.turned ? inches(7, 5) : inches(5, 7);
        place.at = {(Length::inches(8) - lying.width).halfRoundedDown(),
                    (Length::inches(10) - lying.height).halfRoundedDown()};
        const auto sheet = renderSheet(plan, centred, input.printers, {});
        ASSERT_TRUE(sheet) << sheet.error().text();
        ASSERT_EQ(sheet->size, (PixelSize{2400, 3000}));
        const auto [left, right] = stretch(*sheet, true);
        const auto [top, bottom] = stretch(*sheet, false);
        // In mm over 5 in.
        const double wide =
            std::abs((right - left) * across / ppi / lying.width.toInches() - 1) * 127;
        const double high =
            std::abs((bottom - top) * down / ppi / lying.height.toInches() - 1) * 127;
        worst = std::max({worst, wide, high});
        EXPECT_LT(std::max(wide, high), 0.1);
    }
    std::puts(fmt::format("true size of a corrected print: worst {:.3f} mm over 5 in at {} ppi "
                          "(bar 0.1 mm)",
                          worst, ppi)
                  .c_str());
}

TEST_F(RenderedSheet, GoesOnBeyondTheEdgeOfACorrectedBorderlessPaper) {
    const auto correction = correctionOf(
        inches(5, 5), {Length::inches(5, 1, 5), Length::inches(5, 1, 10)}, "2026-07-14");
    const PlanInput input =
        inputFor({inches(3, 4), inches(4, 3)}, onePaper(inches(4, 6), true, *correction));
    const PrintPlan plan = test::soundPlan(input);
    ASSERT_EQ(plan.sheets.size(), 1U);
    const auto sheet = renderSheet(plan, plan.sheets[0], input.printers, {});
    ASSERT_TRUE(sheet) << sheet.error().text();
    // No white edge is sent, and none between the two prints.
    EXPECT_EQ(stretch(*sheet, true), std::pair(0, 1200));
    for (int y = 0; y < 1800; ++y) {
        ASSERT_TRUE(isDark(*sheet, 0, y) && isDark(*sheet, 600, y) && isDark(*sheet, 1199, y)) << y;
    }
}

TEST_F(RenderedSheet, GoesOnWithThePhotosEdgeWhereThePhotoEnds) {
    // A light photo that is used to its last pixel: nothing dark is made up beyond it.
    shade = 200;
    const auto correction = correctionOf(
        inches(5, 5), {Length::inches(5, 1, 5), Length::inches(5, 1, 10)}, "2026-07-14");
    const PlanInput input = inputFor({inches(4, 3)}, onePaper(inches(4, 3), true, *correction));
    const PrintPlan plan = test::soundPlan(input);
    const auto sheet = renderSheet(plan, plan.sheets.at(0), input.printers, {});
    ASSERT_TRUE(sheet) << sheet.error().text();
    const auto [least, most] = std::ranges::minmax_element(sheet->pixels);
    EXPECT_GT(*least, 190);
    EXPECT_LT(*most, 210);
}

TEST_F(RenderedSheet, HasCutMarksOnBarePaperOnly) {
    const PlanInput input = inputFor({inches(5, 7)}, onePaper(inches(8, 10), false, std::nullopt));
    const PrintPlan plan = test::soundPlan(input);
    PrintOptions options;
    const auto bare = renderSheet(plan, plan.sheets[0], input.printers, options);
    options.cutMarks = true;
    const auto marked = renderSheet(plan, plan.sheets[0], input.printers, options);
    ASSERT_TRUE(bare && marked);
    EXPECT_NE(*bare, *marked);
    const Gang::Place& place = plan.sheets[0].gang.places[0];
    const Size lying = place.turned ? inches(7, 5) : inches(5, 7);
    const PixelRect print = {static_cast<int>(place.at.x.toInches() * ppi + 0.5),
                             static_cast<int>(place.at.y.toInches() * ppi + 0.5),
                             static_cast<int>((place.at.x + lying.width).toInches() * ppi),
                             static_cast<int>((place.at.y + lying.height).toInches() * ppi)};
    for (int y = print.top; y < print.bottom; ++y) {
        for (int x = print.left; x < print.right; ++x) {
            const auto at = 3 * static_cast<std::size_t>(x);
            ASSERT_EQ(bare->row(y)[at], marked->row(y)[at]);
        }
    }
}

TEST_F(RenderedSheet, SaysWhichPhotoIsOutOfReach) {
    const PlanInput input = test::inputOf({test::madePage("A page", {inches(3, 4)})});
    const PrintPlan plan = test::soundPlan(input);
    EXPECT_FALSE(renderSheet(plan, plan.sheets[0], input.printers, {}));
}

}  // namespace

}  // namespace matwright
