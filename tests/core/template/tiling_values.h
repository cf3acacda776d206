// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "core/measure/catalogue.h"
#include "core/template/tiling.h"

namespace matwright::test {

// Whole inches.
constexpr Size in(std::int64_t width, std::int64_t height) {
    return {Length::inches(width), Length::inches(height)};
}

// On a sheet of the catalogue with margins of 1/4 in.
inline TilingOptions optionsFor(std::string_view sheet, Length overlap) {
    return {findSheetSize(sheet)->size, Length::inches(0, 1, 4), overlap};
}

inline PageSetup doublePage(Size size, Length gap) {
    PageSetup page;
    page.size = size;
    page.doublePage = true;
    page.foldGap = gap;
    return page;
}

}  // namespace matwright::test
