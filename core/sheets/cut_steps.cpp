// SPDX-License-Identifier: MIT
#include "core/sheets/cut_steps.h"

#include <algorithm>
#include <array>

namespace matwright {

namespace {

Length settingOf(const CutPart& part) {
    return part.at - (part.direction == CutDirection::Upright ? part.area.left() : part.area.top());
}

class Ordering {
  public:
    Ordering(const SheetPlan& plan, Scale scale) : m_plan(plan), m_step(stepOf(scale)) { open(0); }

    std::vector<CutStep> run() {
        std::vector<CutStep> steps;
        while (!m_open.empty()) {
            const auto next =
                std::ranges::max_element(m_open, {}, [&](int part) { return rankOf(part, steps); });
            const int index = *next;
            m_open.erase(next);
            steps.push_back(stepFor(index, steps));
            open(partAt(index).first);
            open(partAt(index).second);
        }
        return steps;
    }

  private:
    const CutPart& partAt(int index) const { return m_plan.parts[static_cast<std::size_t>(index)]; }

    void open(int index) {
        if (index >= 0 && partAt(index).use == CutPart::Use::Cut) {
            m_open.push_back(index);
        }
    }

    // The same setting and way, the same way, how many more the setting serves; the first in the
    // plan of equals.
    std::array<int, 4> rankOf(int index, const std::vector<CutStep>& steps) const {
        const CutPart& part = partAt(index);
        const Length setting = settingOf(part);
        const bool sameWay = steps.empty() ? part.direction == CutDirection::Upright
                                           : steps.back().direction == part.direction;
        const bool sameSetting = !steps.empty() && steps.back().setting == setting;
        const auto serves = std::ranges::count_if(m_open, [&](int other) {
            return partAt(other).direction == part.direction && settingOf(partAt(other)) == setting;
        });
        return {sameWay && sameSetting, sameWay, static_cast<int>(serves), -index};
    }

    CutStep stepFor(int index, const std::vector<CutStep>& steps) const {
        const CutPart& part = partAt(index);
        const Length setting = settingOf(part);
        CutStep step{index,          part.first, part.second,
                     part.direction, setting,    setting.roundedTo(m_step),
                     true,           false};
        step.set = steps.empty() || steps.back().setting != setting;
        step.turn = steps.empty() ? part.direction == CutDirection::Level
                                  : steps.back().direction != part.direction;
        return step;
    }

    const SheetPlan& m_plan;
    Length m_step;
    std::vector<int> m_open;
};

}  // namespace

std::vector<SheetSteps> stepsOf(const CutPlan& plan, Scale scale) {
    std::vector<SheetSteps> all;
    all.reserve(plan.sheets.size());
    for (std::size_t s = 0; s < plan.sheets.size(); ++s) {
        all.push_back({static_cast<int>(s), Ordering(plan.sheets[s], scale).run()});
    }
    return all;
}

}  // namespace matwright
