// SPDX-License-Identifier: MIT
#include "app/crop/crop_words.h"

#include <QCoreApplication>
#include <cmath>

namespace matwright::app {

namespace {

QString words(const char* text) {
    return QCoreApplication::translate("matwright::app::CropWords", text);
}

}  // namespace

FinenessWords finenessOf(const Crop& crop, const CropSubject& subject, Length border) {
    const double ppi = effectivePpi(crop, subject.upright, windowSize(subject, border));
    return {sharpnessAt(ppi), QString::fromStdString(ppiText(ppi))};
}

QString lossWords(const Crop& crop, const CropSubject& subject, Length border) {
    const Size window = windowSize(subject, border);
    const PixelSize turned = turnedSize(crop, subject.upright);
    QString text = QString::fromStdString(lossText(turned, window));
    if (!text.isEmpty()) {
        text[0] = text[0].toUpper();
    }
    Crop widest;
    widest.quarterTurns = crop.quarterTurns;
    const double least = lossOf(widest, subject.upright, window);
    const double loss = lossOf(crop, subject.upright, window);
    if (loss > least + 0.005) {
        text += words("; as it is cropped now, %1 % of it shows")
                    .arg(std::max(1, static_cast<int>(std::lround((1 - loss) * 100))));
    }
    return text + QLatin1Char('.');
}

}  // namespace matwright::app
