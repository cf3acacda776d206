// SPDX-License-Identifier: MIT
#include "app/editing/piece_mime.h"

#include <QMimeData>
#include <string_view>

#include "core/pagefile/page_file.h"
#include "core/sketch/edit.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {

namespace {

constexpr const char* svgMimeType = "image/svg+xml";

}  // namespace

QMimeData* toMime(const std::vector<Piece>& pieces) {
    Making copy{blankSketch(), {}};
    if (!apply(copy.sketch, addPieces(copy.sketch, pieces))) {
        return new QMimeData;
    }
    return toMime(copy);
}

QMimeData* toMime(const Making& copy) {
    auto* mime = new QMimeData;
    if (copy.sketch.pieces.empty()) {
        return mime;
    }
    const QByteArray sketch = QByteArray::fromStdString(writeSketch(copy.sketch));
    mime->setData(piecesMimeType,
                  copy.work.isEmpty() ? sketch : QByteArray::fromStdString(writePage(copy)));
    mime->setData(svgMimeType, sketch);
    return mime;
}

std::vector<Piece> fromMime(const QMimeData* mime) {
    const Making copy = copyFromMime(mime);
    std::vector<Piece> pieces;
    pieces.reserve(copy.sketch.order.size());
    for (const PieceId id : copy.sketch.order) {
        pieces.push_back(copy.sketch.pieces.at(id));
    }
    return pieces;
}

Making copyFromMime(const QMimeData* mime) {
    if (!mime) {
        return {};
    }
    for (const char* type : {piecesMimeType, svgMimeType}) {
        const QByteArray bytes = mime->data(type);
        if (bytes.isEmpty()) {
            continue;
        }
        auto loaded = readPage(std::string_view(bytes.constData(), std::size_t(bytes.size())));
        if (loaded) {
            return std::move(loaded->making);
        }
    }
    return {};
}

bool mayHoldPieces(const QMimeData* mime) {
    return mime && (mime->hasFormat(piecesMimeType) || mime->hasFormat(svgMimeType));
}

}  // namespace matwright::app
