// SPDX-License-Identifier: MIT
#pragma once

#include "app/panels/value_field.h"
#include "core/measure/length_text.h"

namespace matwright::app {

// A length as people write it: "3 1/2", "3-1/2", "3.5", "89 mm", "8.9 cm". At rest it shows the
// figure to the scale's step with a mark where that is rounded; with the focus it shows the exact
// figure, so that entering and leaving never changes it. Steps go to the next multiple of the
// scale's step, with Shift eight steps.
class LengthField final : public ValueField<Length> {
    Q_OBJECT

  public:
    explicit LengthField(const QString& accessibleName = {}, QWidget* parent = nullptr);

    // Both ends included; low <= high. Values set from the program may lie outside.
    void setRange(Length low, Length high);
    Scale scale() const { return m_scale; }
    void setScale(Scale scale);

  signals:
    // By typing (gesture 0) or stepping (one gesture number a burst, see Session::newGesture).
    void valueChanged(matwright::Length value, int gesture);

  protected:
    QString restingText() const override;
    QString editingText() const override;
    std::optional<QString> take(const QString& text) override;
    void step(int count, bool large) override;

  private:
    std::optional<QString> rangeFault(Length value) const;

    Length m_low = -Length::coordinateLimit();
    Length m_high = Length::coordinateLimit();
    Scale m_scale = Scale::SixteenthInch;
};

// `from` moved by `count` steps of a positive `step` along its multiples; from between two
// multiples the first step only reaches the next one.
Length steppedLength(Length from, Length step, int count);

}  // namespace matwright::app
