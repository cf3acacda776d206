// SPDX-License-Identifier: MIT
#include "core/sheets/search/reduced.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>

namespace matwright::sheets {

namespace {

std::int64_t unitOf(const CutJob& job, int paper) {
    std::int64_t unit = job.rules.kerf.ticks();
    for (const CutPiece& piece : job.pieces) {
        if (piece.paper == paper && piece.count > 0) {
            unit = std::gcd(unit, std::gcd(piece.size.width.ticks(), piece.size.height.ticks()));
        }
    }
    return unit;
}

std::vector<Stock> stocksOf(const CutJob& job, int paper, std::int64_t unit, int pieces) {
    std::vector<Stock> stocks;
    for (std::size_t i = 0; i < job.sheets.size(); ++i) {
        const CutSheet& sheet = job.sheets[i];
        const Rect usable = usableArea(sheet, job.rules.kerf);
        const int count = std::min(sheet.atHand.value_or(pieces), pieces);
        if (sheet.paper == paper && count > 0 && usable.size().isPositive()) {
            const std::int64_t kerf = job.rules.kerf.ticks();
            stocks.push_back(
                {static_cast<std::int32_t>((usable.size().width.ticks() + kerf) / unit),
                 static_cast<std::int32_t>((usable.size().height.ticks() + kerf) / unit),
                 sheet.price, count, static_cast<int>(i)});
        }
    }
    return stocks;
}

Kind kindOf(const CutPiece& piece, const Reduced& reduced) {
    Kind kind;
    kind.w = static_cast<std::int32_t>(piece.size.width.ticks() / reduced.unit + reduced.kerf);
    kind.h = static_cast<std::int32_t>(piece.size.height.ticks() / reduced.unit + reduced.kerf);
    kind.turn = piece.mayTurn && kind.w != kind.h;
    const auto fitsTurned = [&](const Stock& s) { return kind.h <= s.w && kind.w <= s.h; };
    const auto fitsAsIs = [&](const Stock& s) { return kind.w <= s.w && kind.h <= s.h; };
    kind.turn = kind.turn && std::ranges::any_of(reduced.stocks, fitsTurned);
    if (kind.turn && (std::ranges::none_of(reduced.stocks, fitsAsIs) || kind.w < kind.h)) {
        // Which side is called the width is free where a piece may be turned: equal kinds meet.
        if (std::ranges::any_of(reduced.stocks, fitsTurned)) {
            std::swap(kind.w, kind.h);
        }
    }
    return kind;
}

}  // namespace

int Reduced::pieces() const {
    int sum = 0;
    for (const Kind& kind : kinds) {
        sum += kind.count;
    }
    return sum;
}

std::int64_t Reduced::area() const {
    std::int64_t sum = 0;
    for (const Kind& kind : kinds) {
        sum += kind.area() * kind.count;
    }
    return sum;
}

namespace {

Reduced reducedPaper(const CutJob& job, int paper, std::vector<int>& uncut) {
    Reduced reduced;
    reduced.unit = unitOf(job, paper);
    reduced.kerf = job.rules.kerf.ticks() / reduced.unit;
    reduced.usefulSide = static_cast<std::int32_t>(
        std::max<std::int64_t>(1, job.rules.usefulSide.ticks() / reduced.unit));
    reduced.threeStages = job.rules.stages == CutStages::AtMostThree;
    int pieces = 0;
    for (const CutPiece& piece : job.pieces) {
        pieces += piece.paper == paper ? piece.count : 0;
    }
    reduced.stocks = stocksOf(job, paper, reduced.unit, pieces);
    std::map<std::tuple<std::int64_t, int, int, bool>, Kind> kinds;
    for (std::size_t i = 0; i < job.pieces.size(); ++i) {
        const CutPiece& piece = job.pieces[i];
        if (piece.paper != paper || piece.count == 0) {
            continue;
        }
        Kind kind = kindOf(piece, reduced);
        if (std::ranges::none_of(reduced.stocks, [&](const Stock& s) { return s.holds(kind); })) {
            uncut[i] += piece.count;
            continue;
        }
        Kind& same =
            kinds.try_emplace({-kind.area(), -kind.w, -kind.h, kind.turn}, kind).first->second;
        same.count += piece.count;
        same.sources.insert(same.sources.end(), static_cast<std::size_t>(piece.count),
                            static_cast<int>(i));
    }
    for (auto& [key, kind] : kinds) {
        reduced.kinds.push_back(std::move(kind));
    }
    std::erase_if(reduced.stocks, [&](const Stock& stock) {
        return std::ranges::none_of(reduced.kinds, [&](const Kind& k) { return stock.holds(k); });
    });
    return reduced;
}

}  // namespace

std::vector<Reduced> reducedByPaper(const CutJob& job, std::vector<int>& uncut) {
    uncut.assign(job.pieces.size(), 0);
    std::set<int> papers;
    for (const CutPiece& piece : job.pieces) {
        if (piece.count > 0) {
            papers.insert(piece.paper);
        }
    }
    std::vector<Reduced> all;
    for (const int paper : papers) {
        Reduced reduced = reducedPaper(job, paper, uncut);
        if (!reduced.kinds.empty()) {
            all.push_back(std::move(reduced));
        }
    }
    return all;
}

}  // namespace matwright::sheets
