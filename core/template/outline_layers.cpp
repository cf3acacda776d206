// SPDX-License-Identifier: MIT
#include "core/template/outline_layers.h"

#include <algorithm>
#include <iterator>

#include "core/outline/layering.h"
#include "core/template/pen.h"
#include "core/template/template.h"

namespace matwright {

namespace {

// The line without what lies off the sheet; a line on the sheet's very edge stays.
std::vector<Path> onSheet(const Path& line, const Rect& sheet) {
    if (sheet.contains(boundsOf(line))) {
        return {line};
    }
    return splitUnder(line, regionOf(rectPath(sheet.expanded(pen::hundredths(5))))).hidden;
}

struct OutlinePens {
    Stroke visible;
    Stroke hidden;
};

void addLine(const Path& line, const Region& cover, const Rect& sheet, const OutlinePens& pens,
             Layer& visibleLayer, Layer& hiddenLayer) {
    const auto add = [](Layer& layer, std::vector<Path> paths, const Stroke& stroke) {
        if (!paths.empty()) {
            layer.items.emplace_back(PathItem{std::move(paths), stroke, std::nullopt});
        }
    };
    std::vector<Path> visible;
    std::vector<Path> hidden;
    for (const Path& part : onSheet(line, sheet)) {
        SplitLine split = cover.isEmpty() ? SplitLine{{part}, {}} : splitUnder(part, cover);
        std::ranges::move(split.visible, std::back_inserter(visible));
        std::ranges::move(split.hidden, std::back_inserter(hidden));
    }
    add(visibleLayer, std::move(visible), pens.visible);
    add(hiddenLayer, std::move(hidden), pens.hidden);
}

}  // namespace

std::vector<Layer> outlineLayers(const Sketch& sketch, const Scene& scene) {
    Layer mats{layerMats, "Mat edges", {}};
    Layer trim{layerTrim, "Trim lines", {}};
    Layer hidden{layerHidden, "Hidden under other pieces", {}};
    const Rect sheet = Rect::at({}, scene.sheet());
    const Layering layering(sketch);
    for (const ScenePiece& piece : scene.pieces()) {
        const Region cover = layering.coverAbove(piece.id);
        for (const Path& mat : piece.mats) {
            addLine(mat, cover, sheet, {pen::mat(), pen::hiddenMat()}, mats, hidden);
        }
        addLine(piece.trim, cover, sheet, {pen::trim(), pen::hiddenTrim()}, trim, hidden);
    }
    return {std::move(mats), std::move(trim), std::move(hidden)};
}

}  // namespace matwright
