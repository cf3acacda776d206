// SPDX-License-Identifier: MIT
#include "core/sketch/soundness.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <string_view>

#include "core/measure/length_text.h"
#include "core/sketch/utf8.h"

namespace matwright {

namespace {

std::optional<Error> fault(std::string sentence, std::string where = {}) {
    return Error{ErrorCode::Malformed, std::move(sentence), std::move(where)};
}

bool isWithin(Length value, Length low, Length high) {
    return low <= value && value <= high;
}

bool isWithinCoordinates(const Rect& box) {
    const Length limit = Length::coordinateLimit();
    return isWithin(box.left(), -limit, limit) && isWithin(box.right(), -limit, limit) &&
           isWithin(box.top(), -limit, limit) && isWithin(box.bottom(), -limit, limit);
}

// Twice the signed area of the triangle a b c. Exact: polygon corners are at most 200 in apart.
std::int64_t cross(Point a, Point b, Point c) {
    return (b.x - a.x).ticks() * (c.y - a.y).ticks() - (b.y - a.y).ticks() * (c.x - a.x).ticks();
}

int sign(std::int64_t v) {
    return (v > 0) - (v < 0);
}

bool isOnSegment(Point a, Point b, Point p) {
    return cross(a, b, p) == 0 && Rect::spanning(a, b).contains(p);
}

// Touching counts.
bool segmentsMeet(Point a, Point b, Point c, Point d) {
    const int abc = sign(cross(a, b, c));
    const int abd = sign(cross(a, b, d));
    const int cda = sign(cross(c, d, a));
    const int cdb = sign(cross(c, d, b));
    if (abc * abd < 0 && cda * cdb < 0) {
        return true;
    }
    return isOnSegment(a, b, c) || isOnSegment(a, b, d) || isOnSegment(c, d, a) ||
           isOnSegment(c, d, b);
}

// A side of a polygon and the box around it.
struct Side {
    std::size_t index;
    Rect box;
};

// Neighbours share a corner; they may not run back over each other.
bool foldsBack(const std::vector<Point>& corners) {
    const std::size_t n = corners.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Point a = corners[i];
        const Point b = corners[(i + 1) % n];
        const Point afterB = corners[(i + 2) % n];
        if (a == b || isOnSegment(a, b, afterB) || isOnSegment(b, afterB, a)) {
            return true;
        }
    }
    return false;
}

bool areNeighbours(std::size_t i, std::size_t j, std::size_t n) {
    return (i + 1) % n == j || (j + 1) % n == i;
}

// Sides are compared from left to right and only while their boxes meet, so that a file full of
// thousand-cornered polygons is read in reasonable time.
bool crossesItself(const std::vector<Point>& corners) {
    if (foldsBack(corners)) {
        return true;
    }
    const std::size_t n = corners.size();
    std::vector<Side> sides;
    sides.reserve(n);
    for (std::size_t i = 0; i < n; ++i) {
        sides.push_back({i, Rect::spanning(corners[i], corners[(i + 1) % n])});
    }
    std::ranges::sort(sides, {}, [](const Side& side) { return side.box.left(); });
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = i + 1; j < n && sides[j].box.left() <= sides[i].box.right(); ++j) {
            const std::size_t a = sides[i].index;
            const std::size_t c = sides[j].index;
            if (sides[i].box.y.intersects(sides[j].box.y) && !areNeighbours(a, c, n) &&
                segmentsMeet(corners[a], corners[(a + 1) % n], corners[c], corners[(c + 1) % n])) {
                return true;
            }
        }
    }
    return false;
}

std::optional<Error> findFaultOfPolygon(const PolygonShape& polygon, const Piece& piece,
                                        const std::string& where) {
    if (polygon.corners.size() < 3 || polygon.corners.size() > maxPolygonCorners) {
        return fault(
            fmt::format("A polygon needs 3 to {} corners; give it some.", maxPolygonCorners),
            where);
    }
    const Rect box = Rect::at({}, piece.size);
    if (!std::ranges::all_of(polygon.corners, [&](Point p) { return box.contains(p); })) {
        return fault("A polygon's corner lies outside the piece's box; move it inside.", where);
    }
    if (crossesItself(polygon.corners)) {
        return fault("The polygon's outline crosses or touches itself; pull its corners apart.",
                     where);
    }
    return std::nullopt;
}

std::optional<Error> findFaultOfMats(const Piece& piece, const std::string& where) {
    const auto isBorder = [](Length border) {
        return isWithin(border, smallestSide, largestBorder);
    };
    if (piece.mats.size() > maxMats) {
        return fault(fmt::format("A photo slot has at most {} mats.", maxMats), where);
    }
    for (const Mat& mat : piece.mats) {
        if (!isBorder(mat.border) || !isBorder(mat.bottomBorder.value_or(mat.border))) {
            return fault("A mat's border must be between 1/64 in and 20 in.", where);
        }
        if (!isValidText(mat.paper, false)) {
            return fault("A mat's paper name is too long or has characters that cannot be saved.",
                         where);
        }
    }
    return std::nullopt;
}

