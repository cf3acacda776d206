// SPDX-License-Identifier: MIT
#include "core/picture/picture.h"

#include <algorithm>
#include <string>
#include <utility>

#include "core/outline/outline.h"

namespace matwright {

namespace {

constexpr Length hairline = Length::hundredthMillimetres(15);
constexpr Length edgeLine = Length::hundredthMillimetres(25);
constexpr Colour paperWhite{255, 255, 255};
constexpr Colour pageEdge{110, 110, 110};
constexpr Colour marginLine{150, 170, 190};
constexpr Colour matEdge{128, 116, 96};
constexpr Colour ink{60, 60, 60};

double ticks(Length length) {
    return static_cast<double>(length.ticks());
}

// Marks are laid out in a unit square and put into the middle of a box.
class MarkFrame {
  public:
    MarkFrame(const Piece& piece, double share) : m_piece(piece) {
        m_side = ticks(std::min(piece.size.width, piece.size.height)) * share;
        m_centre = {ticks(piece.place.x) + ticks(piece.size.width) / 2,
                    ticks(piece.place.y) + ticks(piece.size.height) / 2};
    }
    Vertex at(double x, double y) const {
        return {m_centre.x + (x - 0.5) * m_side, m_centre.y + (y - 0.5) * m_side};
    }
    Path line(Vertex from, Vertex to) const {
        return turned(linePath(from, to), m_piece.rotation, m_centre);
    }
    Path turnedPath(Path path) const { return turned(std::move(path), m_piece.rotation, m_centre); }
    Length side() const { return Length::roundedFromTicks(m_side); }

