// SPDX-License-Identifier: MIT
#include "tests/support/carry_laws.h"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <set>

#include "core/measure/catalogue.h"
#include "core/outline/layering.h"
#include "core/outline/outline.h"
#include "core/sketch/soundness.h"

namespace matwright::test {

namespace {

// A relation of one sketch: where it is measured, and how a sentence about it has to read.
struct Found {
    std::string what;
    std::vector<std::size_t> numbers;
    std::vector<std::string> words;  // one of these has to be in the sentence
    bool anyNumber = false;          // a sentence about one of the pieces is enough
    std::function<bool(const Sketch&)> holds;
};

Rect outlineBounds(const Piece& piece) {
    return boundsOf(outermostOutline(piece));
}

class Measure {
  public:
    explicit Measure(const Sketch& sketch) : m_sketch(sketch) {}

    const Piece& piece(std::size_t number) const {
        return m_sketch.pieces.at(m_sketch.order[number - 1]);
    }
    bool isStraight(std::size_t number) const { return piece(number).rotation.isQuarterTurn(); }
    Rect outer(std::size_t number) const { return outlineBounds(piece(number)); }
    Rect trim(std::size_t number) const {
        return isStraight(number) ? trimBounds(piece(number)) : outer(number);
    }
    bool isOn(std::size_t number) const { return outer(number).intersects(surface(m_sketch.page)); }
    const PageSetup& page() const { return m_sketch.page; }
    std::size_t count() const { return m_sketch.order.size(); }

