// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <stop_token>

#include "app/crop/crop_dialog.h"
#include "app/photos/photo_service.h"

namespace matwright::app {

class Session;

// The finished pixels of the photo in a slot of this page; on another thread.
using SlotPixels = std::function<Result<Raster>(const Making&, PieceId, std::stop_token)>;

// A crop window for the photo in this slot, not yet shown, owned by `parent`. When it is accepted
// every gesture becomes one undo step of the session. `service` may be null: then the crop is made
// without seeing the photo. Precondition: the slot has a photo. Everything referred to outlives the
// window.
CropDialog* makeCropDialog(Session& session, PieceId slot, Scale scale, PhotoService* service,
                           const SlotPixels& pixels, QWidget* parent);

// The page with another state of the photo in the slot.
Making withState(Making making, PieceId slot, const CropState& state);

}  // namespace matwright::app