  private:
    const Piece& m_piece;
    double m_side = 0;
    Vertex m_centre;
};

// Two hills and a sun: a photo goes here.
std::vector<Path> photoMark(const Piece& piece) {
    const MarkFrame frame(piece, 0.36);
    Path hills;
    hills.start = frame.at(-0.1, 0.85);
    for (const auto& [x, y] : {std::pair{0.3, 0.3}, {0.55, 0.65}, {0.72, 0.45}, {1.1, 0.85}}) {
        hills.lineTo(frame.at(x, y));
    }
    hills.closed = true;
    const Vertex a = frame.at(0.72, 0.05);
    const Vertex b = frame.at(0.92, 0.25);
    const Rect sun = Rect::spanning({Length::roundedFromTicks(a.x), Length::roundedFromTicks(a.y)},
                                    {Length::roundedFromTicks(b.x), Length::roundedFromTicks(b.y)});
    return {frame.turnedPath(std::move(hills)), frame.turnedPath(ovalPath(sun))};
}

// Ruled lines to write on, at most six.
std::vector<Path> journalingMark(const Piece& piece) {
    const double width = ticks(piece.size.width);
    const double height = ticks(piece.size.height);
    const double left = ticks(piece.place.x) + width * 0.12;
    const double right = ticks(piece.place.x) + width * 0.88;
    const Vertex centre{ticks(piece.place.x) + width / 2, ticks(piece.place.y) + height / 2};
    const int lines = std::clamp(static_cast<int>(height / ticks(Length::inches(0, 3, 8))), 2, 6);
    std::vector<Path> paths;
    for (int i = 1; i <= lines; ++i) {
        const double y = ticks(piece.place.y) + height * i / (lines + 1);
        const double end = i == lines ? left + (right - left) * 0.6 : right;
        paths.push_back(turned(linePath({left, y}, {end, y}), piece.rotation, centre));
    }
    return paths;
}

// A capital T: lettering goes here.
std::vector<Path> titleMark(const Piece& piece) {
    const MarkFrame frame(piece, 0.6);
    return {frame.line(frame.at(0.1, 0.1), frame.at(0.9, 0.1)),
            frame.line(frame.at(0.5, 0.1), frame.at(0.5, 0.9)),
            frame.line(frame.at(0.35, 0.9), frame.at(0.65, 0.9))};
}

// A four-pointed star: an ornament goes here.
std::vector<Path> embellishmentMark(const Piece& piece) {
    const MarkFrame frame(piece, 0.6);
    std::vector<Vertex> corners;
    for (const auto& [x, y] : {std::pair{0.5, 0.0},
                               {0.6, 0.4},
                               {1.0, 0.5},
                               {0.6, 0.6},
                               {0.5, 1.0},
                               {0.4, 0.6},
                               {0.0, 0.5},
                               {0.4, 0.4}}) {
        corners.push_back(frame.at(x, y));
    }
    return {frame.turnedPath(polygonPath(corners))};
}

PathItem filled(std::vector<Path> paths, Colour fill) {
    return {std::move(paths), std::nullopt, fill};
}

PathItem stroked(std::vector<Path> paths, Length width, Colour colour) {
    return {std::move(paths), Stroke{width, colour, {}}, std::nullopt};
}

std::optional<PathItem> markOf(const Piece& piece, const PieceLook& look) {
    const Length shorter = std::min(piece.size.width, piece.size.height);
    const Length line = std::clamp(shorter.scaledRounded(1, 60), Length::hundredthMillimetres(20),
                                   Length::millimetres(1));
    switch (piece.kind) {
        case PieceKind::PhotoSlot:
            return filled(photoMark(piece), look.mark);
        case PieceKind::Title:
            return stroked(titleMark(piece), 2 * line, look.mark);
        case PieceKind::Journaling:
            return stroked(journalingMark(piece), line, look.mark);
        case PieceKind::Embellishment:
            return filled(embellishmentMark(piece), look.mark);
        case PieceKind::Strip:
        case PieceKind::Block:
            return std::nullopt;
    }
    return std::nullopt;
}

// The size, small, where it fits: in the lower left corner of a rectangle, centred near the bottom
// of any other shape.
std::optional<TextItem> sizeItem(const Piece& piece) {
    const std::string text = naturalSizeText(piece.printSize.value_or(piece.size));
    const bool isRectangle = std::holds_alternative<RectangleShape>(piece.shape);
    const Length inset = Length::inches(0, 1, 8);
    const Length height = Length::points(9);
    const Length room =
        isRectangle ? piece.size.width - 2 * inset : piece.size.width.scaledRounded(3, 5);
    if (std::holds_alternative<PolygonShape>(piece.shape) ||
        textWidthBound(text, height, false) > room || piece.size.height < 3 * height) {
        return std::nullopt;
    }
    const Rect box = trimBox(piece);
    const Point at =
        isRectangle ? Point{box.left() + inset, box.bottom() - inset}
                    : Point{box.x.centreRoundedDown(),
                            box.bottom() - std::max(piece.size.height.scaledRounded(1, 6), inset)};
    const Vertex centre = vertexAt(box.centreRoundedDown());
    const Path anchor = turned(linePath(vertexAt(at), vertexAt(at)), piece.rotation, centre);
    return TextItem{
        anchor.start,   height, text, isRectangle ? TextAnchor::Start : TextAnchor::Middle,
        piece.rotation, false,  ink};
}

Layer pageLayer(const PageSetup& setup) {
    Layer layer{"page", "Page", {}};
    for (const Rect& page : pages(setup)) {
        layer.items.emplace_back(
            PathItem{{rectPath(page)}, Stroke{edgeLine, pageEdge, {}}, paperWhite});
    }
    for (const Rect& inside : insideMargins(setup)) {
        layer.items.emplace_back(
            PathItem{{rectPath(inside)},
                     Stroke{hairline, marginLine, {Length::millimetres(2), Length::millimetres(2)}},
                     std::nullopt});
    }
    return layer;
}

}  // namespace

PieceLook lookOf(PieceKind kind) {
    switch (kind) {
        case PieceKind::PhotoSlot:
            return {{214, 226, 234}, {62, 92, 112}, {166, 188, 202}};
        case PieceKind::Strip:
            return {{236, 216, 200}, {134, 92, 62}, {200, 168, 142}};
        case PieceKind::Block:
            return {{242, 232, 206}, {128, 104, 48}, {206, 188, 140}};
        case PieceKind::Title:
            return {{226, 218, 236}, {96, 76, 128}, {176, 158, 200}};
        case PieceKind::Journaling:
            return {{222, 234, 214}, {78, 108, 60}, {164, 188, 146}};
        case PieceKind::Embellishment:
            return {{240, 214, 220}, {140, 72, 92}, {212, 158, 172}};
    }
    return {};
}

Colour matFill(std::size_t index) {
    return index == 0 ? Colour{250, 247, 240} : Colour{216, 206, 190};
}

std::vector<DrawingItem> pieceItems(const Piece& piece, bool withSize) {
    std::vector<DrawingItem> items;
    for (std::size_t i = piece.mats.size(); i-- > 0;) {
        items.emplace_back(
            PathItem{{matOutline(piece, i)}, Stroke{hairline, matEdge, {}}, matFill(i)});
    }
    const PieceLook look = lookOf(piece.kind);
    items.emplace_back(PathItem{{trimOutline(piece)}, Stroke{edgeLine, look.edge, {}}, look.fill});
    if (auto mark = markOf(piece, look)) {
        items.emplace_back(std::move(*mark));
    }
    if (withSize && piece.kind == PieceKind::PhotoSlot) {
        if (auto text = sizeItem(piece)) {
            items.emplace_back(std::move(*text));
        }
    }
    return items;
}

Drawing sketchPicture(const Sketch& sketch) {
    Drawing drawing;
    drawing.size = surface(sketch.page).size();
    drawing.title = sketch.name;
    drawing.layers.push_back(pageLayer(sketch.page));
    Layer pieces{"pieces", "Pieces", {}};
    for (const PieceId id : sketch.order) {
        for (DrawingItem& item : pieceItems(sketch.pieces.at(id), true)) {
            pieces.items.push_back(std::move(item));
        }
    }
    drawing.layers.push_back(std::move(pieces));
    return drawing;
}

}  // namespace matwright
