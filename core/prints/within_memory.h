// SPDX-License-Identifier: MIT
#pragma once

#include <exception>
#include <new>
#include <string>
#include <type_traits>

#include "core/error/error.h"

namespace matwright {

// Large prints want much memory at once, on threads where an exception would end the program:
// `work` gives a Result, and one that has to throw gives a sentence instead.
template <typename Work>
auto withinMemory(const Work& work) -> std::invoke_result_t<const Work&> {
    try {
        return work();
    } catch (const std::bad_alloc&) {
        return std::unexpected(
            Error{ErrorCode::TooLarge,
                  "The memory of this computer is not enough for it. Close other programs, or "
                  "choose fewer pixels an inch.",
                  ""});
    } catch (const std::exception& failure) {
        return std::unexpected(Error{ErrorCode::Unsupported,
                                     std::string("It could not be made (") + failure.what() + ").",
                                     ""});
    }
}

}  // namespace matwright
