// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/making/making.h"

class QMimeData;

namespace matwright::app {

inline constexpr const char* piecesMimeType = "application/x-matwright-pieces";

// Pieces on their way through the clipboard or a drag: a whole sketch file on a blank page, offered
// under piecesMimeType and as "image/svg+xml". Never null; the caller owns it. Empty `pieces` give
// empty data.
QMimeData* toMime(const std::vector<Piece>& pieces);
// The same with the photos in the pieces and the looks of their papers, as copyOf() gives them:
// where there are any, piecesMimeType is a page file.
QMimeData* toMime(const Making& copy);

// The pieces from bottom to top; none where there is nothing to read or what is there is no sketch.
// `mime` may be null. Reads an image/svg+xml only where it is a sketch or page file.
std::vector<Piece> fromMime(const QMimeData* mime);
// The pieces with their photos and papers, to be laid on a page by addCopy().
Making copyFromMime(const QMimeData* mime);

// Whether it is worth trying: false where there are certainly no pieces. Looks at the formats only,
// so that nothing is fetched from another program. `mime` may be null.
bool mayHoldPieces(const QMimeData* mime);

}  // namespace matwright::app
