// SPDX-License-Identifier: MIT
#pragma once

#include "app/panels/typed_field.h"
#include "core/measure/angle.h"

namespace matwright::app {

// A turn in degrees, clockwise: "7.5", "7,5", "-10", "90°". Kept to 1/1000 degree and shown from 0
// up to 360. Steps of 1 degree, with Shift 15.
class AngleField final : public TypedField {
    Q_OBJECT

  public:
    explicit AngleField(const QString& accessibleName = {}, QWidget* parent = nullptr);

    Angle value() const { return m_value; }
    void setValue(Angle value);

  signals:
    void valueChanged(matwright::Angle value, int gesture);

  protected:
    QString restingText() const override;
    QString editingText() const override;
    std::optional<QString> take(const QString& text) override;
    void step(int count, bool large) override;

  private:
    Angle m_value;
};

}  // namespace matwright::app
