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
    Crop widest;
    widest.quarterTurns = crop.quarterTurns;
    const double least = lossOf(widest, subject.upright, window);
    const double loss = lossOf(crop, subject.upright, window);
    QString ofShape = QString::fromStdString(lossText(turned, window)) + QLatin1Char('.');
    ofShape[0] = ofShape[0].toUpper();
    if (loss <= least + 0.005) {
        return ofShape;
    }
    const QString shows = words("As it is cropped, %1 % of this photo shows.")
                              .arg(std::max(1, static_cast<int>(std::lround((1 - loss) * 100))));
    return least > 0.005 ? shows + QLatin1Char(' ') + ofShape : shows;
}

}  // namespace matwright::app
