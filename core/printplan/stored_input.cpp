// SPDX-License-Identifier: MIT
#include "core/printplan/stored_input.h"

#include <algorithm>

namespace matwright {

Result<PlanInput> storedInput(PrintingStore& store) {
    auto printers = store.printers();
    if (!printers) {
        return std::unexpected(printers.error());
    }
    auto onHand = store.prints(PrintState::OnHand);
    auto used = store.prints(PrintState::Used);
    for (const auto* prints : {&onHand, &used}) {
        if (!*prints) {
            return std::unexpected(prints->error());
        }
    }
    auto photos = store.printedPhotos();
    if (!photos) {
        return std::unexpected(photos.error());
    }
    PlanInput input;
    input.printers = *std::move(printers);
    input.onHand = *std::move(onHand);
    input.used = *std::move(used);
    input.printedPhotos = *std::move(photos);
    for (const PrintOnHand& print : input.used) {
        if (std::ranges::find(input.usedSizes, print.look.paper) == input.usedSizes.end()) {
            input.usedSizes.push_back(print.look.paper);
        }
    }
    return input;
}

}  // namespace matwright
