// SPDX-License-Identifier: MIT
#include "app/batch/json_values.h"

#include "core/measure/length_text.h"

namespace matwright::app {

Json json(Length length) {
    return {{"ticks", length.ticks()}, {"mm", length.toMillimetres()}, {"text", exactText(length)}};
}

Json json(Size size) {
    return {{"width", json(size.width)}, {"height", json(size.height)}};
}

std::string textOf(const Json& json) {
    return json.dump(2, ' ', false, Json::error_handler_t::replace);
}

}  // namespace matwright::app
