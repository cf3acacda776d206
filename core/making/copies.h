// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "core/making/making_edit.h"

namespace matwright {

// A page like this one with nothing on it but these pieces, from bottom to top as they lie, with
// the photos that stand in them and the looks of their papers. Ids that are not there are passed
// over. What is copied to another place of the page, or to another page.
Making copyOf(const Making& making, std::span<const PieceId> ids);

// The pieces of `copy` on top of the page, with new ids in their order, and their photos in them as
// they are cropped there. A photo that is not in the page's tray, by content, comes along; a paper
// the page knows by name keeps the page's look.
PageEdit addCopy(const Making& making, const Making& copy);

}  // namespace matwright
