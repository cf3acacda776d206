// SPDX-License-Identifier: MIT
#include "app/panels/angle_field.h"

#include <QRegularExpression>
#include <cmath>

namespace matwright::app {

namespace {

// Takes the word for the direction off the end; true for "left".
bool takeLeft(QString& text) {
    static const QRegularExpression word(QStringLiteral("\\s*(to\\s+the\\s+)?(left|right|l|r)$"));
    const auto match = word.match(text);
    text.truncate(match.hasMatch() ? match.capturedStart() : text.size());
    return match.captured(2).startsWith(QLatin1Char('l'));
}

}  // namespace

AngleField::AngleField(const QString& accessibleName, QWidget* parent)
    : ValueField(accessibleName, parent) {
    showValue();
}

QString AngleField::restingText() const {
    return editingText();
}

QString AngleField::editingText() const {
    return QString::fromStdString(turnText(m_value));
}

std::optional<QString> AngleField::take(const QString& text) {
    QString figure = text.trimmed().toLower();
    const bool isLeft = takeLeft(figure);
    figure.remove(QStringLiteral("°"));
    figure.replace(QLatin1Char(','), QLatin1Char('.'));
    figure.replace(QChar(0x2212), QLatin1Char('-'));
    bool read = false;
    const double degrees = figure.trimmed().toDouble(&read);
    if (!read || !std::isfinite(degrees) || std::abs(degrees) > 3600) {
        return tr("“%1” is not a turn; type degrees like 7.5, 90 or 6 left.")
            .arg(text.left(40).trimmed());
    }
    if (takeValue(Angle::roundedFromDegrees(isLeft ? -degrees : degrees))) {
        emit valueChanged(m_value, 0);
    }
    return std::nullopt;
}

void AngleField::step(int count, bool large) {
    m_value = m_value + Angle::degrees(large ? count * 15 : count);
    emit valueChanged(m_value, burst());
}

}  // namespace matwright::app
