// SPDX-License-Identifier: MIT
#pragma once

#include "tests/checks/library_kill/place.h"

namespace matwright::check {

// One program: does what people and other programs do, in random order, until `operations` were
// begun by all processes together.
void work(const Place& place, test::Random random, int operations);

}  // namespace matwright::check
