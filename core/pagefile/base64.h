// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace matwright {

// RFC 4648, section 4, with padding and without line breaks.
std::string toBase64(std::string_view bytes);
// Nothing where the text is not exactly that.
std::optional<std::string> fromBase64(std::string_view text);

}  // namespace matwright
