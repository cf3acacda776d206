// SPDX-License-Identifier: MIT
#include "app/batch/json.h"

#include "app/batch/json_values.h"
#include "app/batch/place.h"
#include "core/measure/length_text.h"

namespace matwright::app {

namespace {

Json pageJson(const PageSetup& page) {
    return {{"size", json(page.size)},
            {"doublePage", page.doublePage},
            {"foldGap", json(page.foldGap)},
            {"margins",
             {{"left", json(page.margins.left)},
              {"top", json(page.margins.top)},
              {"right", json(page.margins.right)},
              {"bottom", json(page.margins.bottom)}}},
            {"gutter", json(page.gutter)}};
}

Json matsJson(const Piece& piece) {
    Json mats = Json::array();
    for (std::size_t i = 0; i < piece.mats.size(); ++i) {
        const Mat& mat = piece.mats[i];
        mats.push_back({{"border", json(mat.border)},
                        {"bottomBorder", json(mat.bottomBorder.value_or(mat.border))},
                        {"size", json(matBox(piece, i).size())},
                        {"paper", mat.paper},
                        {"gutted", mat.gutted}});
    }
    return mats;
}

std::string_view shapeWord(const Shape& shape) {
    constexpr std::string_view words[] = {"rectangle", "rounded rectangle", "oval", "polygon"};
    return words[shape.index()];
}

Json pieceJson(std::size_t number, PieceId id, const Piece& piece, const std::vector<Rect>& pages) {
    const Place place = placeOf(piece, pages);
    Json result = {{"number", number},   {"id", id.value},     {"kind", kindName(piece.kind)},
                   {"name", piece.name}, {"note", piece.note}, {"shape", shapeWord(piece.shape)}};
    if (piece.printSize) {
        result["print"] = json(*piece.printSize);
    }
    result["trim"] = json(piece.size);
    if (piece.kind == PieceKind::PhotoSlot) {
        result["mats"] = matsJson(piece);
    }
    result["paper"] = piece.paper;
    result["onPage"] = place.page + 1;
    result["left"] = json(place.left);
    result["top"] = json(place.top);
    result["rotation"] = piece.rotation.toDegrees();
    result["locked"] = piece.locked;
    return result;
}

}  // namespace

std::string piecesJson(const Sketch& sketch) {
    const std::vector<Rect> allPages = pages(sketch.page);
    Json pieces = Json::array();
    for (std::size_t i = 0; i < sketch.order.size(); ++i) {
        const PieceId id = sketch.order[i];
        pieces.push_back(pieceJson(i + 1, id, sketch.pieces.at(id), allPages));
    }
    return textOf({{"name", sketch.name},
                   {"note", sketch.note},
                   {"page", pageJson(sketch.page)},
                   {"pieces", std::move(pieces)}});
}

std::string findingsJson(const Sketch& sketch, const std::vector<CheckFinding>& findings) {
    Json list = Json::array();
    for (const CheckFinding& finding : findings) {
        Json pieces = Json::array();
        for (PieceId id : finding.pieces) {
            pieces.push_back({{"number", pieceNumber(sketch, id)},
                              {"id", id.value},
                              {"name", displayName(sketch.pieces.at(id))}});
        }
        list.push_back({{"kind", checkWord(finding.kind)},
                        {"sentence", finding.sentence},
                        {"pieces", std::move(pieces)}});
    }
    return textOf({{"findings", std::move(list)}});
}

}  // namespace matwright::app
