// SPDX-License-Identifier: MIT
#include "app/panels/length_field.h"

#include <algorithm>

namespace matwright::app {

LengthField::LengthField(const QString& accessibleName, QWidget* parent)
    : ValueField(accessibleName, parent) {
    showValue();
}

void LengthField::setRange(Length low, Length high) {
    m_low = low;
    m_high = high;
}

void LengthField::setScale(Scale scale) {
    const bool differs = scale != m_scale;
    m_scale = scale;
    valueWasSet(differs);
}

QString LengthField::restingText() const {
    return QString::fromStdString(lengthText(m_value, m_scale));
}

QString LengthField::editingText() const {
    const bool rounded = !m_value.isMultipleOf(stepOf(m_scale));
    return rounded ? QString::fromStdString(exactText(m_value)) : restingText();
}

std::optional<QString> LengthField::rangeFault(Length value) const {
    if (value < m_low) {
        return m_low.isZero() ? tr("This cannot be below zero; type a longer length.")
                              : tr("The least is %1; type a longer length.")
                                    .arg(QString::fromStdString(exactText(m_low)));
    }
    if (value > m_high) {
        return tr("The most is %1; type a shorter length.")
            .arg(QString::fromStdString(exactText(m_high)));
    }
    return std::nullopt;
}

std::optional<QString> LengthField::take(const QString& text) {
    const auto read = parseLength(text.toStdString(), unitOf(m_scale));
    if (!read && read.error().code == ErrorCode::OutOfRange) {
        return tr("“%1” is too long; lengths go up to 1,000 in.").arg(text.left(40).trimmed());
    }
    if (!read) {
        return tr("“%1” is not a length; type it like 3 1/2, 3.5, 89 mm or 8.9 cm.")
            .arg(text.left(40).trimmed());
    }
    if (auto fault = rangeFault(*read)) {
        return fault;
    }
    if (takeValue(*read)) {
        emit valueChanged(m_value, 0);
    }
    return std::nullopt;
}

void LengthField::step(int count, bool large) {
    const Length wished = steppedLength(m_value, stepOf(m_scale), large ? count * 8 : count);
    const Length next = std::clamp(wished, std::min(m_low, m_value), std::max(m_high, m_value));
    if (next == m_value) {
        return;
    }
    m_value = next;
    emit valueChanged(m_value, burst());
}

Length steppedLength(Length from, Length step, int count) {
    const Length nearest = from.roundedTo(step);
    if (nearest == from) {
        return from + step * count;
    }
    const bool roundedTheWayWeGo = (nearest > from) == (count > 0);
    const int rest = count > 0 ? count - 1 : count + 1;
    return nearest + step * (roundedTheWayWeGo ? rest : count);
}

}  // namespace matwright::app
