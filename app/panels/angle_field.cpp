// SPDX-License-Identifier: MIT
#include "app/panels/angle_field.h"

#include <cmath>

namespace matwright::app {

AngleField::AngleField(const QString& accessibleName, QWidget* parent)
    : TypedField(accessibleName, parent) {
    showValue();
}

void AngleField::setValue(Angle value) {
    const bool differs = isMixed() || value != m_value;
    clearMixed();
    m_value = value;
    valueWasSet(differs);
}

QString AngleField::restingText() const {
    return editingText();
}

QString AngleField::editingText() const {
    return QString::number(m_value.toDegrees(), 'g', 9) + QStringLiteral("°");
}

std::optional<QString> AngleField::take(const QString& text) {
    QString figure = text.trimmed();
    figure.remove(QStringLiteral("°"));
    figure.replace(QLatin1Char(','), QLatin1Char('.'));
    figure.replace(QChar(0x2212), QLatin1Char('-'));
    bool read = false;
    const double degrees = figure.trimmed().toDouble(&read);
    if (!read || !std::isfinite(degrees) || std::abs(degrees) > 3600) {
        return tr("“%1” is not a turn; type degrees like 7.5 or 90.").arg(text.left(40).trimmed());
    }
    const Angle angle = Angle::roundedFromDegrees(degrees);
    const bool changes = angle != m_value || wasMixed();
    m_value = angle;
    showValue();
    if (changes) {
        emit valueChanged(m_value, 0);
    }
    return std::nullopt;
}

void AngleField::step(int count, bool large) {
    m_value = m_value + Angle::degrees(large ? count * 15 : count);
    emit valueChanged(m_value, burst());
}

}  // namespace matwright::app