  private:
    const Sketch& m_sketch;
};

using Part = Interval Rect::*;
constexpr Part parts[] = {&Rect::x, &Rect::y};

Length end(Interval interval, bool high) {
    return high ? interval.high : interval.low;
}
Length doubledMiddle(Interval interval) {
    return interval.low + interval.high;
}
Part other(Part part) {
    return part == &Rect::x ? &Rect::y : &Rect::x;
}
Rect boxOf(const Measure& measure, std::size_t n, bool outermost) {
    return outermost ? measure.outer(n) : measure.trim(n);
}
bool areFacing(const Measure& m, std::size_t a, std::size_t b, Part part) {
    return (m.outer(a).*other(part)).interiorIntersects(m.outer(b).*other(part));
}
Length gapBetween(const Measure& m, std::size_t a, std::size_t b, Part part) {
    return (m.outer(b).*part).low - (m.outer(a).*part).high;
}

// b is the next piece behind a.
bool areNeighbours(const Measure& m, std::size_t a, std::size_t b, Part part) {
    if (a == b || !m.isOn(a) || !m.isOn(b) || !m.isStraight(a) || !m.isStraight(b) ||
        gapBetween(m, a, b, part).isNegative() || !areFacing(m, a, b, part)) {
        return false;
    }
    for (std::size_t c = 1; c <= m.count(); ++c) {
        if (c != a && c != b && m.isOn(c) && m.isStraight(c) && areFacing(m, a, c, part) &&
            areFacing(m, b, c, part) && !gapBetween(m, a, c, part).isNegative() &&
            !gapBetween(m, c, b, part).isNegative()) {
            return false;
        }
    }
    return true;
}

void findOfOne(const Measure& m, std::size_t n, std::vector<Found>& found) {
    for (const Part part : parts) {
        for (const bool high : {false, true}) {
            for (const bool outermost : {true, false}) {
                const Length at = end(boxOf(m, n, outermost).*part, high);
                const auto edges = pages(m.page());
                const auto insides = insideMargins(m.page());
                for (std::size_t p = 0; p < edges.size(); ++p) {
                    const bool outerSide = part == &Rect::y || high == (p == 1);
                    const bool wasDouble = m.page().doublePage;
                    const auto isAt = [=](const std::vector<Rect>& areas, const Sketch& s) {
                        const Measure now(s);
                        // Squeezed onto one page, the outer sides of two are its sides.
                        const bool squeezed = wasDouble && areas.size() == 1;
                        return (!squeezed || outerSide) &&
                               end(boxOf(now, n, outermost).*part, high) ==
                                   end(areas[squeezed ? 0 : p].*part, high);
                    };
                    if (at == end(edges[p].*part, high)) {
                        found.push_back(
                            {"page edge", {n}, {"edge of the"}, false, [=](const Sketch& s) {
                                 return isAt(pages(s.page), s);
                             }});
                    } else if (at == end(insides[p].*part, high)) {
                        found.push_back({"margin", {n}, {"margin"}, false, [=](const Sketch& s) {
                                             return isAt(insideMargins(s.page), s);
                                         }});
                    }
                }
            }
        }
        // From top to bottom facing pages are one.
        const auto pageCount = part == &Rect::x ? pages(m.page()).size() : 1;
        for (std::size_t p = 0; p < pageCount; ++p) {
            const auto isCentred = [=](const Sketch& s) {
                const auto all = pages(s.page);
                return p < all.size() &&
                       abs(doubledMiddle(Measure(s).trim(n).*part) - doubledMiddle(all[p].*part))
                               .ticks() <= 2;
            };
            if (abs(doubledMiddle(m.trim(n).*part) - doubledMiddle(pages(m.page())[p].*part))
                    .ticks() <= 2) {
                found.push_back({"centred on the page", {n}, {"middle"}, false, isCentred});
            }
        }
    }
}

void findOfTwo(const Measure& m, std::size_t a, std::size_t b, std::vector<Found>& found) {
    for (const Part part : parts) {
        for (const bool outermost : {true, false}) {
            for (const bool high : {false, true}) {
                const auto inLine = [=](const Sketch& s) {
                    const Measure now(s);
                    return end(boxOf(now, a, outermost).*part, high) ==
                           end(boxOf(now, b, outermost).*part, high);
                };
                if (a < b && m.isStraight(a) && m.isStraight(b) &&
                    end(boxOf(m, a, outermost).*part, high) ==
                        end(boxOf(m, b, outermost).*part, high)) {
                    found.push_back({"in line", {a, b}, {"in line"}, false, inLine});
                }
            }
        }
        if (a < b &&
            abs(doubledMiddle(m.trim(a).*part) - doubledMiddle(m.trim(b).*part)).isZero()) {
            found.push_back(
                {"centred together", {a, b}, {"in line", "middle"}, true, [=](const Sketch& s) {
                     const Measure now(s);
                     // Both may be a tick off the middle they share.
                     return abs(doubledMiddle(now.trim(a).*part) - doubledMiddle(now.trim(b).*part))
                                .ticks() <= 4;
                 }});
        }
        if (!areNeighbours(m, a, b, part)) {
            continue;
        }
        const Length gap = gapBetween(m, a, b, part);
        if (gap == m.page().gutter || gap.isZero()) {
            const bool flush = gap.isZero();
            found.push_back({flush ? "flush" : "gutter",
                             {a, b},
                             {flush ? "touch" : "gutter"},
                             false,
                             [=](const Sketch& s) {
                                 return gapBetween(Measure(s), a, b, part) ==
                                        (flush ? Length() : s.page.gutter);
                             }});
            continue;
        }
        for (std::size_t c = 1; c <= m.count(); ++c) {
            if (areNeighbours(m, b, c, part) && gapBetween(m, b, c, part) == gap) {
                found.push_back({"equal gaps", {a, b, c}, {"gaps"}, false, [=](const Sketch& s) {
                                     const Measure now(s);
                                     return abs(gapBetween(now, a, b, part) -
                                                gapBetween(now, b, c, part))
                                                .ticks() <= 2;
                                 }});
            }
        }
    }
}

std::vector<Found> relationsIn(const Sketch& sketch) {
    const Measure m(sketch);
    std::vector<Found> found;
    for (std::size_t a = 1; a <= m.count(); ++a) {
        if (!m.isOn(a)) {
            continue;
        }
        findOfOne(m, a, found);
        for (std::size_t b = 1; b <= m.count(); ++b) {
            if (a != b && m.isOn(b)) {
                findOfTwo(m, a, b, found);
            }
        }
    }
    return found;
}

// The pieces a sentence names: "3 · photo …", or the list behind "pieces".
std::set<std::size_t> numbersIn(const std::string& sentence) {
    std::set<std::size_t> numbers;
    std::size_t at = sentence.find("ieces ");
    const bool list = at != std::string::npos && sentence.find("\u00B7") > at;
    at = list ? at + 6 : 0;
    while (at < sentence.size() && std::isdigit(static_cast<unsigned char>(sentence[at]))) {
        std::size_t length = 0;
        numbers.insert(std::stoul(sentence.substr(at), &length));
        at += length;
        if (!list) {
            break;
        }
        for (const std::string_view between : {", ", " and "}) {
            if (sentence.compare(at, between.size(), between) == 0) {
                at += between.size();
                break;
            }
        }
    }
    return numbers;
}

bool isTold(const Found& found, const std::vector<std::string>& sentences) {
    return std::ranges::any_of(sentences, [&](const std::string& sentence) {
        if (std::ranges::none_of(
                found.words, [&](const std::string& word) { return sentence.contains(word); })) {
            return false;
        }
        const auto numbers = numbersIn(sentence);
        const auto named = [&](std::size_t n) { return numbers.contains(n); };
        return found.anyNumber ? std::ranges::any_of(found.numbers, named)
                               : std::ranges::all_of(found.numbers, named);
    });
}

std::set<std::pair<PieceId, PieceId>> photoOverlaps(const Sketch& sketch) {
    std::set<std::pair<PieceId, PieceId>> found;
    for (const Overlap& overlap : Layering(sketch).overlaps()) {
        if (sketch.pieces.at(overlap.below).printSize &&
            sketch.pieces.at(overlap.above).printSize) {
            found.emplace(overlap.below, overlap.above);
        }
    }
    return found;
}

class Laws {
  public:
    Laws(const Sketch& before, const PageSetup& target, const CarriedOver& carried)
        : m_before(before), m_target(target), m_after(carried.sketch), m_told(carried.gaveWay) {}

