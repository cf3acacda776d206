// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string_view>

namespace matwright {

// The length in bytes of the well-formed UTF-8 sequence at the front of `text`, 0 where there is
// none (RFC 3629); `text` must not be empty. U+FFFE and U+FFFF count as malformed: they cannot
// stand in XML 1.0.
std::size_t utf8SequenceLength(std::string_view text);

}  // namespace matwright
