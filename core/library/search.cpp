// SPDX-License-Identifier: MIT
#include "core/library/search.h"

#include <algorithm>
#include <numeric>

#include "core/library/holdings_inside.h"
#include "core/library/search_conditions.h"

namespace matwright {

namespace {

using Inside = Holdings::Inside;
using Conditions = std::vector<SearchCondition>;
using Counts = std::vector<std::uint32_t>;

// Counts the values of one facet after another among the entries that pass the query, or pass it
// but for the facet's own filter.
class FacetCounter {
  public:
    FacetCounter(const Inside& inside, const Conditions& conditions, const Bits& passing)
        : m_inside(inside), m_conditions(conditions), m_passing(passing) {}

    // The choice would be made in addition.
    Counts added(const Facet& facet) const {
        return m_conditions.empty() ? facet.totals() : facet.countsIn(m_passing);
    }

    // The choice would be made instead of the present one of `filter`.
    Counts instead(const Facet& facet, Filter filter) const {
        if (!isUsed(filter)) {
            return added(facet);
        }
        return m_conditions.size() == 1
                   ? facet.totals()
                   : facet.countsIn(passingAllBut(m_inside, m_conditions, filter));
    }

    std::uint32_t countWithout(Filter filter) const {
        return static_cast<std::uint32_t>(
            isUsed(filter) ? passingAllBut(m_inside, m_conditions, filter).count()
                           : m_passing.count());
    }

  private:
    bool isUsed(Filter filter) const {
        return std::ranges::find(m_conditions, filter, &SearchCondition::filter) !=
               m_conditions.end();
    }

    const Inside& m_inside;
    const Conditions& m_conditions;
    const Bits& m_passing;
};

FilterCounts filterCounts(const Inside& inside, const FacetCounter& counter) {
    FilterCounts counts;
    counts.photosExactly = counter.instead(inside.photos, Filter::Photos);
    counts.photosAtMost.resize(counts.photosExactly.size());
    std::partial_sum(counts.photosExactly.begin(), counts.photosExactly.end(),
                     counts.photosAtMost.begin());
    counts.prints = counter.added(inside.prints);
    counts.pageSizes = counter.instead(inside.pages, Filter::PageSizes);
    const Counts pages = counter.instead(inside.doublePages, Filter::DoublePage);
    counts.singlePages = pages[0];
    counts.doublePages = pages[1];
    std::ranges::copy(counter.instead(inside.photoWays, Filter::PhotoWay), counts.photoWays);
    const Counts switches = counter.added(inside.switches);
    counts.roomForTitle = switches[static_cast<std::size_t>(Switch::RoomForTitle)];
    counts.roomForJournaling = switches[static_cast<std::size_t>(Switch::RoomForJournaling)];
    counts.favourites = switches[static_cast<std::size_t>(Switch::Favourite)];
    counts.tags = counter.added(inside.tags);
    counts.folders = counter.instead(inside.folders, Filter::Folder);
    counts.wholeLibrary = counter.countWithout(Filter::Folder);
    return counts;
}

std::vector<std::uint32_t> inOrder(const Inside& inside, const Bits& passing, SearchOrder order) {
    std::vector<std::uint32_t> indices;
    indices.reserve(passing.count());
    const Inside::Order& all = inside.order(order);
    // Sorting the few costs less than looking at all.
    constexpr std::size_t few = 16;
    const bool isFew = indices.capacity() * few < inside.size();
    if (order == SearchOrder::Name || isFew) {
        passing.forEach(
            [&](std::size_t entry) { indices.push_back(static_cast<std::uint32_t>(entry)); });
        if (order != SearchOrder::Name) {
            std::ranges::sort(indices, {}, [&](std::uint32_t entry) { return all.places[entry]; });
        }
        return indices;
    }
    for (const std::uint32_t entry : all.entries) {
        if (passing.has(entry)) {
            indices.push_back(entry);
        }
    }
    return indices;
}

std::optional<Loosening> looseningOf(const Conditions& conditions, const FacetCounter& counter) {
    std::optional<Loosening> best;
    for (const SearchCondition& condition : conditions) {
        const std::uint32_t count = counter.countWithout(condition.filter);
        if (count > (best ? best->wouldFind : 0)) {
            best = {condition.filter, count};
        }
    }
    return best;
}

}  // namespace

Found search(const Holdings& holdings, const Query& query) {
    const Inside& inside = holdings.inside();
    const Conditions conditions = searchConditions(inside, query);
    const Bits passing = passingAll(inside, conditions);
    const FacetCounter counter(inside, conditions, passing);
    Found found{inOrder(inside, passing, query.order), filterCounts(inside, counter), {}};
    if (found.indices.empty()) {
        found.loosen = looseningOf(conditions, counter);
    }
    return found;
}

}  // namespace matwright
