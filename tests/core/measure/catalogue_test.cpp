// SPDX-License-Identifier: MIT
#include "core/measure/catalogue.h"

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "core/measure/length_text.h"
#include "tests/support/check_data.h"

namespace matwright {
namespace {

Size inches(std::string_view width, std::string_view height) {
    return {parseLength(width, Unit::Inch).value(), parseLength(height, Unit::Inch).value()};
}
Size millimetres(int width, int height) {
    return {Length::millimetres(width), Length::millimetres(height)};
}

std::vector<NamedSize> everything() {
    std::vector<NamedSize> all;
    for (const auto table : {pageSizes(), printSizes(), sheetSizes()}) {
        all.insert(all.end(), table.begin(), table.end());
    }
    return all;
}

Size upright(Size size) {
    return size.width > size.height ? size.turned() : size;
}

// The size that a media name gives of itself: PWG 5101.1, "class_size-name_WxLunits", short edge
// first, in or mm.
std::optional<Size> sizeInName(std::string_view pwgName) {
    const std::size_t underscore = pwgName.rfind('_');
    const std::size_t times = pwgName.rfind('x');
    if (underscore == std::string_view::npos || times == std::string_view::npos ||
        times < underscore) {
        return std::nullopt;
    }
    const Unit unit = pwgName.ends_with("mm") ? Unit::Millimetre : Unit::Inch;
    const std::string_view width = pwgName.substr(underscore + 1, times - underscore - 1);
    const std::string_view length = pwgName.substr(times + 1, pwgName.size() - times - 3);
    const auto w = parseLength(width, unit);
    const auto l = parseLength(length, unit);
    return w && l ? std::optional(Size{*w, *l}) : std::nullopt;
}

TEST(Catalogue, HasEveryPageSizeOfTheTrade) {
    // The page sizes scrapbook albums are made for: common practice, no source.
    const std::map<std::string_view, Size> expected{
        {"12x12", inches("12", "12")},       {"8.5x11", inches("8 1/2", "11")},
        {"11x8.5", inches("11", "8 1/2")},   {"a4", millimetres(210, 297)},
        {"a4-lying", millimetres(297, 210)}, {"8x8", inches("8", "8")},
        {"6x8", inches("6", "8")},           {"9x12", inches("9", "12")}};
    EXPECT_EQ(pageSizes().size(), expected.size());
    for (const auto& [id, size] : expected) {
        ASSERT_NE(findPageSize(id), nullptr) << id;
        EXPECT_EQ(findPageSize(id)->size, size) << id;
    }
}

TEST(Catalogue, HasEveryPrintSizeOfTheTrade) {
    // Common practice, no source; where a size is registered its PWG name is checked below.
    const std::map<std::string_view, Size> expected{{"2x2", inches("2", "2")},
                                                    {"2.5x2.5", inches("2.5", "2.5")},
                                                    {"3x3", inches("3", "3")},
                                                    {"3x4", inches("3", "4")},
                                                    {"4x4", inches("4", "4")},
                                                    {"3.5x5", inches("3 1/2", "5")},
                                                    {"4x6", inches("4", "6")},
                                                    {"5x5", inches("5", "5")},
                                                    {"5x7", inches("5", "7")},
                                                    {"6x8", inches("6", "8")},
                                                    {"8x10", inches("8", "10")},
                                                    {"10x15cm", inches("10 cm", "15 cm")},
                                                    {"13x18cm", inches("13 cm", "18 cm")}};
    EXPECT_EQ(printSizes().size(), expected.size());
    for (const auto& [id, size] : expected) {
        ASSERT_NE(findPrintSize(id), nullptr) << id;
        EXPECT_EQ(findPrintSize(id)->size, size) << id;
    }
}

TEST(Catalogue, SheetsAreAsCssPagedMediaNamesThem) {
    // CSS Paged Media Module Level 3, page-size property: A4 210 x 297 mm, A3 297 x 420 mm,
    // letter 8.5 x 11 in, legal 8.5 x 14 in, ledger (our Tabloid, upright) 11 x 17 in.
    EXPECT_EQ(findSheetSize("a4")->size, millimetres(210, 297));
    EXPECT_EQ(findSheetSize("a3")->size, millimetres(297, 420));
    EXPECT_EQ(findSheetSize("letter")->size, inches("8.5", "11"));
    EXPECT_EQ(findSheetSize("legal")->size, inches("8.5", "14"));
    EXPECT_EQ(findSheetSize("tabloid")->size, inches("11", "17"));
}

TEST(Catalogue, SheetsAreAsTheMediaTablesNameThem) {
    // PWG media table as compiled into libcups 2.4.2 (cups/pwg-media.c), in 1/100 mm.
    const std::map<std::string_view, std::pair<int, int>> expected{
        {"na_letter_8.5x11in", {21'590, 27'940}}, {"na_legal_8.5x14in", {21'590, 35'560}},
        {"na_ledger_11x17in", {27'940, 43'180}},  {"iso_a4_210x297mm", {21'000, 29'700}},
        {"iso_a3_297x420mm", {29'700, 42'000}},   {"na_arch-b_12x18in", {30'480, 45'720}},
        {"na_super-b_13x19in", {33'020, 48'260}}};
    EXPECT_EQ(sheetSizes().size(), expected.size());
    for (const NamedSize& sheet : sheetSizes()) {
        ASSERT_TRUE(expected.contains(sheet.pwgName)) << sheet.id;
        const auto [width, length] = expected.at(sheet.pwgName);
        EXPECT_EQ(sheet.size,
                  (Size{Length::hundredthMillimetres(width), Length::hundredthMillimetres(length)}))
            << sheet.id;
    }
}

TEST(Catalogue, ASizesFollowIso216) {
    // ISO 216 (read second-hand): A0 is 1 m2 with sides in the ratio 1 : sqrt 2; each next size
    // halves the long side, rounded down to whole millimetres.
    const double longSide = 1000 * std::sqrt(std::sqrt(2.0));
    int width = static_cast<int>(std::lround(longSide / std::sqrt(2.0)));
    int length = static_cast<int>(std::lround(longSide));
    for (int step = 0; step < 3; ++step) {
        length = std::exchange(width, length / 2);
    }
    EXPECT_EQ(findSheetSize("a3")->size, millimetres(width, length));
    length = std::exchange(width, length / 2);
    EXPECT_EQ(findSheetSize("a4")->size, millimetres(width, length));
    EXPECT_EQ(findPageSize("a4")->size, millimetres(width, length));
}

TEST(Catalogue, TenByFifteenCentimetresIsNotFourBySixInches) {
    EXPECT_NE(findPrintSize("10x15cm")->size, findPrintSize("4x6")->size);
    EXPECT_EQ(printSizeOf(millimetres(100, 150))->id, "10x15cm");
    EXPECT_EQ(printSizeOf(inches("4", "6"))->id, "4x6");
}

TEST(Catalogue, AMediaNameDescribesTheUprightSizeItStandsBeside) {
    int named = 0;
    for (const NamedSize& entry : everything()) {
        if (entry.pwgName.empty()) {
            continue;
        }
        ++named;
        EXPECT_EQ(sizeInName(entry.pwgName), upright(entry.size)) << entry.pwgName;
    }
    EXPECT_GE(named, 20);
}

TEST(Catalogue, IdsAreDifferentAndSafeInFilesAndOnACommandLine) {
    for (const auto table : {pageSizes(), printSizes(), sheetSizes()}) {
        std::set<std::string_view> ids;
        for (const NamedSize& entry : table) {
            EXPECT_TRUE(ids.insert(entry.id).second) << entry.id;
            EXPECT_EQ(entry.id.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789.-"),
                      std::string_view::npos)
                << entry.id;
            EXPECT_TRUE(entry.size.isPositive());
        }
    }
}

TEST(Catalogue, NamesAreWrittenWithATimesSignAndFractions) {
    EXPECT_EQ(findPageSize("8.5x11")->name, "8 1/2 × 11 in upright");
    EXPECT_EQ(findPrintSize("3.5x5")->name, "3 1/2 × 5 in");
    EXPECT_EQ(findSheetSize("a4")->name, "A4 210 × 297 mm");
    for (const NamedSize& entry : everything()) {
        EXPECT_EQ(entry.name.find(" x "), std::string_view::npos) << entry.name;
    }
}

TEST(Catalogue, PrintsInInchesAreNamedByTheirMeasure) {
    for (const NamedSize& print : printSizes()) {
        if (!print.id.ends_with("cm")) {
            EXPECT_EQ(print.name, sizeText(print.size, Scale::SixteenthInch));
        }
    }
}

TEST(Catalogue, PrintsAndSheetsStandUprightAndAreFoundEitherWay) {
    for (const NamedSize& print : printSizes()) {
        EXPECT_GE(print.size.height, print.size.width) << print.id;
        EXPECT_EQ(printSizeOf(print.size)->id, print.id);
        EXPECT_EQ(printSizeOf(print.size.turned())->id, print.id);
    }
    for (const NamedSize& sheet : sheetSizes()) {
        EXPECT_TRUE(sheet.size.isUpright()) << sheet.id;
        EXPECT_EQ(sheetSizeOf(sheet.size)->id, sheet.id);
        EXPECT_EQ(sheetSizeOf(sheet.size.turned())->id, sheet.id);
    }
}

TEST(Catalogue, APageKnowsWhichWayItLies) {
    for (const NamedSize& page : pageSizes()) {
        EXPECT_EQ(pageSizeOf(page.size)->id, page.id);
    }
    EXPECT_EQ(pageSizeOf(inches("12", "9")), nullptr);
}

TEST(Catalogue, OneTickOffIsAnotherSize) {
    Size size = inches("4", "6");
    size.width += Length::fromTicks(1);
    EXPECT_EQ(printSizeOf(size), nullptr);
    EXPECT_EQ(findPrintSize("4 x 6"), nullptr);
    EXPECT_EQ(findPageSize(""), nullptr);
    EXPECT_EQ(findSheetSize("A4"), nullptr);
}

TEST(CatalogueData, EveryMediaNameIsRegistered) {
    const auto table = test::checkData("standards/iana_media_size_keywords.txt");
    if (!table) {
        GTEST_SKIP() << test::noCheckData;
    }
    // IANA registry of IPP keywords, attribute "media", as of the table in that folder.
    std::ifstream file(*table);
    std::set<std::string> registered;
    for (std::string line; std::getline(file, line);) {
        registered.insert(line);
    }
    ASSERT_GT(registered.size(), 200u);
    for (const NamedSize& entry : everything()) {
        if (!entry.pwgName.empty()) {
            EXPECT_TRUE(registered.contains(std::string(entry.pwgName))) << entry.pwgName;
        }
    }
    // A size without a name must not have a registered one.
    for (const NamedSize& entry : everything()) {
        for (const std::string& name : registered) {
            if (entry.pwgName.empty() && sizeInName(name) == upright(entry.size)) {
                ADD_FAILURE() << entry.id << " is registered as " << name;
            }
        }
    }
}

TEST(CatalogueData, SizesAreThoseOfThePrintSystem) {
    const auto outside = test::checkData("standards/pwg_media_libcups.csv");
    if (!outside) {
        GTEST_SKIP() << test::noCheckData;
    }
    // Columns pwg_name, width, length, unit, ppd_name: the table of libcups 2.4.2 and additions.
    std::ifstream file(*outside);
    std::map<std::string, Size> table;
    std::string line;
    std::getline(file, line);
    ASSERT_EQ(line, "pwg_name,width,length,unit,ppd_name");
    while (std::getline(file, line)) {
        std::istringstream row(line);
        std::string name, width, length, unit;
        std::getline(row, name, ',');
        std::getline(row, width, ',');
        std::getline(row, length, ',');
        std::getline(row, unit, ',');
        const auto w = parseLength(width + " " + unit, Unit::Inch);
        const auto l = parseLength(length + " " + unit, Unit::Inch);
        ASSERT_TRUE(w && l) << line;
        table.emplace(name, Size{*w, *l});
    }
    int compared = 0;
    for (const NamedSize& entry : everything()) {
        if (!entry.pwgName.empty() && table.contains(std::string(entry.pwgName))) {
            ++compared;
            EXPECT_EQ(upright(entry.size), table.at(std::string(entry.pwgName))) << entry.id;
        }
    }
    RecordProperty("compared", compared);
    EXPECT_GE(compared, 18);
}

}  // namespace
}  // namespace matwright
