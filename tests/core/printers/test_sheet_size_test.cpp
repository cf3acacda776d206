// SPDX-License-Identifier: MIT
// A printer that enlarges, played on the pixels of a test sheet that another program has drawn.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <vips/vips8>

#include "core/drawing/svg.h"
#include "core/printers/test_sheet.h"
#include "tests/support/outside_tool.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/tool_run.h"

namespace matwright {

namespace {

constexpr double ppi = 300;
constexpr double bar = 0.1;  // mm over 5 in

// What comes out of the printer, as grey pixels at `ppi`: enlarged about the middle, and what goes
// over the paper's edge is lost.
vips::VImage printed(const std::filesystem::path& picture, double across, double down) {
    const vips::VImage drawing =
        vips::VImage::new_from_file(picture.c_str()).colourspace(VIPS_INTERPRETATION_B_W);
    vips::VImage sheet = drawing.extract_band(0).copy_memory();
    const int width = sheet.width();
    const int height = sheet.height();
    vips::VImage large = sheet.affine({across, 0, 0, down});
    // Of one that shrinks the rest of the paper stays white.
    const int wide = std::max(width, large.width());
    const int high = std::max(height, large.height());
    large = large.embed((wide - large.width()) / 2, (high - large.height()) / 2, wide, high,
                        vips::VImage::option()->set("extend", VIPS_EXTEND_WHITE));
    return large.extract_area((wide - width) / 2, (high - height) / 2, width, height)
        .cast(VIPS_FORMAT_UCHAR)
        .copy_memory();
}

std::string drawn(const TestSheet& sheet, const test::TemporaryFolder& folder) {
    test::writeFile(folder / "sheet.svg", svgText(sheet.drawing));
    const std::string file = folder / "sheet.png";
    EXPECT_EQ(test::runTool({"rsvg-convert", "-d", "300", "-p", "300", "-b", "white", "-o", file,
                             folder / "sheet.svg"})
                  .code,
              0);
    return file;
}

// Where along one axis the middle of the mark lies: the darkest line of a band beside the ruler
// that only marks reach, about where it should be.
double markAt(const vips::VImage& page, Point expected, bool acrossAxis) {
    const auto pixel = [](double inches) { return static_cast<int>(std::lround(inches * ppi)); };
    const double along = acrossAxis ? expected.x.toInches() : expected.y.toInches();
    const double beside = acrossAxis ? expected.y.toInches() : expected.x.toInches();
    const int from = pixel(along - 0.28);
    const int length = pixel(0.56);
    const int band = pixel(beside + 0.16);
    const int depth = pixel(0.06);
    vips::VImage strip = acrossAxis ? page.extract_area(from, band, length, depth)
                                    : page.extract_area(band, from, depth, length);
    // The mean darkness of each line of pixels.
    vips::VImage line = acrossAxis ? strip.invert().reducev(depth) : strip.invert().reduceh(depth);
    line = line.copy_memory();
    std::vector<double> dark;
    for (int i = 0; i < length; ++i) {
        dark.push_back(acrossAxis ? line.getpoint(i, 0)[0] : line.getpoint(0, i)[0]);
    }
    const auto darkest = std::ranges::max_element(dark) - dark.begin();
    EXPECT_GT(dark[static_cast<std::size_t>(darkest)], 120) << "no mark";
    double sum = 0;
    double weighted = 0;
    for (auto i = darkest - 4; i <= darkest + 4; ++i) {
        if (i >= 0 && i < std::ssize(dark)) {
            sum += dark[static_cast<std::size_t>(i)];
            weighted += dark[static_cast<std::size_t>(i)] * (static_cast<double>(i) + 0.5);
        }
    }
    return (from + weighted / sum) / ppi;
}

// In inches.
struct Measured {
    double across = 0;
    double down = 0;
};

// What a ruler shows on the printed sheet. The marks lie where they were sent, moved by the printer
// a little; they are looked for there.
Measured measure(const TestSheet& sheet, const vips::VImage& page, double across, double down) {
    const auto moved = [&](Point mark) {
        const Size size = sheet.drawing.size;
        const Point middle{size.width.halfRoundedDown(), size.height.halfRoundedDown()};
        return Point{middle.x + (mark.x - middle.x).scaledRounded(across),
                     middle.y + (mark.y - middle.y).scaledRounded(down)};
    };
    return {markAt(page, moved(sheet.b), true) - markAt(page, moved(sheet.a), true),
            markAt(page, moved(sheet.d), false) - markAt(page, moved(sheet.c), false)};
}

struct Case {
    std::size_t printer;
    std::size_t paper;
    double across;
    double down;
};

TEST(TestSheets, BringBorderlessPrintersToTrueSize) {
    if (!test::hasTool("rsvg-convert")) {
        GTEST_SKIP() << "SKIPPED: rsvg-convert is not installed.";
    }
    ASSERT_EQ(VIPS_INIT("test sheets"), 0);
    // Common practice, no source: borderless printing enlarges by 1 to 4 %.
    const Case cases[] = {{0, 0, 1.005, 1.012}, {0, 0, 1.02, 1.033}, {0, 0, 1.05, 1.005},
                          {0, 1, 1.031, 1.018}, {2, 2, 1.05, 1.043}, {2, 2, 1.013, 1.027},
                          {1, 0, 0.985, 1.009}};
    const test::TemporaryFolder folder;
    const std::vector<Printer> printers = startingPrinters(Unit::Inch);
    double worst = 0;
    double worstBefore = 0;
    for (const Case& one : cases) {
        const Printer& printer = printers[one.printer];
        const PrinterPaper& paper = printer.papers[one.paper];
        const Borders borders = paper.borderless ? Borders::Without : Borders::With;
        const TestSheet sheet = testSheet(printer, paper, borders);
        const Measured first = measure(sheet, printed(drawn(sheet, folder), one.across, one.down),
                                       one.across, one.down);
        EXPECT_NEAR(first.across, sheet.marks.width.toInches() * one.across, 0.005);
        const auto correction = correctionOf(
            sheet.marks,
            {Length::roundedFromInches(first.across), Length::roundedFromInches(first.down)},
            "2026-07-14");
        ASSERT_TRUE(correction) << correction.error().text();
        const TestSheet again = testSheet(printer, paper, borders, correction.value());
        const Measured second = measure(again, printed(drawn(again, folder), one.across, one.down),
                                        one.across, one.down);
        // In mm over 5 in, whatever the marks' distance is.
        const auto off = [](double measured, Length wished) {
            return std::abs(measured / wished.toInches() - 1) * 127;
        };
        for (const double now :
             {off(second.across, sheet.marks.width), off(second.down, sheet.marks.height)}) {
            EXPECT_LT(now, bar) << printer.name << ", " << paper.name;
            worst = std::max(worst, now);
        }
        worstBefore = std::max({worstBefore, off(first.across, sheet.marks.width),
                                off(first.down, sheet.marks.height)});
    }
    std::puts(
        fmt::format("true size after a test sheet: worst {:.3f} mm over 5 in (bar {} mm; "
                    "before: {:.1f} mm), {} sheets drawn by rsvg-convert, enlarged 0.5 to 5 %",
                    worst, bar, worstBefore, std::size(cases))
            .c_str());
}

}  // namespace

}  // namespace matwright
