// SPDX-License-Identifier: MIT
#include "core/outline/layering.h"

#include <algorithm>
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/box.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/index/rtree.hpp>
#include <iterator>
#include <optional>
#include <utility>

#include "core/outline/outline.h"

namespace matwright {

namespace {

namespace bg = boost::geometry;
using BoostBox = bg::model::box<bg::model::d2::point_xy<double>>;
using Entry = std::pair<BoostBox, std::size_t>;  // a box and the place in the order
using Tree = bg::index::rtree<Entry, bg::index::quadratic<16>>;

struct Layer {
    PieceId id;
    Rect bounds;  // of the outermost outline
    Rect reach;   // of the outermost and print outlines
    bool isUprightBox;
    Region trim;
    Region outermost;
};

BoostBox boostBox(const Rect& rect) {
    const auto corner = [](Point p) {
        return bg::model::d2::point_xy<double>(static_cast<double>(p.x.ticks()),
                                               static_cast<double>(p.y.ticks()));
    };
    return {corner(rect.topLeft()), corner(rect.bottomRight())};
}

Layer layerOf(PieceId id, const Piece& piece) {
    const Path outermost = outermostOutline(piece);
    const Rect bounds = boundsOf(outermost);
    return {id,
            bounds,
            bounds.united(boundsOf(printOutline(piece))),
            std::holds_alternative<RectangleShape>(piece.shape) && piece.rotation.isQuarterTurn(),
            regionOf(trimOutline(piece)),
            regionOf(outermost)};
}

double sharedBoxSquareInches(const Rect& a, const Rect& b) {
    const Length width = std::min(a.right(), b.right()) - std::max(a.left(), b.left());
    const Length height = std::min(a.bottom(), b.bottom()) - std::max(a.top(), b.top());
    return std::max(0.0, width.toInches()) * std::max(0.0, height.toInches());
}

double sharedSquareInches(const Layer& a, const Layer& b) {
    const double most = sharedBoxSquareInches(a.bounds, b.bounds);
    if (most <= smallestOverlap || (a.isUprightBox && b.isUprightBox)) {
        return most;
    }
    return areaSquareInches(intersected(a.outermost, b.outermost));
}

}  // namespace

struct Layering::Index {
    std::vector<Layer> layers;              // bottom to top
    std::map<PieceId, std::size_t> places;  // into `layers`
    Tree tree;

    const Layer* find(PieceId id) const {
        const auto it = places.find(id);
        return it == places.end() ? nullptr : &layers[it->second];
    }

    // Places above `place` whose bounds meet `box`, bottom to top.
    std::vector<std::size_t> above(std::size_t place, const Rect& box) const {
        std::vector<std::size_t> found;
        for (auto it = tree.qbegin(bg::index::intersects(boostBox(box))); it != tree.qend(); ++it) {
            if (it->second > place) {
                found.push_back(it->second);
            }
        }
        std::ranges::sort(found);
        return found;
    }
};

Layering::Layering(const Sketch& sketch) : m_index(std::make_unique<Index>()) {
    std::vector<Entry> entries;
    for (const PieceId id : sketch.order) {
        const Piece* piece = find(sketch, id);
        if (!piece) {
            continue;
        }
        const std::size_t place = m_index->layers.size();
        m_index->layers.push_back(layerOf(id, *piece));
        m_index->places.emplace(id, place);
        entries.emplace_back(boostBox(m_index->layers.back().bounds), place);
    }
    m_index->tree = Tree(entries);
}

Layering::~Layering() = default;
Layering::Layering(Layering&&) noexcept = default;
Layering& Layering::operator=(Layering&&) noexcept = default;

std::vector<PieceId> Layering::nearAbove(PieceId id) const {
    std::vector<PieceId> ids;
    if (const Layer* layer = m_index->find(id)) {
        for (const std::size_t place : m_index->above(m_index->places.at(id), layer->reach)) {
            ids.push_back(m_index->layers[place].id);
        }
    }
    return ids;
}

Rect Layering::bounds(PieceId id) const {
    const Layer* layer = m_index->find(id);
    return layer ? layer->bounds : Rect{};
}

const Region& Layering::trimRegion(PieceId id) const {
    static const Region nothing;
    const Layer* layer = m_index->find(id);
    return layer ? layer->trim : nothing;
}

const Region& Layering::outermostRegion(PieceId id) const {
    static const Region nothing;
    const Layer* layer = m_index->find(id);
    return layer ? layer->outermost : nothing;
}

Region Layering::coverAbove(PieceId id) const {
    std::vector<Region> covers;
    for (const PieceId above : nearAbove(id)) {
        covers.push_back(outermostRegion(above));
    }
    return united(covers);
}

double Layering::hiddenShare(PieceId id) const {
    const double whole = areaSquareInches(trimRegion(id));
    if (whole <= 0) {
        return 0;
    }
    Region seen = trimRegion(id);
    for (const PieceId above : nearAbove(id)) {
        if (!bounds(id).interiorIntersects(bounds(above))) {
            continue;
        }
        seen = subtracted(seen, outermostRegion(above));
        if (seen.isEmpty()) {
            return 1;
        }
    }
    return std::clamp(1 - areaSquareInches(seen) / whole, 0.0, 1.0);
}

std::vector<Overlap> Layering::overlaps() const {
    std::vector<Overlap> found;
    for (std::size_t place = 0; place < m_index->layers.size(); ++place) {
        const Layer& below = m_index->layers[place];
        for (const std::size_t other : m_index->above(place, below.bounds)) {
            const Layer& above = m_index->layers[other];
            const double shared = sharedSquareInches(below, above);
            if (shared > smallestOverlap) {
                found.push_back({below.id, above.id, shared});
            }
        }
    }
    return found;
}

Region coverAbove(const Sketch& sketch, PieceId id) {
    return Layering(sketch).coverAbove(id);
}

double hiddenShare(const Sketch& sketch, PieceId id) {
    return Layering(sketch).hiddenShare(id);
}

std::vector<Overlap> overlaps(const Sketch& sketch) {
    return Layering(sketch).overlaps();
}

}  // namespace matwright
