// SPDX-License-Identifier: MIT
#pragma once

#include <random>

#include "core/sketch/edit.h"

namespace matwright::test {

using Random = std::mt19937_64;

// Sound sketches and pieces of every kind, shape and oddity (off-grid places, any rotation, mats,
// texts with markup and umlauts, locked), reproducible from the seed of `random` with this library.
Piece randomPiece(Random& random);
Sketch randomSketch(Random& random, int pieces);
// An edit that apply() accepts: adds, removes, changes, reorders, page or texts.
Edit randomEdit(Random& random, const Sketch& sketch);
// 0 .. count - 1, without the freedom std::uniform_int_distribution has between libraries.
std::uint64_t below(Random& random, std::uint64_t count);

}  // namespace matwright::test
