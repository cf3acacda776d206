// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <span>

#include "core/drawing/drawing.h"
#include "core/template/label_text.h"
#include "core/template/occupancy.h"

namespace matwright {

// Where the labels of a template go. Each is tried in the visible part of its piece, clear of every
// line, in smaller and smaller print; then beside the piece with a leader; then as a row of a list,
// with only the number at the piece. Where even the list is full, a line says how many are missing.
class LabelPlacer {
  public:
    // Everything placed is also marked in `occupancy`. The arguments must outlive the placer.
    LabelPlacer(const Scene& scene, Scale scale, Occupancy& occupancy);

    // The labels that find room in their pieces.
    void placeInside(const std::map<PieceId, ToldDistances>& told);
    // All others. Call it after the title and the squares have taken their places.
    void placeOthers(const std::map<PieceId, ToldDistances>& told);

    std::vector<DrawingItem> takeItems() { return std::move(m_items); }

  private:
    bool placeInPiece(const ScenePiece& piece, const std::vector<std::string>& lines);
    bool placeTag(const ScenePiece& piece);
    bool placeBeside(const ScenePiece& piece, const std::vector<std::string>& lines);
    void placeList(std::span<const ScenePiece* const> pieces,
                   const std::map<PieceId, ToldDistances>& told);
    bool placeRows(const std::vector<std::string>& rows);
    void put(const struct TextBlock& block, Point at);
    void putLeader(Vertex from, Vertex to);

    const Scene& m_scene;
    Scale m_scale;
    Occupancy& m_occupancy;
    std::vector<DrawingItem> m_items;
    std::vector<const ScenePiece*> m_waiting;
    int m_leftOut = 0;
};

}  // namespace matwright
