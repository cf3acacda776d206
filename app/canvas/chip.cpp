// SPDX-License-Identifier: MIT
#include "app/canvas/chip.h"

#include <QCache>
#include <QColor>
#include <QFontMetricsF>
#include <QPainter>
#include <cmath>

#include "app/canvas/overlay.h"

namespace matwright::app {

namespace {

constexpr QColor wordFill(38, 46, 54);
constexpr QColor wordText(255, 255, 255);
constexpr QColor figureFill(255, 255, 255, 245);
constexpr int mostChips = 256;

struct Chip {
    QSize size;
    QPixmap picture;  // null until it is first shown
};

Chip& chipFor(const QString& text, ChipKind kind, const QFont& font) {
    static QCache<QString, Chip> chips(mostChips);
    static QFont chipFont;
    if (font != chipFont) {
        chips.clear();
        chipFont = font;
    }
    const bool isWord = kind == ChipKind::Word;
    const QString key = text + QLatin1Char(isWord ? 'w' : 'f');
    if (Chip* known = chips.object(key)) {
        return *known;
    }
    const QFontMetricsF metrics(font);
    const double padding = isWord ? 7 : 4;
    auto* chip = new Chip;
    chip->size = QSizeF(std::ceil(metrics.horizontalAdvance(text)) + 2 * padding,
                        std::ceil(metrics.height()) + (isWord ? 5 : 1))
                     .toSize();
    chips.insert(key, chip);
    return *chip;
}

}  // namespace

QSize chipSize(const QString& text, ChipKind kind, const QFont& font) {
    return chipFor(text, kind, font).size;
}

QPixmap chipPicture(const QString& text, ChipKind kind, const QFont& font,
                    double devicePixelRatio) {
    Chip& chip = chipFor(text, kind, font);
    if (!chip.picture.isNull() && chip.picture.devicePixelRatio() == devicePixelRatio) {
        return chip.picture;
    }
    const bool isWord = kind == ChipKind::Word;
    chip.picture = QPixmap(chip.size * devicePixelRatio);
    chip.picture.setDevicePixelRatio(devicePixelRatio);
    chip.picture.fill(Qt::transparent);
    const QRect rect({}, chip.size);
    QPainter painter(&chip.picture);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(font);
    painter.setPen(Qt::NoPen);
    painter.setBrush(isWord ? wordFill : figureFill);
    painter.drawRoundedRect(rect, isWord ? 5 : 3, isWord ? 5 : 3);
    painter.setPen(isWord ? wordText : guideColour);
    painter.drawText(rect, Qt::AlignCenter, text);
    return chip.picture;
}

}  // namespace matwright::app
