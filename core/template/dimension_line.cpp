// SPDX-License-Identifier: MIT
#include "core/template/dimension_line.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/template/pen.h"

namespace matwright {

namespace {

constexpr Length halfArrow = Length::hundredthMillimetres(45);
constexpr Length arrowLength = Length::hundredthMillimetres(180);
constexpr Length shortLine = Length::millimetres(6);  // ticks instead of arrows below this
constexpr Length shortestLine = Length::millimetres(2);
constexpr Length air = Length::hundredthMillimetres(40);      // at the ends of a figure
constexpr Length lineAir = Length::hundredthMillimetres(80);  // on both sides of a line
constexpr Length figureGap = Length::hundredthMillimetres(50);
constexpr std::int64_t figurePoints[] = {7, 6};
constexpr double inkHeight = 1.04;  // of a figure in font sizes, with its descent
constexpr double inkDescent = 0.24;
constexpr int mostPositions = 24;

Interval alongOf(Distance distance, const Rect& box) {
    return distance == Distance::Left ? box.x : box.y;
}

double alongOf(Distance distance, Vertex v) {
    return distance == Distance::Left ? v.x : v.y;
}

double acrossOf(Distance distance, Vertex v) {
    return distance == Distance::Left ? v.y : v.x;
}

// Positions on the contact in order of preference.
std::vector<Length> positions(const EdgeContact& contact, Distance distance) {
    const Length inset =
        std::min(Length::millimetres(3), contact.along.length().scaledRounded(1, 3));
    const Interval stretch = contact.along.expanded(-inset);
    const Length step = std::max(Length::hundredthMillimetres(250),
                                 stretch.length().scaledRounded(1, mostPositions));
    std::vector<Length> out;
    for (Length at = stretch.low; at <= stretch.high; at += step) {
        out.push_back(at);
    }
    if (distance == Distance::Top) {
        for (Length& at : out) {
            at = stretch.low + stretch.high - at;
        }
    }
    return out;
}

// Fractions of the line where its figure may stand, the middle first.
std::vector<Length> figureCentres(Interval line) {
    std::vector<Length> out;
    for (const int tenths : {50, 60, 40, 70, 30, 80, 20, 85, 15, 90, 10, 95, 5}) {
        out.push_back(line.low + line.length().scaledRounded(tenths, 100));
    }
    return out;
}

bool placeFigure(const Occupancy& occupancy, DimensionLine& line) {
    const Interval along{line.from, line.to};
    for (const unsigned kinds :
         {Occupancy::Everything + 0U, Occupancy::Outline | Occupancy::Mark}) {
        for (const std::int64_t points : figurePoints) {
            line.height = Length::points(points);
            const Length half =
                textWidthBound(line.figure, line.height, false).halfRoundedDown() + air;
            const Length high = line.across - figureGap;
            const Interval across{high - line.height.scaledRounded(inkHeight), high};
            for (const Length centre : figureCentres(along)) {
                const Interval width{centre - half, centre + half};
                line.figureBox = boxOf(line.distance, width, across);
                if (along.contains(width) && occupancy.isFreeOnOnePart(line.figureBox, kinds)) {
                    return true;
                }
            }
        }
    }
    return false;
}

// Whether a trim line, mat edge or guide runs so close beside the line that the two would read as
// one.
bool isBesideAnotherLine(const Occupancy& occupancy, const DimensionLine& line) {
    const Length near = Length::hundredthMillimetres(80);
    const Rect strip = boxOf(line.distance, {line.from + air, line.to - air},
                             {line.across - near, line.across + near});
    return occupancy.hasLineAlong(strip, line.distance == Distance::Left, Length::millimetres(4));
}

bool shows(const Scene& scene, const ScenePiece& piece, const DimensionLine& line) {
    const Vertex inside =
        vertexOf(line.distance, line.to + Length::hundredthMillimetres(20), line.across);
    return scene.topmostAt(inside) == &piece;
}

Path arrowhead(Distance distance, Length tip, Length across, Length length) {
    Path path{vertexOf(distance, tip, across), {}, true};
    path.lineTo(vertexOf(distance, tip + length, across - halfArrow));
    path.lineTo(vertexOf(distance, tip + length, across + halfArrow));
    return path;
}

Path endTick(Distance distance, Length end, Length across) {
    return linePath(vertexOf(distance, end, across - halfArrow),
                    vertexOf(distance, end, across + halfArrow));
}

TextItem figureItem(const DimensionLine& line) {
    const bool level = line.distance == Distance::Left;
    const Interval along = alongOf(line.distance, line.figureBox);
    const Length baseline = line.across - figureGap - line.height.scaledRounded(inkDescent);
    TextItem text;
    text.at = vertexOf(line.distance, along.centreRoundedDown(), baseline);
    text.height = line.height;
    text.text = line.figure;
    text.anchor = TextAnchor::Middle;
    text.rotation = level ? Angle() : Angle::degrees(270);
    text.colour = pen::ink;
    return text;
}

}  // namespace

Rect boxOf(Distance distance, Interval along, Interval across) {
    return distance == Distance::Left ? Rect{along, across} : Rect{across, along};
}

Vertex vertexOf(Distance distance, Length along, Length across) {
    return vertexAt(distance == Distance::Left ? Point{along, across} : Point{across, along});
}

EdgeContact contactOf(const ScenePiece& piece, Distance distance) {
    const Length edge = alongOf(distance, piece.outerBounds).low;
    const double limit = static_cast<double>(edge.ticks()) + 3;
    constexpr double infinite = std::numeric_limits<double>::infinity();
    double low = infinite;
    double high = -infinite;
    double nearest = infinite;
    double nearestAcross = 0;
    for (const Vertex& corner : piece.outerRing) {
        const double along = alongOf(distance, corner);
        const double across = acrossOf(distance, corner);
        if (along <= limit) {
            low = std::min(low, across);
            high = std::max(high, across);
        }
        if (along < nearest) {
            nearest = along;
            nearestAcross = across;
        }
    }
    if (low > high) {
        low = high = nearestAcross;  // a curve's ring stays a little inside its bounds
    }
    return {edge, {Length::roundedFromTicks(low), Length::roundedFromTicks(high)}};
}

Rect DimensionLine::lineBox() const {
    return boxOf(distance, {from, to},
                 {across - halfArrow - lineAir, across + halfArrow + lineAir});
}

std::optional<DimensionLine> findDimensionLine(const Scene& scene, const Occupancy& occupancy,
                                               const ScenePiece& piece, Distance distance,
                                               Scale scale) {
    const EdgeContact contact = contactOf(piece, distance);
    const Length from = alongOf(distance, piece.page).low;
    if (contact.edge - from < shortestLine) {
        return std::nullopt;
    }
    for (const bool mustShow : {true, false}) {
        for (const Length across : positions(contact, distance)) {
            DimensionLine line{
                distance, from, contact.edge, across, figureText(contact.edge - from, scale),
                {},       {}};
            if (shows(scene, piece, line) == mustShow &&
                occupancy.isFree(line.lineBox(), Occupancy::Mark) &&
                !isBesideAnotherLine(occupancy, line) && placeFigure(occupancy, line)) {
                return line;
            }
        }
    }
    return std::nullopt;
}

std::vector<DrawingItem> itemsOf(const DimensionLine& line) {
    std::vector<DrawingItem> items;
    const Path stem = linePath(vertexOf(line.distance, line.from, line.across),
                               vertexOf(line.distance, line.to, line.across));
    if (line.to - line.from < shortLine) {
        items.emplace_back(PathItem{{stem, endTick(line.distance, line.from, line.across),
                                     endTick(line.distance, line.to, line.across)},
                                    pen::dimension(),
                                    std::nullopt});
    } else {
        items.emplace_back(PathItem{{stem}, pen::dimension(), std::nullopt});
        items.emplace_back(PathItem{{arrowhead(line.distance, line.from, line.across, arrowLength),
                                     arrowhead(line.distance, line.to, line.across, -arrowLength)},
                                    std::nullopt,
                                    pen::measure});
    }
    items.emplace_back(figureItem(line));
    return items;
}

}  // namespace matwright
