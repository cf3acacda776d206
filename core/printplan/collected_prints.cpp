// SPDX-License-Identifier: MIT
#include "core/printplan/collected_prints.h"

#include <algorithm>

namespace matwright {

namespace {

class Collecting {
  public:
    explicit Collecting(const PlanInput& input) : m_input(input) {
        for (const PrintOnHand& print : input.onHand) {
            if (print.state == PrintState::OnHand) {
                m_free.push_back(&print);
            }
        }
        for (const PrintOnHand& print : input.used) {
            if (print.state == PrintState::Used) {
                m_used.push_back(&print);
            }
        }
    }

    CollectedPrints run() {
        PrintOptions options;
        options.bleed = m_input.bleed;
        std::vector<PlannedPrint> wanted;
        for (std::size_t page = 0; page < m_input.pages.size(); ++page) {
            const Making& making = m_input.pages[page].making;
            for (Print& print : printsOf(making, options)) {
                const Photo& photo = making.work.photos.at(print.photo);
                wanted.push_back(planned(page, std::move(print), photo));
            }
        }
        // All exact ones first, so that what another page needs is not told as alike.
        for (PlannedPrint& print : wanted) {
            takeOrPlan(std::move(print));
        }
        for (std::size_t i = 0; i < m_result.prints.size(); ++i) {
            noteAlike(i);
        }
        return std::move(m_result);
    }

  private:
    PlannedPrint planned(std::size_t page, Print print, const Photo& photo) const {
        PlannedPrint result{page, std::nullopt, std::move(print), photo, {}, {}};
        for (const PrintWish& wish : m_input.wishes) {
            if (wish.page == page && wish.slot == result.print.slot) {
                result.printer = wish.printer;
                result.paper = wish.paper;
            }
        }
        return result;
    }
    void takeOrPlan(PlannedPrint print) {
        const PrintLook look = lookOf(print.print, print.photo, m_input.bleed);
        const std::string& page = m_input.pages[*print.page].name;
        const auto there = std::ranges::find_if(m_used, [&](const PrintOnHand* used) {
            return used->page == page && used->look == look;
        });
        if (there != m_used.end()) {
            m_result.there.push_back({*print.page, std::move(print.print), (*there)->id});
            m_used.erase(there);
            return;
        }
        const auto found = std::ranges::find_if(
            m_free, [&](const PrintOnHand* onHand) { return onHand->look == look; });
        if (found == m_free.end()) {
            m_result.prints.push_back(std::move(print));
            return;
        }
        m_result.taken.push_back({*print.page, std::move(print.print), (*found)->id});
        m_free.erase(found);
    }
    void noteAlike(std::size_t index) {
        const PlannedPrint& print = m_result.prints[index];
        const PrintLook look = lookOf(print.print, print.photo, m_input.bleed);
        const auto found = std::ranges::find_if(
            m_free, [&](const PrintOnHand* onHand) { return isAlike(onHand->look, look); });
        if (found != m_free.end()) {
            m_result.alike.push_back({index, (*found)->id});
            m_free.erase(found);
        }
    }

    const PlanInput& m_input;
    std::vector<const PrintOnHand*> m_free;
    std::vector<const PrintOnHand*> m_used;
    CollectedPrints m_result;
};

}  // namespace

CollectedPrints collectedPrints(const PlanInput& input) {
    return Collecting(input).run();
}

}  // namespace matwright
