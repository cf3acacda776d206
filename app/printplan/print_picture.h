// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>

#include "app/photos/photo_service.h"
#include "core/prints/print_job.h"

namespace matwright::app {

// A print as it comes out, on its paper, for looking at: no larger than `longSide` pixels. A null
// image where the photo is not in memory; then it is fetched, and PhotoService::thumbnailReady()
// comes. `service` may be null.
QImage printPicture(PhotoService* service, const Photo& photo, const Print& print, int longSide);

// The same in a square of `side` pixels, for lists; empty where there is none.
QPixmap printIcon(PhotoService* service, const Photo& photo, const Print& print, int side);

}  // namespace matwright::app
