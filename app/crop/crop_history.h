// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <vector>

#include "app/crop/crop_state.h"

namespace matwright::app {

// What was done in the crop window, one step a gesture, to be gone through both ways before it is
// accepted. No widget, no document.
class CropHistory {
  public:
    struct Step {
        QString label;
        CropState state;  // after it
        int gesture = 0;
        friend bool operator==(const Step&, const Step&) = default;
    };

    explicit CropHistory(const CropState& start) : m_start(start) {}

    const CropState& start() const { return m_start; }
    const CropState& now() const { return m_done == 0 ? m_start : m_steps[m_done - 1].state; }
    // A new state. Steps of one positive gesture number in a row are one step, which goes when it
    // came back to where it began; a state equal to the present one is no step.
    void take(const CropState& state, const QString& label, int gesture = 0);

    bool canUndo() const { return m_done > 0; }
    bool canRedo() const { return m_done < m_steps.size(); }
    // Preconditions: canUndo(), canRedo().
    void undo() { --m_done; }
    void redo() { ++m_done; }
    // What would be taken back, or done again; empty where nothing.
    QString undoLabel() const { return canUndo() ? m_steps[m_done - 1].label : QString(); }
    QString redoLabel() const { return canRedo() ? m_steps[m_done].label : QString(); }

    // Everything that holds now, in order.
    std::vector<Step> done() const {
        return {m_steps.begin(), m_steps.begin() + std::ptrdiff_t(m_done)};
    }

  private:
    CropState m_start;
    std::vector<Step> m_steps;
    std::size_t m_done = 0;
};

}  // namespace matwright::app
