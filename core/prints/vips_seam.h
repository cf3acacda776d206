// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <type_traits>
#include <utility>

#include <vips/vips8>

#include "core/error/error.h"

namespace matwright {

// libvips answers with exceptions; this turns them into values. `sentence` ends without a full stop
// and gets the library's own words behind it.
template <typename Work>
auto guarded(ErrorCode code, const std::string& sentence, const std::string& where, Work work)
    -> Result<std::invoke_result_t<Work>> {
    try {
        return work();
    } catch (const vips::VError& error) {
        std::string why = error.what();
        vips_error_clear();
        why.erase(why.find_last_not_of(" \n") + 1);
        for (char& letter : why) {
            letter = letter == '\n' ? ' ' : letter;
        }
        return std::unexpected(Error{code, sentence + " (" + why + ").", where});
    }
}

}  // namespace matwright
