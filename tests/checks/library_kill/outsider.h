// SPDX-License-Identifier: MIT
#pragma once

#include <map>

#include "tests/checks/library_kill/place.h"

namespace matwright::check {

// What other programs do, a cloud drive or an editor, that know no lock of ours.

// Writes a new version over any sketch, blindly. What was there is told in the journal: if it was
// ours, then it is this program that has overwritten it.
void writeAsOutsider(const Place& place, test::Random& random);
// Gives any sketch another name or folder.
void moveAsOutsider(const Place& place, test::Random& random);

// Of outsiders that were killed in the middle: which version overwrote which.
std::map<int, int> interruptedWrites(const std::filesystem::path& library);

}  // namespace matwright::check
