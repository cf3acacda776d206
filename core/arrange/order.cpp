// SPDX-License-Identifier: MIT
#include <algorithm>
#include <set>

#include "core/arrange/arrange.h"

namespace matwright {

namespace {

// Every taken piece passes over the one before it that is not taken; a run of taken pieces at the
// beginning stays.
template <typename Iterator, typename Taken>
void stepTowardsBegin(const Iterator& first, const Iterator& last, Taken taken) {
    if (first == last) {
        return;
    }
    for (Iterator it = std::next(first); it != last; ++it) {
        if (taken(*it) && !taken(*std::prev(it))) {
            std::iter_swap(it, std::prev(it));
        }
    }
}

}  // namespace

Edit reordered(const Sketch& sketch, std::span<const PieceId> ids, OrderStep step) {
    const std::set<PieceId> wanted(ids.begin(), ids.end());
    const auto taken = [&](PieceId id) {
        return wanted.contains(id) && !sketch.pieces.at(id).locked;
    };
    std::vector<PieceId> order = sketch.order;
    switch (step) {
        case OrderStep::ToFront:
            std::ranges::stable_partition(order, [&](PieceId id) { return !taken(id); });
            break;
        case OrderStep::Forward:
            stepTowardsBegin(order.rbegin(), order.rend(), taken);
            break;
        case OrderStep::Backward:
            stepTowardsBegin(order.begin(), order.end(), taken);
            break;
        case OrderStep::ToBack:
            std::ranges::stable_partition(order, taken);
            break;
    }
    Edit edit;
    if (order != sketch.order) {
        edit.order = std::move(order);
    }
    return edit;
}

}  // namespace matwright
