// SPDX-License-Identifier: MIT
#pragma once

#include "app/panels/typed_field.h"

namespace matwright::app {

// What fields for one kind of figure share: the value and how the program sets it.
template <typename Value>
class ValueField : public TypedField {
  public:
    // The last value set or taken; meaningless while isMixed().
    Value value() const { return m_value; }
    void setValue(Value value) {
        const bool differs = isMixed() || value != m_value;
        clearMixed();
        m_value = value;
        valueWasSet(differs);
    }

  protected:
    using TypedField::TypedField;
    // For take(): keeps what was read; whether that is a change.
    bool takeValue(Value value) {
        const bool changes = value != m_value || wasMixed();
        m_value = value;
        showValue();
        return changes;
    }

    Value m_value;
};

}  // namespace matwright::app
