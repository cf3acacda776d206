// SPDX-License-Identifier: MIT
#include "app/editing/piece_mime.h"

#include <QMimeData>
#include <string_view>

#include "core/sketch/edit.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {

namespace {

constexpr const char* svgMimeType = "image/svg+xml";

}  // namespace

QMimeData* toMime(const std::vector<Piece>& pieces) {
    auto* mime = new QMimeData;
    Sketch sketch = blankSketch();
    if (pieces.empty() || !apply(sketch, addPieces(sketch, pieces))) {
        return mime;
    }
    const QByteArray bytes = QByteArray::fromStdString(writeSketch(sketch));
    mime->setData(piecesMimeType, bytes);
    mime->setData(svgMimeType, bytes);
    return mime;
}

std::vector<Piece> fromMime(const QMimeData* mime) {
    if (!mime) {
        return {};
    }
    for (const char* type : {piecesMimeType, svgMimeType}) {
        const QByteArray bytes = mime->data(type);
        if (bytes.isEmpty()) {
            continue;
        }
        const auto loaded =
            readSketch(std::string_view(bytes.constData(), std::size_t(bytes.size())));
        if (!loaded) {
            continue;
        }
        std::vector<Piece> pieces;
        for (const PieceId id : loaded->sketch.order) {
            pieces.push_back(loaded->sketch.pieces.at(id));
        }
        return pieces;
    }
    return {};
}

bool mayHoldPieces(const QMimeData* mime) {
    return mime && (mime->hasFormat(piecesMimeType) || mime->hasFormat(svgMimeType));
}

}  // namespace matwright::app
