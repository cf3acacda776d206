// SPDX-License-Identifier: MIT
#include "core/sheets/search/gather_leftover.h"

#include <algorithm>
#include <array>

#include "core/sheets/search/shape_table.h"

namespace matwright::sheets {

namespace {

std::vector<int> kindsOf(const Layout& layout) {
    std::vector<int> kinds;
    for (const Group& group : layout) {
        if (group.form == Group::Form::Piece) {
            kinds.push_back(group.kind);
        }
    }
    return kinds;
}

class Gathering {
  public:
    Gathering(const Reduced& reduced, SheetPacker& packer, Work& work)
        : m_reduced(reduced), m_packer(packer), m_work(work) {}

    // The layout of these pieces that leaves most; `now` if nothing better is found.
    Layout tightest(const Layout& now, int stock) {
        const auto kinds = kindsOf(now);
        return static_cast<int>(kinds.size()) <= SheetPacker::exactPieces
                   ? tightestOfAll(now, kinds, stock)
                   : narrowed(now, kinds, stock);
    }

    // Pieces of `from` go elsewhere while that makes its leftover larger.
    void empty(std::vector<FilledSheet>& filled, std::size_t from) {
        bool moved = true;
        while (moved && !m_work.over()) {
            moved = false;
            auto kinds = kindsOf(filled[from].layout);
            for (std::size_t i = 0; i < kinds.size() && !moved && kinds.size() > 1; ++i) {
                for (std::size_t to = 0; to < filled.size() && !moved; ++to) {
                    moved = to != from && moveOne(filled, from, to, kinds, i);
                }
            }
        }
    }

    std::int64_t leftover(const FilledSheet& sheet) const {
        return leftoverOf(sheet.layout, m_reduced.stocks[static_cast<std::size_t>(sheet.stock)],
                          m_reduced);
    }

  private:
    Layout tightestOfAll(const Layout& now, const std::vector<int>& kinds, int stock) {
        const Stock& s = m_reduced.stocks[static_cast<std::size_t>(stock)];
        std::vector<int> counts(m_reduced.kinds.size(), 0);
        for (const int kind : kinds) {
            ++counts[static_cast<std::size_t>(kind)];
        }
        ShapeTable table(m_reduced, counts, {s.w, s.h, s.area(), -1, false, nullptr});
        Layout best = now;
        if (table.fill(m_work)) {
            for (Layout& layout : table.layoutsOf(table.whole(), s.w, s.h)) {
                if (leftoverOf(layout, s, m_reduced) > leftoverOf(best, s, m_reduced)) {
                    best = std::move(layout);
                }
            }
        }
        return best;
    }

    // On a sheet made narrower or lower by halves of what might still go.
    Layout narrowed(const Layout& now, const std::vector<int>& kinds, int stock) {
        const auto s = static_cast<std::size_t>(stock);
        Layout best = now;
        std::vector<int> counts(m_reduced.kinds.size(), 0);
        std::int64_t area = 0;
        for (const int kind : kinds) {
            ++counts[static_cast<std::size_t>(kind)];
            area += m_reduced.kinds[static_cast<std::size_t>(kind)].area();
        }
        Reduced smaller = m_reduced;
        for (const bool narrower : {true, false}) {
            const Stock& whole = m_reduced.stocks[s];
            const std::int32_t full = narrower ? whole.w : whole.h;
            auto low = static_cast<std::int32_t>(area / (narrower ? whole.h : whole.w));
            std::int32_t high = full;
            while (high - low > full / 64 && !m_work.over()) {
                const std::int32_t middle = low + (high - low) / 2;
                smaller.stocks[s] = whole;
                (narrower ? smaller.stocks[s].w : smaller.stocks[s].h) = middle;
                if (auto found = laidOn(smaller, counts, stock)) {
                    if (leftoverOf(*found, whole, m_reduced) > leftoverOf(best, whole, m_reduced)) {
                        best = *found;
                    }
                    high = middle;
                } else {
                    low = middle;
                }
            }
        }
        return best;
    }

    std::optional<Layout> laidOn(const Reduced& reduced, const std::vector<int>& counts,
                                 int stock) {
        TreeSearch tree(reduced);
        const std::array<int, 1> sheets{stock};
        for (const bool level : {false, true}) {
            for (const Guide guide : {Guide::LeastWaste, Guide::LeastWasteLarge}) {
                auto result = tree.run({counts, sheets, guide, level, 8, 4000}, m_work);
                if (result.complete) {
                    return std::move(result.layouts.front());
                }
            }
        }
        return std::nullopt;
    }

    bool moveOne(std::vector<FilledSheet>& filled, std::size_t from, std::size_t to,
                 const std::vector<int>& kinds, std::size_t i) {
        std::vector<int> there = kindsOf(filled[to].layout);
        there.push_back(kinds[i]);
        std::vector<int> here = kinds;
        here.erase(here.begin() + static_cast<std::ptrdiff_t>(i));
        if (!m_packer.packs(there, filled[to].stock, m_work) ||
            !m_packer.packs(here, filled[from].stock, m_work)) {
            return false;
        }
        FilledSheet less{filled[from].stock, m_packer.layout(here, filled[from].stock)};
        less.layout = tightest(less.layout, less.stock);
        if (leftover(less) <= leftover(filled[from])) {
            return false;
        }
        filled[to].layout = m_packer.layout(there, filled[to].stock);
        filled[from] = std::move(less);
        return true;
    }

    const Reduced& m_reduced;
    SheetPacker& m_packer;
    Work& m_work;
};

}  // namespace

std::int64_t leftoverOf(const Layout& layout, const Stock& stock, const Reduced& reduced) {
    if (layout.empty()) {
        return stock.area();
    }
    const std::int32_t w = stock.w - layout.back().w;
    const std::int32_t h = stock.h - layout.back().h;
    const auto kerf = static_cast<std::int32_t>(reduced.kerf);
    const std::int64_t beside =
        w - kerf >= reduced.usefulSide ? std::int64_t{w - kerf} * stock.h : 0;
    const std::int64_t below =
        h - kerf >= reduced.usefulSide ? std::int64_t{h - kerf} * stock.w : 0;
    return std::max(beside, below);
}

std::vector<FilledSheet> withGatheredLeftover(const Reduced& reduced, SheetPacker& packer,
                                              std::vector<FilledSheet> filled, Work& work) {
    if (filled.empty()) {
        return filled;
    }
    Gathering gathering(reduced, packer, work);
    for (FilledSheet& sheet : filled) {
        packer.remember(sheet.layout, sheet.stock);
        sheet.layout = gathering.tightest(sheet.layout, sheet.stock);
    }
    const auto best = [&](const std::vector<FilledSheet>& sheets) {
        return std::ranges::max_element(
            sheets, {}, [&](const FilledSheet& s) { return gathering.leftover(s); });
    };
    auto emptied = filled;
    gathering.empty(emptied, static_cast<std::size_t>(best(filled) - filled.begin()));
    return gathering.leftover(*best(emptied)) > gathering.leftover(*best(filled)) ? emptied
                                                                                  : filled;
}

}  // namespace matwright::sheets
