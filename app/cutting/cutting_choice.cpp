// SPDX-License-Identifier: MIT
#include "app/cutting/cutting_choice.h"

#include <QDataStream>
#include <QIODevice>

namespace matwright::app {

namespace {

constexpr qint32 choiceVersion = 1;

bool isBetween(Length low, qint64 ticks, Length high) {
    return low.ticks() <= ticks && ticks <= high.ticks();
}

}  // namespace

QByteArray bytesOf(const CuttingChoice& choice) {
    QByteArray bytes;
    QDataStream out(&bytes, QIODevice::WriteOnly);
    out.setVersion(QDataStream::Qt_6_4);
    out << choiceVersion << static_cast<qint32>(choice.seconds)
        << static_cast<qint64>(choice.usefulSide.ticks())
        << static_cast<qint64>(choice.glueEdge.ticks()) << choice.mayBuy << choice.onA4;
    return bytes;
}

CuttingChoice cuttingChoiceFrom(const QByteArray& bytes) {
    QDataStream in(bytes);
    in.setVersion(QDataStream::Qt_6_4);
    CuttingChoice choice;
    qint32 read = 0;
    qint32 seconds = 0;
    qint64 useful = 0;
    qint64 glue = 0;
    in >> read >> seconds >> useful >> glue >> choice.mayBuy >> choice.onA4;
    const bool isSound = in.status() == QDataStream::Ok && read == choiceVersion && seconds >= 1 &&
                         seconds <= mostSeconds &&
                         isBetween(leastUsefulSide, useful, mostUsefulSide) &&
                         isBetween({}, glue, mostGlueEdge);
    if (!isSound) {
        return {};
    }
    choice.seconds = seconds;
    choice.usefulSide = Length::fromTicks(useful);
    choice.glueEdge = Length::fromTicks(glue);
    return choice;
}

PaperPlanOptions planOptionsOf(const CuttingChoice& choice, Scale scale) {
    PaperPlanOptions options;
    if (!choice.mayBuy) {
        options.toBuy.clear();
    }
    options.glueEdge = choice.glueEdge;
    options.scale = scale;
    options.rules.usefulSide = choice.usefulSide;
    options.limits.time = std::chrono::seconds(choice.seconds);
    return options;
}

}  // namespace matwright::app
