// SPDX-License-Identifier: MIT
#include "core/template/cut_lines.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/outline/outline.h"

namespace matwright {

namespace {

constexpr Stroke hairline() {
    return {Length::hundredthMillimetres(10), {0, 0, 0}, {}};
}

// One layer a paper, in the order the papers are first met.
class PaperLayers {
  public:
    void add(const std::string& paper, const Path& outline) {
        layerFor(paper).items.emplace_back(PathItem{{outline}, hairline(), std::nullopt});
    }
    std::vector<Layer> take() { return std::move(m_layers); }

  private:
    Layer& layerFor(const std::string& paper) {
        const auto found = std::ranges::find(m_layers, paper, &Layer::label);
        if (found != m_layers.end()) {
            return *found;
        }
        m_layers.push_back({fmt::format("paper-{}", m_layers.size() + 1), paper, {}});
        return m_layers.back();
    }

    std::vector<Layer> m_layers;
};

std::string paperOf(const Piece& piece) {
    return piece.paper.empty() ? std::string(kindName(piece.kind)) : piece.paper;
}

}  // namespace

bool isCut(PieceKind kind) {
    return kind != PieceKind::Title && kind != PieceKind::Embellishment;
}

Drawing cutLineDrawing(const Sketch& sketch) {
    PaperLayers layers;
    for (const PieceId id : sketch.order) {
        const Piece& piece = sketch.pieces.at(id);
        if (!isCut(piece.kind)) {
            continue;
        }
        for (std::size_t i = piece.mats.size(); i-- > 0;) {
            const std::string& paper = piece.mats[i].paper;
            layers.add(paper.empty() ? "mat" : paper, matOutline(piece, i));
        }
        layers.add(paperOf(piece), trimOutline(piece));
    }
    Drawing drawing;
    drawing.size = surface(sketch.page).size();
    drawing.title = sketch.name.empty() ? "Cut lines" : sketch.name + " \u2013 cut lines";
    drawing.description = "Closed outlines true to size, one group per paper.";
    drawing.layers = layers.take();
    return drawing;
}

}  // namespace matwright
