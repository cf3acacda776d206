// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/prints/print_job.h"

namespace matwright {

// ".jpg", ".png", ".tif", ".pdf"
std::string_view suffixOf(PrintFormat format);

// The name of a sheet's file without its suffix: its prints' names with " + " between them. What
// has a meaning in paths anywhere, and control characters, become a dash. It may be too long for a
// disk, and two may be alike: see numberedFileName().
std::string fileStemOf(const Gang& gang, const std::vector<Print>& prints);

}  // namespace matwright
