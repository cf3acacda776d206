// SPDX-License-Identifier: MIT
#pragma once

#include <pugixml.hpp>

#include "core/pagefile/page_file.h"

namespace matwright {

// The picture of a page file, into its root: the finished page (core/pagepicture) with papers as
// their colours. A photo in a rectangle is drawn where it stands, turned with it. SVG renderers
// have no clip in common, so other shapes show the plain slot, and their small picture is only
// carried.
void appendPageDrawing(pugi::xml_node& svg, const Making& making, const SmallPictures& pictures);

}  // namespace matwright
