// SPDX-License-Identifier: MIT
#include "core/drawing/drawing.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace matwright {

namespace {

constexpr int unitsPerEm = 2048;

// Advances of DejaVu Sans 2.37 and its bold, in font units, without kerning, for U+0020..U+007E.
constexpr std::array<short, 95> plainAdvances = {
    651,  821,  942,  1716, 1303, 1946, 1597, 563,  799,  799,  1024, 1716, 651,  739,  651,  690,
    1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303, 690,  690,  1716, 1716, 1716, 1087,
    2048, 1401, 1405, 1430, 1577, 1294, 1178, 1587, 1540, 604,  604,  1343, 1141, 1767, 1532, 1612,
    1235, 1612, 1423, 1300, 1251, 1499, 1401, 2025, 1403, 1251, 1403, 799,  690,  799,  1716, 1024,
    1024, 1255, 1300, 1126, 1300, 1260, 721,  1300, 1298, 569,  569,  1186, 569,  1995, 1298, 1253,
    1300, 1300, 842,  1067, 803,  1298, 1212, 1675, 1212, 1212, 1075, 1303, 690,  1303, 1716,
};
constexpr std::array<short, 95> boldAdvances = {
    713,  934,  1067, 1716, 1425, 2052, 1786, 627,  936,  936,  1071, 1716, 778,  850,  778,  748,
    1425, 1425, 1425, 1425, 1425, 1425, 1425, 1425, 1425, 1425, 819,  819,  1716, 1716, 1716, 1188,
    2048, 1585, 1561, 1503, 1700, 1399, 1399, 1681, 1714, 762,  762,  1587, 1305, 2038, 1714, 1741,
    1501, 1741, 1577, 1475, 1397, 1663, 1585, 2259, 1579, 1483, 1485, 936,  748,  936,  1716, 1024,
    1024, 1382, 1466, 1214, 1466, 1389, 891,  1466, 1458, 702,  702,  1362, 702,  2134, 1458, 1407,
    1466, 1466, 1010, 1219, 979,  1458, 1335, 1892, 1321, 1335, 1192, 1458, 748,  1458, 1716,
};

struct SignAdvance {
    std::string_view sign;
    short plain;
    short bold;
};
constexpr SignAdvance signAdvances[] = {
    {"\u00D7", 1716, 1716}, {"\u2248", 1716, 1716}, {"\u00BD", 1985, 2120}, {"\u00BC", 1985, 2120},
    {"\u00BE", 1985, 2120}, {"\u215B", 1985, 2120}, {"\u215C", 1985, 2120}, {"\u215D", 1985, 2120},
    {"\u215E", 1985, 2120}, {"\u00B7", 651, 778},   {"\u2013", 1024, 1024},
};

bool continuesCharacter(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

// Takes one UTF-8 character off the front.
std::string_view takeCharacter(std::string_view& text) {
    std::size_t bytes = 1;
    while (bytes < text.size() && continuesCharacter(text[bytes])) {
        ++bytes;
    }
    const std::string_view character = text.substr(0, bytes);
    text.remove_prefix(bytes);
    return character;
}

int advance(std::string_view character, bool bold) {
    if (character.size() == 1 && character[0] >= ' ' && character[0] <= '~') {
        const auto index = static_cast<std::size_t>(character[0] - ' ');
        return bold ? boldAdvances[index] : plainAdvances[index];
    }
    const auto sign = std::ranges::find(signAdvances, character, &SignAdvance::sign);
    if (sign == std::end(signAdvances)) {
        return unitsPerEm;
    }
    return bold ? sign->bold : sign->plain;
}

}  // namespace

Length textWidthBound(const std::string& text, Length height, bool bold) {
    std::int64_t units = 0;
    for (std::string_view rest = text; !rest.empty();) {
        units += advance(takeCharacter(rest), bold);
    }
    return Length::fromTicks((units * height.ticks() + unitsPerEm - 1) / unitsPerEm);
}

}  // namespace matwright
