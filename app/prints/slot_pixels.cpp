// SPDX-License-Identifier: MIT
#include "app/prints/slot_pixels.h"

#include <algorithm>

namespace matwright::app {

Result<Raster> finalPixelsOf(const Making& making, PieceId slot, const std::stop_token& stop) {
    const PrintOptions options;
    const std::vector<Print> prints = printsOf(making, options);
    const auto print = std::ranges::find(prints, slot, &Print::slot);
    if (print == prints.end()) {
        return std::unexpected(Error{ErrorCode::NotFound, "There is no photo in this slot.", ""});
    }
    return renderPrint(*print, making.work.photos.at(print->photo), options, stop);
}

}  // namespace matwright::app
