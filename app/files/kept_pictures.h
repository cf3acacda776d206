// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>

#include "core/pagefile/page_file.h"

namespace matwright::app {

// The small pictures that a page's file carries, by slot, for as long as they are right: a stand-in
// on the page and in the next save while the photos themselves are out of reach.
class KeptPictures {
  public:
    // Takes the pictures of the file that holds this page, or has just been written.
    void take(const Making& making, std::map<PieceId, std::string> pictures);
    void clear() { m_kept.clear(); }

    // The JPEG of a slot; empty where there is none, or where the photo, its crop, its tone or the
    // slot's window is another than the picture shows.
    std::string find(const Making& making, PieceId slot) const;
    // All that are right now.
    std::map<PieceId, std::string> of(const Making& making) const;

  private:
    // Everything that the picture depends on.
    struct Look {
        ContentKey photo;
        Tone tone;
        Placement placement;
        Size window;
        friend bool operator==(const Look&, const Look&) = default;
    };
    struct Kept {
        Look look;
        std::string jpeg;
    };
    static std::optional<Look> lookOf(const Making& making, PieceId slot);

    std::map<PieceId, Kept> m_kept;
};

}  // namespace matwright::app
