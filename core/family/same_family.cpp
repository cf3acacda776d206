// SPDX-License-Identifier: MIT
#include <algorithm>
#include <optional>
#include <utility>

#include "core/family/family.h"

namespace matwright {

namespace {

// One of the eight ways a page can lie: first a quarter turn clockwise or none, then mirrors.
struct Way {
    bool quarter;
    bool leftRight;
    bool topBottom;
};

Point turnedPoint(Point p, Way way) {
    if (way.quarter) {
        p = {-p.y, p.x};
    }
    return {way.leftRight ? -p.x : p.x, way.topBottom ? -p.y : p.y};
}

Size turnedSize(Size size, Way way) {
    return way.quarter ? size.turned() : size;
}

// As turned() does it: a mirror turns an angle round, two cancel out, and a quarter turn turns the
// box instead.
FamilyPiece turnedFamilyPiece(const FamilyPiece& piece, Way way) {
    FamilyPiece result = piece;
    result.print = turnedSize(piece.print, way);
    result.size = turnedSize(piece.size, way);
    result.middle = turnedPoint(piece.middle, way);
    result.rotation = way.leftRight != way.topBottom ? -piece.rotation : piece.rotation;
    for (Point& corner : result.corners) {
        corner = turnedPoint(corner, way);
    }
    return result;
}

bool areNear(Length a, Length b, Length tolerance) {
    return abs(a - b) <= tolerance;
}

bool areNear(Angle a, Angle b) {
    const std::int32_t apart = (a - b).toMillidegrees();
    const std::int32_t tolerance = familyAngleTolerance.toMillidegrees();
    return apart <= tolerance || apart >= 360'000 - tolerance;
}

bool areNear(Point a, Point b) {
    return areNear(a.x, b.x, 2 * familyPlaceTolerance) &&
           areNear(a.y, b.y, 2 * familyPlaceTolerance);
}

// Polygons may begin at any corner and run either way round.
bool areSamePolygons(const std::vector<Point>& a, const std::vector<Point>& b) {
    const std::size_t n = a.size();
    if (n != b.size()) {
        return false;
    }
    for (std::size_t start = 0; start < std::max<std::size_t>(n, 1); ++start) {
        bool forward = true;
        bool backward = true;
        for (std::size_t i = 0; i < n && (forward || backward); ++i) {
            forward = forward && areNear(a[i], b[(start + i) % n]);
            backward = backward && areNear(a[i], b[(start + n - i) % n]);
        }
        if (forward || backward) {
            return true;
        }
    }
    return false;
}

bool mayBeSame(const FamilyPiece& a, const FamilyPiece& b) {
    return a.kind == b.kind && a.shape == b.shape && a.mats == b.mats && a.print == b.print &&
           areNear(a.middle, b.middle) &&
           areNear(a.size.width, b.size.width, familySizeTolerance) &&
           areNear(a.size.height, b.size.height, familySizeTolerance) &&
           areNear(a.rotation, b.rotation) && areSamePolygons(a.corners, b.corners);
}

// A partner in b for each piece of a, by augmenting paths (the usual bipartite matching).
class Pairing {
  public:
    explicit Pairing(std::vector<std::vector<std::size_t>> candidates, std::size_t others)
        : m_candidates(std::move(candidates)), m_partner(others), m_seen(others) {}

    bool isPerfect() {
        for (std::size_t i = 0; i < m_candidates.size(); ++i) {
            m_seen.assign(m_seen.size(), false);
            if (!findPartner(i)) {
                return false;
            }
        }
        return true;
    }

  private:
    bool findPartner(std::size_t i) {
        for (const std::size_t j : m_candidates[i]) {
            if (!m_seen[j]) {
                m_seen[j] = true;
                if (!m_partner[j] || findPartner(*m_partner[j])) {
                    m_partner[j] = i;
                    return true;
                }
            }
        }
        return false;
    }

    std::vector<std::vector<std::size_t>> m_candidates;
    std::vector<std::optional<std::size_t>> m_partner;
    std::vector<bool> m_seen;
};

// `b` comes sorted by the x of its middles.
bool areSameThisWay(const FamilyTraits& a, const std::vector<const FamilyPiece*>& b, Way way) {
    std::vector<std::vector<std::size_t>> candidates;
    candidates.reserve(a.pieces.size());
    for (const FamilyPiece& original : a.pieces) {
        const FamilyPiece piece = turnedFamilyPiece(original, way);
        const Length reach = 2 * familyPlaceTolerance;
        auto& mine = candidates.emplace_back();
        auto it = std::ranges::lower_bound(b, piece.middle.x - reach, {},
                                           [](const FamilyPiece* p) { return p->middle.x; });
        for (; it != b.end() && (*it)->middle.x <= piece.middle.x + reach; ++it) {
            if (mayBeSame(piece, **it)) {
                mine.push_back(static_cast<std::size_t>(it - b.begin()));
            }
        }
        if (mine.empty()) {
            return false;
        }
    }
    return Pairing(std::move(candidates), b.size()).isPerfect();
}

}  // namespace

bool isSameFamily(const FamilyTraits& a, const FamilyTraits& b) {
    if (a.doublePage != b.doublePage || a.pieces.size() != b.pieces.size()) {
        return false;
    }
    std::vector<const FamilyPiece*> others;
    others.reserve(b.pieces.size());
    for (const FamilyPiece& piece : b.pieces) {
        others.push_back(&piece);
    }
    std::ranges::sort(others, {}, [](const FamilyPiece* p) { return p->middle.x; });
    for (const bool quarter : {false, true}) {
        if ((quarter && a.doublePage) || turnedSize(a.page, {quarter, false, false}) != b.page) {
            continue;
        }
        for (const bool leftRight : {false, true}) {
            for (const bool topBottom : {false, true}) {
                if (areSameThisWay(a, others, {quarter, leftRight, topBottom})) {
                    return true;
                }
            }
        }
    }
    return false;
}

bool isSameFamily(const Sketch& a, const Sketch& b) {
    return isSameFamily(familyTraits(a), familyTraits(b));
}

}  // namespace matwright
