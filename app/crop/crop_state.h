// SPDX-License-Identifier: MIT
#pragma once

#include "core/crop/crop.h"
#include "core/tone/tone.h"

namespace matwright::app {

// What the crop window changes of a photo in a slot, as a regular value.
struct CropState {
    Crop crop;
    Length border;  // white, inside the trim
    Tone tone;
    friend bool operator==(const CropState&, const CropState&) = default;
};

}  // namespace matwright::app
