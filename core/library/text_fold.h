// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace matwright {

// The text as it is compared: small letters without accents.
// - Latin letters (ASCII, Latin 1, Latin Extended A, most of B, Additional) become the ASCII
// letters
//   they are based on; ß is ss, æ ae, œ oe, þ th, ĳ ij. Accents written as marks of their own
//   (U+0300 to U+036F) are dropped, so both ways of writing é are e.
// - Greek and Cyrillic capitals become small letters; final sigma becomes sigma.
// - Everything else stays as it is; bytes that are no UTF-8 become spaces.
std::string foldedText(std::string_view text);

// Appends foldedText(text).
void appendFolded(std::string_view text, std::string& to);

// The words of a folded text, in their order: longest runs of letters and digits. Every character
// beyond ASCII counts as a letter, but for spaces, punctuation and signs of Latin 1 (× too) and of
// U+2000 to U+2BFF and U+3000 to U+303F. The views are into `folded`.
std::vector<std::string_view> wordsIn(std::string_view folded);

// Keys that order texts by bytes as people expect it: folded, and runs of (ASCII) digits by their
// value.
std::string orderKey(std::string_view text);

}  // namespace matwright
