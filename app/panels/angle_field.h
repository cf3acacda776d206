// SPDX-License-Identifier: MIT
#pragma once

#include "app/panels/value_field.h"
#include "core/measure/angle.h"

namespace matwright::app {

// A turn in degrees, clockwise unless it says "left" or has a minus: "7.5", "7,5", "-10", "90°",
// "6 left". Kept to 1/1000 degree and shown the short way round ("6° to the left"). Steps of 1
// degree, with Shift 15.
class AngleField final : public ValueField<Angle> {
    Q_OBJECT

  public:
    explicit AngleField(const QString& accessibleName = {}, QWidget* parent = nullptr);

  signals:
    void valueChanged(matwright::Angle value, int gesture);

  protected:
    QString restingText() const override;
    QString editingText() const override;
    std::optional<QString> take(const QString& text) override;
    void step(int count, bool large) override;
};

}  // namespace matwright::app
