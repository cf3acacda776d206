// SPDX-License-Identifier: MIT
#include "app/crop/crop_history.h"

namespace matwright::app {

void CropHistory::take(const CropState& state, const QString& label, int gesture) {
    if (state == now()) {
        return;
    }
    m_steps.resize(m_done);
    const bool goesOn = gesture > 0 && m_done > 0 && m_steps.back().gesture == gesture;
    if (!goesOn) {
        m_steps.push_back({label, state, gesture});
        ++m_done;
        return;
    }
    const CropState& before = m_done == 1 ? m_start : m_steps[m_done - 2].state;
    if (state == before) {
        m_steps.pop_back();
        --m_done;
    } else {
        m_steps.back().state = state;
    }
}

}  // namespace matwright::app