    std::vector<std::string> broken() {
        if (const auto fault = findFault(m_after)) {
            return {"not sound: " + fault->text()};
        }
        if (m_before.page == m_target) {
            return m_after == m_before && m_told.empty()
                       ? std::vector<std::string>{}
                       : std::vector<std::string>{"the same page changed something"};
        }
        if (m_after.page != m_target || m_after.order != m_before.order ||
            m_after.name != m_before.name || m_after.note != m_before.note) {
            add("page, order or texts are not as wished");
        }
        for (std::size_t n = 1; n <= m_before.order.size(); ++n) {
            checkPiece(n);
        }
        for (const Found& found : relationsIn(m_before)) {
            if (!found.holds(m_after) && !isTold(found, m_told)) {
                add(fmt::format("{} of {} lost silently", found.what,
                                fmt::join(found.numbers, ", ")));
            }
        }
        const auto overlappedBefore = photoOverlaps(m_before);
        for (const auto& [below, above] : photoOverlaps(m_after)) {
            const std::size_t a = pieceNumber(m_before, below);
            const std::size_t b = pieceNumber(m_before, above);
            if (!overlappedBefore.contains({below, above}) &&
                !isTold({"overlap", {a, b}, {"overlap"}, false, {}}, m_told)) {
                add(fmt::format("photos {} and {} overlap silently", a, b));
            }
        }
        return std::move(m_broken);
    }

  private:
    void add(std::string sentence) { m_broken.push_back(std::move(sentence)); }

    void checkPiece(std::size_t n) {
        const Piece& was = m_before.pieces.at(m_before.order[n - 1]);
        const Piece& now = m_after.pieces.at(m_before.order[n - 1]);
        if (was.kind != now.kind || was.name != now.name || was.note != now.note ||
            was.paper != now.paper || was.locked != now.locked || was.mats != now.mats ||
            was.rotation != now.rotation) {
            add(fmt::format("piece {} is another", n));
        }
        if (was.shape.index() != now.shape.index() &&
            !isTold({"shape", {n}, {"shape"}, false, {}}, m_told)) {
            add(fmt::format("piece {} lost its shape silently", n));
        }
        if (surface(m_before.page).contains(outlineBounds(was)) &&
            !surface(m_target).contains(outlineBounds(now))) {
            add(fmt::format("piece {} left the page", n));
        }
        if (!now.printSize) {
            return;
        }
        if (!printSizeOf(*now.printSize) &&
            (now.printSize != was.printSize ||
             !isTold({"print", {n}, {"no usual size"}, false, {}}, m_told))) {
            add(fmt::format("piece {} has a print that does not exist", n));
        }
        if (now.printSize != was.printSize &&
            !isTold({"print", {n}, {"printed"}, false, {}}, m_told)) {
            add(fmt::format("piece {} got another print silently", n));
        }
        if (!now.printSize->contains(now.size)) {
            add(fmt::format("the trim of piece {} is larger than its print", n));
        }
        if (now.printSize == was.printSize && now.size != was.size &&
            !isTold({"trim", {n}, {"trimmed"}, false, {}}, m_told)) {
            add(fmt::format("piece {} got another trim silently", n));
        }
    }

    const Sketch& m_before;
    const PageSetup& m_target;
    const Sketch& m_after;
    const std::vector<std::string>& m_told;
    std::vector<std::string> m_broken;
};

}  // namespace

std::vector<std::string> brokenCarryLaws(const Sketch& before, const PageSetup& target,
                                         const CarriedOver& carried) {
    return Laws(before, target, carried).broken();
}

std::size_t countedRelations(const Sketch& sketch) {
    return relationsIn(sketch).size();
}

}  // namespace matwright::test
