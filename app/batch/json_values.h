// SPDX-License-Identifier: MIT
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

#include "core/measure/length.h"
#include "core/measure/rect.h"

namespace matwright::app {

// Values that all JSON of the program writes alike; members stay in the order they are given.
using Json = nlohmann::ordered_json;

// {"ticks": 3200400, "mm": 88.9, "text": "3 1/2 in"}, see json.h.
Json json(Length length);
// {"width": …, "height": …}
Json json(Size size);

// With two spaces of indent. Text that is no UTF-8 shows U+FFFD there; JSON has no place for it.
std::string textOf(const Json& json);

}  // namespace matwright::app