std::optional<Error> findFaultOfPhotoParts(const Piece& piece, const std::string& where) {
    if (piece.kind != PieceKind::PhotoSlot) {
        return piece.printSize || !piece.mats.empty()
                   ? fault("Only a photo slot has a print size or mats.", where)
                   : std::nullopt;
    }
    if (!piece.printSize) {
        return fault("A photo slot needs a print size.", where);
    }
    if (!isWithin(piece.printSize->width, smallestSide, largestSide) ||
        !isWithin(piece.printSize->height, smallestSide, largestSide)) {
        return fault("A print's sides must be between 1/64 in and 200 in.", where);
    }
    return findFaultOfMats(piece, where);
}

}  // namespace

bool isValidText(std::string_view text, bool lineBreaksAllowed) {
    if (text.size() > maxTextBytes) {
        return false;
    }
    while (!text.empty()) {
        const std::size_t length = utf8SequenceLength(text);
        if (length == 0) {
            return false;
        }
        const auto c = static_cast<unsigned char>(text.front());
        if ((c < 0x20 && (!lineBreaksAllowed || c != '\n')) || c == 0x7F) {
            return false;
        }
        text.remove_prefix(length);
    }
    return true;
}

std::optional<Error> findFault(const PageSetup& setup) {
    const auto isSide = [](Length side) {
        return isWithin(side, smallestPageSide, largestPageSide);
    };
    if (!isSide(setup.size.width) || !isSide(setup.size.height)) {
        return fault("A page's sides must be between 1 in and 100 in.");
    }
    if (!isWithin(setup.foldGap, Length(), Length::inches(10)) ||
        (!setup.doublePage && !setup.foldGap.isZero())) {
        return fault("A fold gap is 0 to 10 in, and only a double page has one.");
    }
    if (!isWithin(setup.gutter, Length(), Length::inches(10))) {
        return fault("The gutter must be between 0 and 10 in.");
    }
    const Margins& m = setup.margins;
    if (m.left.isNegative() || m.top.isNegative() || m.right.isNegative() ||
        m.bottom.isNegative() || m.left >= setup.size.width || m.right >= setup.size.width ||
        m.top >= setup.size.height || m.bottom >= setup.size.height ||
        m.left + m.right >= setup.size.width || m.top + m.bottom >= setup.size.height) {
        return fault("The margins must not be negative and must leave some of the page.");
    }
    return std::nullopt;
}

std::optional<Error> findFault(const Piece& piece) {
    if (!isValidText(piece.name, false) || !isValidText(piece.note, true) ||
        !isValidText(piece.paper, false)) {
        return fault("A name, note or paper is too long or has characters that cannot be saved.");
    }
    if (!isWithin(piece.size.width, smallestSide, largestSide) ||
        !isWithin(piece.size.height, smallestSide, largestSide)) {
        return fault("A piece's sides must be between 1/64 in and 200 in.", piece.name);
    }
    const std::string where = displayName(piece);
    const Length limit = Length::coordinateLimit();
    if (!isWithin(piece.place.x, -limit, limit) || !isWithin(piece.place.y, -limit, limit)) {
        return fault("The piece lies more than 1,000 in from the page's corner.", where);
    }
    if (auto found = findFaultOfPhotoParts(piece, where)) {
        return found;
    }
    if (!isWithinCoordinates(outermostBounds(piece))) {
        return fault("The piece lies more than 1,000 in from the page's corner.", where);
    }
    if (const auto* rounded = std::get_if<RoundedRectangleShape>(&piece.shape);
        rounded && !isWithin(rounded->radius, Length::fromTicks(1), largestSide)) {
        return fault("Rounded corners need a radius above zero, at most 200 in.", where);
    }
    if (const auto* polygon = std::get_if<PolygonShape>(&piece.shape)) {
        return findFaultOfPolygon(*polygon, piece, where);
    }
    return std::nullopt;
}

std::optional<Error> findFault(const Sketch& sketch) {
    if (!isValidText(sketch.name, false) || !isValidText(sketch.note, true)) {
        return fault(
            "The sketch's name or note is too long or has characters that cannot be saved.");
    }
    if (auto found = findFault(sketch.page)) {
        return found;
    }
    if (sketch.pieces.size() > maxPieces) {
        return fault(fmt::format("A sketch holds at most {} pieces.", maxPieces));
    }
    const std::set<PieceId> ids(sketch.order.begin(), sketch.order.end());
    if (ids.size() != sketch.order.size() || ids.size() != sketch.pieces.size()) {
        return fault("The order must list every piece exactly once.");
    }
    for (const auto& [id, piece] : sketch.pieces) {
        if (id.value == 0 || id > maxPieceId || !ids.contains(id)) {
            return fault("The order must list every piece exactly once, with ids from 1 to 1e9.");
        }
        if (auto found = findFault(piece)) {
            return found;
        }
    }
    return std::nullopt;
}

}  // namespace matwright
