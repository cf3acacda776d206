// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/crop/crop.h"
#include "core/error/error.h"
#include "core/measure/rect.h"

namespace matwright::app {

// A photo of a listing and what is to become of it.
struct ListedPlace {
    std::filesystem::path photo;                      // absolute, or from the listing's folder
    std::optional<std::string> slot;                  // its number or name; nothing: into the tray
    std::optional<std::pair<double, double>> centre;  // 0 .. 1 of the turned photo
    double zoom = 1;                                  // 1 .. 50
    double straighten = 0;                            // degrees clockwise, -45 .. 45
    int quarterTurns = 0;                             // clockwise
    Length border;                                    // white
    bool evenOut = false;
    bool isFocal = false;
    bool isFavourite = false;
    std::optional<Size> wish;
};

// What `page` makes a page from, a small JSON file:
//
//   {
//     "sketch": "holiday.sketch.svg",
//     "fill": true,
//     "photos": [
//       {"photo": "beach.jpg", "slot": 2, "centre": [0.5, 0.4], "zoom": 1.2, "focal": true},
//       {"photo": "gulls.jpg", "slot": "Sky", "straighten": -1.5, "border": "1/8"},
//       {"photo": "pier.jpg", "turn": 90, "evenOut": true, "wish": "4x6", "favourite": true}
//     ]
//   }
//
// `slot` is the number that `pieces` shows or the slot's name; a photo without one goes into the
// tray. With `fill` free slots then get photos from the tray. Everything but `sketch` and `photo`
// may be left out.
struct PageListing {
    std::filesystem::path sketch;
    bool fill = false;
    std::vector<ListedPlace> places;
};

// Errors: WrongFormat (no JSON), Malformed (a member that is not known or has no such value; the
// sentence names it); `where` is empty.
Result<PageListing> readListing(std::string_view text);

}  // namespace matwright::app
