// SPDX-License-Identifier: MIT
#include "core/template/tiling.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <utility>

#include "core/template/tile_parts.h"

namespace matwright {

namespace {

constexpr Length leastStep = Length::inches(0, 1, 2);
constexpr std::int64_t mostSheets = 400;

Size printable(Size sheet, Length margin) {
    return {sheet.width - 2 * margin, sheet.height - 2 * margin};
}

// How many stretches of `reach` cover `length`, neighbours sharing `overlap`.
std::int64_t countAlong(Length length, Length reach, Length overlap) {
    if (length <= reach) {
        return 1;
    }
    const std::int64_t rest = (length - overlap).ticks();
    const std::int64_t step = (reach - overlap).ticks();
    return (rest + step - 1) / step;
}

struct Counts {
    std::int64_t rows;
    std::int64_t columns;
    std::int64_t sheets() const { return rows * columns; }
};

Counts countOn(Size drawing, Size sheet, const TilingOptions& options) {
    const Size reach = printable(sheet, options.printerMargin);
    return {countAlong(drawing.height, reach.height, options.overlap),
            countAlong(drawing.width, reach.width, options.overlap)};
}

Interval windowAlong(int index, Length length, Length reach, Length overlap) {
    const Length low = (reach - overlap) * index;
    return {low, std::min(low + reach, length)};
}

std::string letters(int row) {
    std::string name;
    for (int n = row; n >= 0; n = n / 26 - 1) {
        name.insert(name.begin(), static_cast<char>('A' + n % 26));
    }
    return name;
}

std::optional<Error> findFault(Size drawing, const TilingOptions& options) {
    const Size reach = printable(options.sheet, options.printerMargin);
    const Length least = std::min(reach.width, reach.height);
    if (!drawing.isPositive() || options.printerMargin.isNegative() ||
        options.overlap.isNegative() || least - options.overlap < leastStep) {
        return Error{ErrorCode::OutOfRange,
                     "The printer margins and the overlap leave too little of the sheet; make them "
                     "smaller or choose a larger sheet.",
                     ""};
    }
    return std::nullopt;
}

}  // namespace

std::string Tile::name() const {
    const char* side = page == TiledPage::Whole ? "" : page == TiledPage::Left ? "left " : "right ";
    return fmt::format("{}{}{}", side, letters(row), column + 1);
}

bool TilePlan::isPageByPage() const {
    return !tiles.empty() && tiles.front().page != TiledPage::Whole;
}

std::vector<Rect> TilePlan::parts() const {
    const Length strip = overlap.halfRoundedDown() + tile::crossArm;
    const auto inset = [strip](bool joins) { return joins ? strip : Length(); };
    std::vector<Rect> out;
    for (const Tile& tile : tiles) {
        const Rect& w = tile.window;
        const Length left = w.left() + inset(tile.column > 0);
        const Length right = w.right() - inset(tile.column + 1 < columns);
        const Length top = w.top() + inset(tile.row > 0);
        const Length bottom = w.bottom() - inset(tile.row + 1 < rows);
        if (left < right && top < bottom) {
            out.push_back({{left, right}, {top, bottom}});
        }
    }
    return out;
}

Result<TilePlan> planTiles(Size drawing, const TilingOptions& options) {
    if (auto fault = findFault(drawing, options)) {
        return std::unexpected(std::move(*fault));
    }
    const Counts upright = countOn(drawing, options.sheet, options);
    const Counts lying = countOn(drawing, options.sheet.turned(), options);
    TilePlan plan;
    plan.turned = lying.sheets() < upright.sheets();
    const Counts counts = plan.turned ? lying : upright;
    if (counts.sheets() > mostSheets) {
        return std::unexpected(
            Error{ErrorCode::OutOfRange,
                  fmt::format("That would take {} sheets; choose a larger sheet or less overlap.",
                              counts.sheets()),
                  ""});
    }
    plan.sheet = plan.turned ? options.sheet.turned() : options.sheet;
    plan.printerMargin = options.printerMargin;
    plan.overlap = options.overlap;
    plan.page = drawing;
    plan.rows = static_cast<int>(counts.rows);
    plan.columns = static_cast<int>(counts.columns);
    const Size reach = printable(plan.sheet, plan.printerMargin);
    for (int row = 0; row < plan.rows; ++row) {
        for (int column = 0; column < plan.columns; ++column) {
            plan.tiles.push_back({row,
                                  column,
                                  {windowAlong(column, drawing.width, reach.width, plan.overlap),
                                   windowAlong(row, drawing.height, reach.height, plan.overlap)}});
        }
    }
    return plan;
}

Result<TilePlan> planTiles(const PageSetup& page, const TilingOptions& options) {
    Result<TilePlan> whole = planTiles(surface(page).size(), options);
    if (!page.doublePage || (whole && whole->tiles.size() == 1)) {
        return whole;
    }
    Result<TilePlan> plan = planTiles(page.size, options);
    if (!plan) {
        return plan;
    }
    const std::vector<Tile> one = std::exchange(plan->tiles, {});
    for (const auto& [side, place] : {std::pair{TiledPage::Left, pages(page).front()},
                                      std::pair{TiledPage::Right, pages(page).back()}}) {
        for (Tile tile : one) {
            tile.page = side;
            tile.window = tile.window.moved(place.topLeft());
            plan->tiles.push_back(tile);
        }
    }
    return plan;
}

}  // namespace matwright
