// SPDX-License-Identifier: MIT
#include "core/measure/catalogue.h"

#include <algorithm>

namespace matwright {

namespace {

constexpr Length in(std::int64_t whole) {
    return Length::inches(whole);
}
constexpr Length half(std::int64_t whole) {
    return Length::inches(whole, 1, 2);
}
constexpr Length mm(std::int64_t n) {
    return Length::millimetres(n);
}

constexpr NamedSize pageTable[] = {
    {"12x12", "12 × 12 in", {in(12), in(12)}, ""},
    {"8.5x11", "8 1/2 × 11 in upright", {half(8), in(11)}, "na_letter_8.5x11in"},
    {"11x8.5", "11 × 8 1/2 in lying", {in(11), half(8)}, "na_letter_8.5x11in"},
    {"a4", "A4 upright", {mm(210), mm(297)}, "iso_a4_210x297mm"},
    {"a4-lying", "A4 lying", {mm(297), mm(210)}, "iso_a4_210x297mm"},
    {"8x8", "8 × 8 in", {in(8), in(8)}, ""},
    {"6x8", "6 × 8 in", {in(6), in(8)}, "na_index-4x6-ext_6x8in"},
    {"9x12", "9 × 12 in", {in(9), in(12)}, "na_arch-a_9x12in"},
};

constexpr NamedSize printTable[] = {
    {"2x2", "2 × 2 in", {in(2), in(2)}, ""},
    {"2.5x2.5", "2 1/2 × 2 1/2 in", {half(2), half(2)}, ""},
    {"3x3", "3 × 3 in", {in(3), in(3)}, ""},
    {"3x4", "3 × 4 in", {in(3), in(4)}, ""},
    {"4x4", "4 × 4 in", {in(4), in(4)}, "oe_square-photo_4x4in"},
    {"3.5x5", "3 1/2 × 5 in", {half(3), in(5)}, "oe_photo-l_3.5x5in"},
    {"4x6", "4 × 6 in", {in(4), in(6)}, "na_index-4x6_4x6in"},
    {"5x5", "5 × 5 in", {in(5), in(5)}, "oe_square-photo_5x5in"},
    {"5x7", "5 × 7 in", {in(5), in(7)}, "na_5x7_5x7in"},
    {"6x8", "6 × 8 in", {in(6), in(8)}, "na_index-4x6-ext_6x8in"},
    {"8x10", "8 × 10 in", {in(8), in(10)}, "na_govt-letter_8x10in"},
    {"10x15cm", "10 × 15 cm", {mm(100), mm(150)}, "om_small-photo_100x150mm"},
    {"13x18cm", "13 × 18 cm", {mm(130), mm(180)}, "om_medium-photo_130x180mm"},
};

constexpr NamedSize sheetTable[] = {
    {"letter", "Letter 8 1/2 × 11 in", {half(8), in(11)}, "na_letter_8.5x11in"},
    {"a4", "A4 210 × 297 mm", {mm(210), mm(297)}, "iso_a4_210x297mm"},
    {"legal", "Legal 8 1/2 × 14 in", {half(8), in(14)}, "na_legal_8.5x14in"},
    {"tabloid", "Tabloid 11 × 17 in", {in(11), in(17)}, "na_ledger_11x17in"},
    {"a3", "A3 297 × 420 mm", {mm(297), mm(420)}, "iso_a3_297x420mm"},
    {"12x18", "12 × 18 in", {in(12), in(18)}, "na_arch-b_12x18in"},
    {"13x19", "13 × 19 in", {in(13), in(19)}, "na_super-b_13x19in"},
};

const NamedSize* findId(std::span<const NamedSize> table, std::string_view id) {
    const auto it = std::ranges::find(table, id, &NamedSize::id);
    return it == table.end() ? nullptr : &*it;
}

const NamedSize* findSize(std::span<const NamedSize> table, Size size) {
    const auto it = std::ranges::find(table, size, &NamedSize::size);
    return it == table.end() ? nullptr : &*it;
}

const NamedSize* findEitherWay(std::span<const NamedSize> table, Size size) {
    const NamedSize* found = findSize(table, size);
    return found ? found : findSize(table, size.turned());
}

}  // namespace

std::span<const NamedSize> pageSizes() {
    return pageTable;
}
std::span<const NamedSize> printSizes() {
    return printTable;
}
std::span<const NamedSize> sheetSizes() {
    return sheetTable;
}

const NamedSize* findPageSize(std::string_view id) {
    return findId(pageTable, id);
}
const NamedSize* findPrintSize(std::string_view id) {
    return findId(printTable, id);
}
const NamedSize* findSheetSize(std::string_view id) {
    return findId(sheetTable, id);
}

const NamedSize* pageSizeOf(Size size) {
    return findSize(pageTable, size);
}
const NamedSize* printSizeOf(Size size) {
    return findEitherWay(printTable, size);
}
const NamedSize* sheetSizeOf(Size size) {
    return findEitherWay(sheetTable, size);
}

}  // namespace matwright
