// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "app/crop/crop_frame.h"
#include "core/photo/photo_words.h"

namespace matwright::app {

// How finely the crop comes out at the size it is printed, in words.
struct FinenessWords {
    Sharpness sharpness = Sharpness::Fine;
    QString text;
};
FinenessWords finenessOf(const Crop& crop, const CropSubject& subject, Length border);

// What the crop leaves out: "4 × 6 takes off 1/9 of this photo", and how much more a closer look
// or straightening does.
QString lossWords(const Crop& crop, const CropSubject& subject, Length border);

}  // namespace matwright::app
