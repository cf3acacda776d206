// SPDX-License-Identifier: MIT
#include "app/prints/slot_pixels.h"

namespace matwright::app {

Result<Raster> finalPixelsOf(const Making& making, PieceId slot, const std::stop_token& stop) {
    const PrintOptions options;
    const std::vector<Print> prints = printsOf(making, options);
    // In order from left to right; a slot across the fold has two.
    Gang beside;
    for (std::size_t i = 0; i < prints.size(); ++i) {
        if (prints[i].slot == slot) {
            beside.places.push_back({i, {beside.sheet.width, {}}, false});
            beside.sheet = {beside.sheet.width + prints[i].paper.width, prints[i].paper.height};
        }
    }
    if (beside.places.empty()) {
        return std::unexpected(Error{ErrorCode::NotFound, "There is no photo in this slot.", ""});
    }
    return renderGang(
        beside, prints, [&](PhotoId photo) -> const Photo& { return making.work.photos.at(photo); },
        options, stop);
}

}  // namespace matwright::app
