// SPDX-License-Identifier: MIT
#include <algorithm>
#include <limits>

#include "core/sheets/search/gather_leftover.h"
#include "core/sheets/search/paper_search.h"

namespace matwright::sheets {

std::vector<int> PaperSearch::expanded(const Loadout& loadout) const {
    std::vector<int> sheets;
    for (std::size_t s = 0; s < loadout.size(); ++s) {
        sheets.insert(sheets.end(), static_cast<std::size_t>(loadout[s]), static_cast<int>(s));
    }
    // Large ones first: what needs them finds them.
    std::ranges::stable_sort(sheets, std::greater{}, [&](int s) {
        return m_reduced.stocks[static_cast<std::size_t>(s)].area();
    });
    return sheets;
}

// The most that the candidates have beyond the pieces.
std::int64_t PaperSearch::mostWaste() const {
    std::int64_t most = 0;
    for (const Loadout& loadout : m_candidates) {
        std::int64_t area = 0;
        for (std::size_t s = 0; s < loadout.size(); ++s) {
            area += loadout[s] * m_reduced.stocks[s].area();
        }
        most = std::max(most, area - m_reduced.area());
    }
    return most;
}

void PaperSearch::goOn(std::uint64_t steps, Work& work) {
    const std::uint64_t end = work.spent() + steps;
    if (!m_isSharp && !done()) {
        sharpen(work);
    }
    while (!done() && !work.over() && work.spent() < end) {
        const std::uint64_t before = work.spent();
        if (!m_candidates.empty()) {
            tryNext(work);
        }
        if (m_mayBeExact && m_allCandidates && !done() && isComplete()) {
            const std::uint64_t share = exactShare() * (work.spent() - before);
            tryExactly(std::max<std::uint64_t>(share, 100'000), work);
        }
        if (work.spent() == before) {
            return;
        }
    }
}

// How much exact cover may do for what the heuristics did. A table that is soon complete settles
// everything; a large one should not keep a plan waiting that could be found. Once the heuristics
// have tried hard for nothing, there is most likely nothing to find, and a proof to come.
std::uint64_t PaperSearch::exactShare() const {
    constexpr double largeTable = 1e8;
    constexpr double hopelessTable = 1e9;
    constexpr int hard = 8;
    if (m_splits > largeTable && (m_round < hard || m_splits > hopelessTable)) {
        return 1;
    }
    return m_round < hard ? 3 : 6;
}

void PaperSearch::tryExactly(std::uint64_t steps, Work& work) {
    // The less waste there may be, the smaller the table: a half-filled one is begun anew.
    const std::int64_t waste = mostWaste();
    if (!m_exact || (!m_exact->isFilled() && waste < m_exactWaste)) {
        m_exact = std::make_unique<ExactCover>(m_reduced, m_weights, m_candidates, work);
        m_exactWaste = waste;
    }
    switch (m_exact->run(m_candidates, steps, work)) {
        case ExactCover::Outcome::Found:
            take(m_exact->filled(), std::vector<int>(m_counts.size(), 0));
            refreshCandidates();
            break;
        case ExactCover::Outcome::Impossible:
            m_proved = true;
            m_bound = cost();
            break;
        case ExactCover::Outcome::NotYet:
            break;
    }
}

void PaperSearch::tryNext(Work& work) {
    const Loadout& loadout = m_candidates[m_next];
    const std::vector<int> sheets = expanded(loadout);
    std::vector<Layout> best;
    const std::uint64_t before = work.spent();
    // A few pieces a sheet are better changed about than laid anew; with many, each look whether a
    // sheet has room for another piece costs as much as laying all of them.
    const bool fewASheet = m_reduced.pieces() < 6 * static_cast<int>(sheets.size());
    bool found = (m_round < 3 || !fewASheet) && tryTree(sheets, work, best);
    std::vector<FilledSheet> filled;
    if (found) {
        for (std::size_t i = 0; i < sheets.size(); ++i) {
            if (!best[i].empty()) {
                filled.push_back({sheets[i], std::move(best[i])});
            }
        }
    } else {
        m_packer->setQueue(std::size_t{2} << std::min(m_round, 6));
        PoolSearch pool(m_reduced, *m_packer, ++m_seed);
        pool.start(sheets, m_round % 2 == 0 && !best.empty() ? best : std::vector<Layout>{});
        const std::uint64_t most = fewASheet ? work.limit() : 2 * (work.spent() - before);
        found = pool.run(6000U << std::min(m_round, 8), most, work);
        if (found) {
            filled = pool.filled();
        }
    }
    if (found) {
        take(std::move(filled), std::vector<int>(m_counts.size(), 0));
        refreshCandidates();
        m_round = 0;
        return;
    }
    if (++m_next == m_candidates.size()) {
        m_next = 0;
        ++m_round;
    }
}

bool PaperSearch::tryTree(const std::vector<int>& sheets, Work& work, std::vector<Layout>& best) {
    std::int64_t packed = -1;
    for (const bool level : {false, true}) {
        for (const Guide guide : {Guide::LeastWaste, Guide::LeastWasteLarge}) {
            const std::size_t queue = std::size_t{4} << std::min(m_round, 12);
            const TreeSearch::Task task{m_counts, sheets, guide, level, queue, 400'000};
            TreeSearchResult result = m_tree.run(task, work);
            if (result.complete || result.packedArea > packed) {
                packed = result.packedArea;
                best = std::move(result.layouts);
            }
            if (result.complete) {
                return true;
            }
        }
    }
    return false;
}

void PaperSearch::gatherLeftover(Work& work) {
    m_packer->setQueue(8);
    m_filled = withGatheredLeftover(m_reduced, *m_packer, std::move(m_filled), work);
}

}  // namespace matwright::sheets
