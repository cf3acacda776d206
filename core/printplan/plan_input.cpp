// SPDX-License-Identifier: MIT
#include "core/printplan/plan_input.h"

namespace matwright {

PrintLook lookOf(const Print& print, const Photo& photo) {
    return {photo.content, print.paper, print.trim, print.border, print.crop,
            print.window,  print.from,  print.to,   print.tone};
}

}  // namespace matwright
