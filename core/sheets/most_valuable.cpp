// SPDX-License-Identifier: MIT
#include "core/sheets/most_valuable.h"

#include <algorithm>
#include <cassert>
#include <numeric>

#include "core/sheets/plan_check.h"
#include "core/sheets/search/cut_table.h"
#include "core/sheets/search/cut_tree.h"
#include "core/sheets/search/limited_value.h"

namespace matwright {

namespace {

using sheets::Kind;
using sheets::Layout;
using sheets::LimitedValue;
using sheets::Reduced;
using sheets::Stock;
using sheets::Work;

constexpr std::size_t mostPieces = 255;
constexpr std::int64_t mostValue = 1'000'000'000;

std::optional<Error> faultOf(const ValueJob& job) {
    if (job.pieces.size() > mostPieces) {
        return Error{ErrorCode::OutOfRange, "At most 255 kinds of pieces are weighed at once.", {}};
    }
    for (const ValuedPiece& piece : job.pieces) {
        if (piece.value < 0 || piece.value > mostValue || piece.copies.value_or(0) < 0) {
            return Error{ErrorCode::OutOfRange,
                         "A piece's value has to lie between 0 and 1,000,000,000, and its copies "
                         "cannot be below 0.",
                         {}};
        }
    }
    return findFault(cutJobOf(job, std::vector<int>(job.pieces.size(), 0)));
}

// One kind a piece, in the job's order.
Reduced reducedOf(const ValueJob& job) {
    Reduced reduced;
    reduced.unit = job.kerf.ticks();
    for (const ValuedPiece& piece : job.pieces) {
        reduced.unit =
            std::gcd(reduced.unit, std::gcd(piece.size.width.ticks(), piece.size.height.ticks()));
    }
    reduced.unit = std::max<std::int64_t>(reduced.unit, 1);
    reduced.kerf = job.kerf.ticks() / reduced.unit;
    const auto units = [&](Length length) {
        return static_cast<std::int32_t>((length + job.kerf).ticks() / reduced.unit);
    };
    const Stock stock{units(job.sheet.width), units(job.sheet.height), 1, 1, 0};
    for (std::size_t i = 0; i < job.pieces.size(); ++i) {
        const ValuedPiece& piece = job.pieces[i];
        Kind kind{units(piece.size.width), units(piece.size.height), false, 0, {}};
        kind.turn = piece.mayTurn && kind.w != kind.h;
        const std::int64_t fits = stock.holds(kind) ? stock.area() / kind.area() : 0;
        kind.count = static_cast<int>(std::min<std::int64_t>(fits, maxPiecesOfJob));
        kind.count = std::min(kind.count, piece.copies.value_or(kind.count));
        kind.sources.assign(static_cast<std::size_t>(kind.count), static_cast<int>(i));
        reduced.kinds.push_back(std::move(kind));
    }
    reduced.stocks.push_back(stock);
    return reduced;
}

// What the search found, before it is made a plan.
struct Found {
    Layout layout;
    std::int64_t value = 0;
    std::int64_t bound = 0;
};

std::int64_t valueOf(const Layout& layout, const std::vector<std::int64_t>& values) {
    std::int64_t sum = 0;
    for (const sheets::Group& group : layout) {
        sum += group.form == sheets::Group::Form::Piece
                   ? values[static_cast<std::size_t>(group.kind)]
                   : 0;
    }
    return sum;
}

Found findBest(const ValueJob& job, const Reduced& reduced, Work& work) {
    std::vector<std::int64_t> values;
    std::int64_t all = 0;
    for (std::size_t i = 0; i < job.pieces.size(); ++i) {
        values.push_back(reduced.kinds[i].count > 0 ? job.pieces[i].value : 0);
        all += values.back() * reduced.kinds[i].count;
    }
    Found found{{}, 0, all};
    const Stock& stock = reduced.stocks.front();
    constexpr std::int64_t mostWork = 8'000'000'000;
    // Where its cut keeps to the copies, the programme for unlimited ones has solved it.
    if (const auto table = sheets::CutTable::made(reduced, stock, values, false, mostWork)) {
        work.spend(table->widths().size() * table->heights().size());
        found.bound = std::min(all, table->best());
        const Layout layout = table->bestLayout();
        const auto counts = sheets::contents(layout, reduced.kinds.size());
        bool within = true;
        for (std::size_t k = 0; k < counts.size(); ++k) {
            within = within && counts[k] <= reduced.kinds[k].count;
        }
        if (within) {
            return {layout, valueOf(layout, values), found.bound};
        }
    }
    const auto bounds = sheets::ValueBounds::made(reduced, stock, values, work);
    if (!bounds) {
        return found;
    }
    LimitedValue search(reduced, stock, values, *bounds);
    search.run(work);
    found = {search.layout(), search.best(), std::min(found.bound, bounds->whole())};
    if (std::ranges::all_of(reduced.kinds, [](const Kind& kind) {
            return kind.count <= LimitedValue::mostCopies;
        })) {
        found.bound = std::min(found.bound, search.bound());
    }
    return found;
}

}  // namespace

CutJob cutJobOf(const ValueJob& job, const std::vector<int>& counts) {
    CutJob cut;
    cut.rules.kerf = job.kerf;
    cut.sheets.push_back({job.sheet, 1, 1, {}, 0});
    for (std::size_t i = 0; i < job.pieces.size(); ++i) {
        cut.pieces.push_back({job.pieces[i].size, counts[i], job.pieces[i].mayTurn, 0});
    }
    return cut;
}

Result<ValueAnswer> mostValuableCut(const ValueJob& job, const CutLimits& limits,
                                    const std::stop_token& stop) {
    if (auto fault = faultOf(job)) {
        return std::unexpected(std::move(*fault));
    }
    Work work(limits.steps, Work::Clock::now() + limits.time, stop);
    const Reduced reduced = reducedOf(job);
    const Found found = findBest(job, reduced, work);
    ValueAnswer answer;
    answer.value = found.value;
    answer.bound = std::max(found.bound, found.value);
    answer.proved = answer.value == answer.bound;
    answer.counts = sheets::contents(found.layout, job.pieces.size());
    answer.steps = work.spent();
    const CutJob cut = cutJobOf(job, answer.counts);
    answer.plan.uncut.assign(job.pieces.size(), 0);
    answer.plan.sheets.push_back(sheets::CutTrees(cut, reduced).sheetPlan({0, found.layout}));
    assert(faultsOf(answer.plan, cut).empty());
    return answer;
}

}  // namespace matwright
