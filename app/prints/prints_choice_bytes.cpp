// SPDX-License-Identifier: MIT
#include "app/prints/prints_choice_bytes.h"

#include <QDataStream>
#include <QIODevice>

namespace matwright::app {

namespace {

constexpr qint32 version = 1;
constexpr qint64 mostTicks = 2 * Length::ticksPerInch;

bool isIn(qint64 value, qint64 low, qint64 high) {
    return low <= value && value <= high;
}

}  // namespace

QByteArray bytesOf(const PrintsChoice& choice) {
    QByteArray bytes;
    QDataStream out(&bytes, QIODevice::WriteOnly);
    out.setVersion(QDataStream::Qt_6_4);
    const PrintOptions& o = choice.options;
    out << version << static_cast<qint32>(o.format) << static_cast<qint32>(o.ppi)
        << static_cast<qint32>(o.quality) << static_cast<qint64>(o.bleed.ticks()) << o.cutMarks
        << choice.ganged << choice.ownBorders << static_cast<qint64>(choice.border.ticks());
    return bytes;
}

PrintsChoice choiceFrom(const QByteArray& bytes) {
    QDataStream in(bytes);
    in.setVersion(QDataStream::Qt_6_4);
    qint32 read = 0;
    qint32 format = 0;
    qint32 ppi = 0;
    qint32 quality = 0;
    qint64 bleed = 0;
    qint64 border = 0;
    PrintsChoice choice;
    in >> read >> format >> ppi >> quality >> bleed >> choice.options.cutMarks >> choice.ganged >>
        choice.ownBorders >> border;
    const bool isSound = in.status() == QDataStream::Ok && read == version && isIn(format, 0, 3) &&
                         isIn(ppi, smallestPpi, largestPpi) && isIn(quality, 1, 100) &&
                         isIn(bleed, 0, mostTicks) && isIn(border, 0, mostTicks);
    if (!isSound) {
        return {};
    }
    choice.options.format = static_cast<PrintFormat>(format);
    choice.options.ppi = ppi;
    choice.options.quality = quality;
    choice.options.bleed = Length::fromTicks(bleed);
    choice.border = Length::fromTicks(border);
    return choice;
}

}  // namespace matwright::app
