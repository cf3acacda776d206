// SPDX-License-Identifier: MIT
#include "core/contactsheet/scaled_picture.h"

#include <algorithm>

#include "core/measure/ticks.h"
#include "core/outline/path.h"
#include "core/picture/picture.h"

namespace matwright {

namespace {

constexpr Length thinnestLine = Length::hundredthMillimetres(10);
constexpr Length smallestText = Length::points(4);

Rect inkOf(const Drawing& picture) {
    Rect ink = Rect::at({}, picture.size);
    for (const Layer& layer : picture.layers) {
        for (const DrawingItem& item : layer.items) {
            const auto* shape = std::get_if<PathItem>(&item);
            for (const Path& path : shape != nullptr ? shape->paths : std::vector<Path>()) {
                ink = ink.united(boundsOf(path));
            }
        }
    }
    return ink;
}

// Half a line lies outside the path it follows.
Rect withoutHalfALine(const Rect& room) {
    return room.expanded(-thinnestLine);
}

class Scaling {
  public:
    Scaling(const Rect& from, const Rect& to)
        : m_factor(std::min(ratio(to.size().width, from.size().width),
                            ratio(to.size().height, from.size().height))) {
        m_offset = {centre(to.x) - centre(from.x) * m_factor,
                    ticksOf(to.bottom()) - ticksOf(from.bottom()) * m_factor};
    }

    Vertex operator()(Vertex v) const {
        return {v.x * m_factor + m_offset.x, v.y * m_factor + m_offset.y};
    }
    Path operator()(Path path) const {
        path.start = (*this)(path.start);
        for (PathSegment& segment : path.segments) {
            segment = {segment.curved, (*this)(segment.control1), (*this)(segment.control2),
                       (*this)(segment.end)};
        }
        return path;
    }
    Length operator()(Length length) const { return length.scaledRounded(m_factor); }

  private:
    static double centre(Interval span) { return (ticksOf(span.low) + ticksOf(span.high)) / 2; }

    double m_factor;
    Vertex m_offset;
};

PathItem scaledShape(const PathItem& shape, const Scaling& scaling) {
    PathItem scaled = shape;
    for (Path& path : scaled.paths) {
        path = scaling(std::move(path));
    }
    if (scaled.stroke) {
        scaled.stroke->width = std::max(scaling(scaled.stroke->width), thinnestLine);
        for (Length& dash : scaled.stroke->dash) {
            dash = std::max(scaling(dash), 2 * thinnestLine);
        }
    }
    return scaled;
}

}  // namespace

std::vector<DrawingItem> pictureIn(const Rect& room, const Sketch& sketch) {
    const Drawing picture = sketchPicture(sketch);
    const Scaling scaling(inkOf(picture), withoutHalfALine(room));
    std::vector<DrawingItem> items;
    for (const Layer& layer : picture.layers) {
        for (const DrawingItem& item : layer.items) {
            if (const auto* shape = std::get_if<PathItem>(&item)) {
                items.emplace_back(scaledShape(*shape, scaling));
                continue;
            }
            TextItem text = std::get<TextItem>(item);
            text.at = scaling(text.at);
            text.height = scaling(text.height);
            if (text.height >= smallestText) {
                items.emplace_back(std::move(text));
            }
        }
    }
    return items;
}

}  // namespace matwright
