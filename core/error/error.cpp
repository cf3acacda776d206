// SPDX-License-Identifier: MIT
#include "core/error/error.h"

namespace matwright {

std::string Error::text() const {
    return where.empty() ? sentence : where + ": " + sentence;
}

}  // namespace matwright
