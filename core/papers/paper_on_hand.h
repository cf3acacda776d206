// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/drawing/drawing.h"
#include "core/error/error.h"
#include "core/measure/length_text.h"
#include "core/measure/rect.h"

namespace matwright {

// Names one entry of the papers on hand for as long as the list lives; an id is never given twice.
// 0 is an entry that is not in the list yet.
struct PaperId {
    std::int64_t value = 0;
    friend constexpr auto operator<=>(PaperId, PaperId) = default;
};

enum class PaperSides { One, Two };          // printed or coloured on one side, or on both
enum class PaperPattern { None, HasUp };     // whether it has an up direction
enum class PaperKind { WholeSheet, Scrap };  // a scrap is what was left of a sheet

// Craft paper of one name, size and kind, as many sheets as there are. Pages name their papers in
// words (Mat::paper, Piece::paper); papers of one name, case and spaces aside, are the same paper.
struct PaperOnHand {
    PaperId id;
    std::string name;
    Colour colour{200, 170, 130};
    std::string picture;  // path of a picture of it; empty: none
    Length pictureWidth;  // how wide what it shows is in truth; positive where there is one, else 0
    Size size;            // as it lies when its pattern stands upright
    int count = 1;        // 0: used up, kept for its name and look
    PaperSides sides = PaperSides::One;
    PaperPattern pattern = PaperPattern::None;
    std::string thickness;  // as people say it: "216 gsm", "80 lb"; may be empty
    PaperKind kind = PaperKind::WholeSheet;
    friend bool operator==(const PaperOnHand&, const PaperOnHand&) = default;
};

inline constexpr Length smallestPaperSide = Length::inches(0, 1, 4);
inline constexpr Length largestPaperSide = Length::inches(100);
inline constexpr int maxPaperCount = 10'000;
inline constexpr std::size_t maxPapersOnHand = 20'000;
inline constexpr std::size_t maxPaperNameBytes = 400;  // of name and thickness
inline constexpr std::size_t maxPicturePathBytes = 4'000;

// The first rule broken (code Malformed, `where` names the paper), or nothing: a name that is not
// blank; name, thickness and path are valid UTF-8 on one line and no longer than said above; sides
// within smallestPaperSide .. largestPaperSide; 0 .. maxPaperCount sheets; a picture's width
// positive and at most 200 in, 0 without a picture.
std::optional<Error> findFault(const PaperOnHand& paper);

// What is equal for names of one paper: letters folded as the library's search folds them, blanks
// at the ends left out, runs of blanks one. Empty for a blank name.
std::string paperKey(std::string_view name);

// "kraft cardstock, 12 × 12 in", "kraft cardstock, 5 × 7 in, a scrap".
std::string paperText(const PaperOnHand& paper, Scale scale);

}  // namespace matwright
