// SPDX-License-Identifier: MIT
#include "core/sheets/search/selection_lists.h"

namespace matwright::sheets {

namespace {

Counts countedState(const ShapeTable& table, std::size_t state) {
    Counts counts{};
    const std::vector<int> all = table.countsOf(state);
    for (std::size_t i = 0; i < all.size(); ++i) {
        counts[i] = static_cast<std::int16_t>(all[i]);
    }
    return counts;
}

SelectionList fullOn(const Stock& stock, const ShapeTable& table, const Counts& whole,
                     std::int64_t mostWaste) {
    SelectionList list;
    for (const std::size_t state : table.shaped()) {
        if (!table.fits(state, stock.w, stock.h) ||
            table.areaOf(state) < stock.area() - mostWaste) {
            continue;
        }
        const Counts counts = countedState(table, state);
        bool grows = false;
        for (std::size_t k = 0; k < mostCountedKinds && !grows; ++k) {
            grows = counts[k] < whole[k] &&
                    table.fits(state + table.strideOf(static_cast<int>(k)), stock.w, stock.h);
        }
        if (!grows) {
            list.push_back(counts);
        }
    }
    return list;
}

}  // namespace

std::vector<SelectionList> fullSelections(const ShapeTable& table, const Reduced& reduced,
                                          std::int64_t mostWaste, Work& work) {
    std::vector<SelectionList> lists;
    const Counts whole = countedState(table, table.whole());
    for (const Stock& stock : reduced.stocks) {
        lists.push_back(fullOn(stock, table, whole, mostWaste));
        work.spend(table.shaped().size() / 2);
    }
    return lists;
}

}  // namespace matwright::sheets
