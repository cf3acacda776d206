// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>
#include <set>

#include <fmt/format.h>

#include "core/sheets/cut_steps.h"

namespace matwright {

namespace {

class Table {
  public:
    Table(Size sheet, Length kerf, SettingUsed used)
        : m_kerf(kerf), m_isExact(used == SettingUsed::Exact) {
        m_parts.emplace(0, sheet);
    }

    // What is wrong with the step, if something is.
    const char* cut(const CutStep& step, Length setting) {
        const auto found = m_parts.find(step.part);
        if (found == m_parts.end()) {
            if (m_lost.contains(step.part)) {
                m_lost.insert({step.first, step.second});
                return nullptr;
            }
            return "cuts a part that is not on the table";
        }
        const Size whole = found->second;
        const bool upright = step.direction == CutDirection::Upright;
        const Length length = upright ? whole.width : whole.height;
        if (setting.isNegative() || (m_isExact && setting >= length)) {
            return "cuts beside its part";
        }
        // Rounded, the blade may fall beside the part: then nothing comes off.
        setting = std::min(setting, length);
        const Length rest = length - setting - m_kerf;
        m_parts.erase(found);
        const bool placed =
            put(step.first, whole, setting, upright) && put(step.second, whole, rest, upright);
        return placed ? nullptr : "does not give the parts it says";
    }

    std::vector<CutOff> parts() const {
        std::vector<CutOff> all;
        all.reserve(m_parts.size());
        for (const auto& [part, size] : m_parts) {
            all.push_back({part, size});
        }
        return all;
    }

  private:
    bool put(int part, Size whole, Length side, bool upright) {
        if (part < 0) {
            return !m_isExact || !side.isPositive();
        }
        if (!side.isPositive() && !m_isExact) {
            m_lost.insert(part);
            return true;
        }
        (upright ? whole.width : whole.height) = side;
        return side.isPositive() && m_parts.emplace(part, whole).second;
    }

    Length m_kerf;
    bool m_isExact;
    std::set<int> m_lost;  // parts that rounding leaves nothing of
    std::map<int, Size> m_parts;
};

}  // namespace

Result<std::vector<CutOff>> carriedOut(const SheetSteps& steps, Size sheet, Length kerf,
                                       SettingUsed used) {
    Table table(sheet, kerf, used);
    for (std::size_t i = 0; i < steps.steps.size(); ++i) {
        const CutStep& step = steps.steps[i];
        const Length setting = used == SettingUsed::Exact ? step.setting : step.shown;
        if (const char* fault = table.cut(step, setting)) {
            return std::unexpected(Error{
                ErrorCode::BadEdit, fmt::format("Step {} {}; plan the sheet anew.", i + 1, fault),
                fmt::format("sheet {}", steps.sheet + 1)});
        }
    }
    return table.parts();
}

}  // namespace matwright
