// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>

#include "core/paperplan/paper_pieces.h"
#include "core/papers/papers_store.h"

namespace matwright {

// Names what is cut, so that it is known again in another window, another program or on another
// day: the same pieces of the same papers on pages of the same names have the same key, in whatever
// order the pages come, whatever they are cut from and whether all of them found room. 32
// hexadecimal digits.
std::string planKey(std::span<const PaperPage> pages, std::span<const PaperPiece> pieces);

// PapersCut::once for what has this key. Where it was cut before and is wanted once more, `before`
// is that cut (PapersStore::lastCut()): of several windows that all know of it one does it.
std::string cutName(const std::string& key, const std::optional<PapersChange>& before = {});

}  // namespace matwright
