// SPDX-License-Identifier: MIT
#include "core/template/template.h"

#include <fmt/format.h>

#include "core/template/check_squares.h"
#include "core/template/dimensions.h"
#include "core/template/guides.h"
#include "core/template/labels.h"
#include "core/template/outline_layers.h"
#include "core/template/title_block.h"

namespace matwright {

namespace {

// A label that says a distance takes more room, which may cost another dimension line its place:
// so many times the sheet is laid out again before every distance goes into the labels.
constexpr int mostRounds = 4;

// What is placed around the outlines.
struct Annotations {
    Layer dimensions{layerDimensions, "Distances from the page edges", {}};
    Layer labels{layerLabels, "Labels", {}};
    Layer checkSquares{layerCheckSquares, "Check squares", {}};
    TitleLayers title;
    std::set<DistanceOf> missing;  // wanted as a line, but no line has room
};

class Annotator {
  public:
    Annotator(const Sketch& sketch, const TemplateOptions& options, const Scene& scene,
              std::vector<LineMeaning> meanings)
        : m_sketch(sketch),
          m_options(options),
          m_scene(scene),
          m_meanings(std::move(meanings)),
          m_lines(scene.sheet(), options.parts) {
        addGuides(sketch.page, options.guides, m_lines);
        for (const ScenePiece& piece : scene.pieces()) {
            m_lines.addRing(piece.trimRing, Occupancy::Outline);
            for (const Path& mat : piece.mats) {
                m_lines.addRing(flattened(mat, Length::hundredthMillimetres(10)),
                                Occupancy::Outline);
            }
            m_all.insert({piece.id, Distance::Left});
            m_all.insert({piece.id, Distance::Top});
        }
    }

    Annotations lay() const {
        if (!m_options.dimensions) {
            return attempt({}, {});
        }
        std::set<DistanceOf> told;
        for (int round = 0; round < mostRounds; ++round) {
            std::set<DistanceOf> wanted;
            std::ranges::set_difference(m_all, told, std::inserter(wanted, wanted.end()));
            Annotations found = attempt(told, wanted);
            if (!m_options.labels || found.missing.empty()) {
                return found;
            }
            told.merge(found.missing);
        }
        return attempt(m_all, {});
    }

  private:
    Annotations attempt(const std::set<DistanceOf>& told,
                        const std::set<DistanceOf>& wanted) const {
        Annotations out;
        Occupancy occupancy = m_lines;
        const std::map<PieceId, ToldDistances> words = wordsOf(told);
        std::optional<LabelPlacer> labels(std::in_place, m_scene, m_options.scale, occupancy);
        if (m_options.labels) {
            labels->placeInside(words);
        }
        if (m_options.checkSquares) {
            CheckSquares squares = checkSquares(m_scene, occupancy);
            if (!squares.complete && m_options.labels) {
                // The labels left no room: the squares go first.
                occupancy = m_lines;
                squares = checkSquares(m_scene, occupancy);
                labels.emplace(m_scene, m_options.scale, occupancy);
                labels->placeInside(words);
            }
            out.checkSquares = std::move(squares.layer);
        }
        out.title = titleLayers(m_sketch, m_options, m_scene, m_meanings, occupancy);
        if (m_options.labels) {
            labels->placeOthers(words);
            out.labels.items = labels->takeItems();
        }
        DimensionPlan plan = planDimensions(m_scene, occupancy, m_options.scale, wanted);
        out.dimensions.items = std::move(plan.items);
        std::ranges::set_difference(wanted, plan.shown,
                                    std::inserter(out.missing, out.missing.end()));
        return out;
    }

    std::map<PieceId, ToldDistances> wordsOf(const std::set<DistanceOf>& told) const {
        std::map<PieceId, ToldDistances> words;
        for (const ScenePiece& piece : m_scene.pieces()) {
            words[piece.id] = {told.contains({piece.id, Distance::Left}),
                               told.contains({piece.id, Distance::Top})};
        }
        return words;
    }

    const Sketch& m_sketch;
    const TemplateOptions& m_options;
    const Scene& m_scene;
    const std::vector<LineMeaning> m_meanings;
    Occupancy m_lines;
    std::set<DistanceOf> m_all;
};

}  // namespace

Drawing templateDrawing(const Sketch& sketch, const TemplateOptions& options) {
    const Scene scene(sketch);
    std::vector<Layer> outlines = outlineLayers(sketch, scene);
    Annotations annotations =
        Annotator(sketch, options, scene, lineMeanings(outlines, sketch.page, options.guides))
            .lay();
    Drawing drawing;
    drawing.size = scene.sheet();
    drawing.title = sketch.name.empty() ? "Page template" : sketch.name;
    drawing.description =
        fmt::format("Measured template, {}, true to size.", pageText(sketch.page, options.scale));
    drawing.layers.push_back(pageLayer(sketch.page));
    if (options.guides) {
        drawing.layers.push_back(guideLayer(sketch.page));
    }
    std::ranges::move(outlines, std::back_inserter(drawing.layers));
    for (Layer* layer : {&annotations.dimensions, &annotations.labels, &annotations.checkSquares,
                         &annotations.title.title, &annotations.title.key}) {
        if (!layer->items.empty()) {
            drawing.layers.push_back(std::move(*layer));
        }
    }
    return drawing;
}

}  // namespace matwright
