// SPDX-License-Identifier: MIT
#include "core/carry/attempt.h"

#include <algorithm>
#include <cmath>

#include "core/carry/axis_task.h"
#include "core/carry/judgement.h"
#include "core/carry/on_page.h"
#include "core/sketch/soundness.h"

namespace matwright::carry {

namespace {

constexpr double nearlySame = 0.2;
// Of an attempt with the prints as they are and even shares, which can be undone exactly.
constexpr double goodEnough = 0.2;
constexpr std::size_t searchedPieces = 30;
constexpr Length metricStep = Length::millimetres(1);
constexpr Length inchStep = Length::inches(0, 1, 16);

// More sides in whole millimetres alone than in sixteenths alone.
bool isInMillimetres(const Sketch& sketch) {
    int metric = 0;
    for (const auto& [id, piece] : sketch.pieces) {
        for (const Length side : {piece.size.width, piece.size.height}) {
            metric += side.isMultipleOf(metricStep) ? 1 : 0;
            metric -= side.isMultipleOf(inchStep) ? 1 : 0;
        }
    }
    return metric > 0;
}

// Of the trimmers such pages are cut with; nothing where a page is measured in both or neither.
std::optional<Length> stepOfPage(Size page) {
    const auto isOn = [page](Length step) {
        return page.width.isMultipleOf(step) && page.height.isMultipleOf(step);
    };
    if (isOn(metricStep) == isOn(inchStep)) {
        return std::nullopt;
    }
    return isOn(metricStep) ? metricStep : inchStep;
}

Length ownStep(const Sketch& sketch) {
    return isInMillimetres(sketch) ? metricStep : inchStep;
}

Length newStep(const Sketch& sketch, const PageSetup& target) {
    const auto step = stepOfPage(target.size);
    return step && step != stepOfPage(sketch.page.size) ? *step : ownStep(sketch);
}

double areaInsideMargins(const PageSetup& setup) {
    double area = 0;
    for (const Rect& inside : insideMargins(setup)) {
        area += inside.size().width.toInches() * inside.size().height.toInches();
    }
    return area;
}

double scaleBetween(const PageSetup& from, const PageSetup& to) {
    // What was on a single page stays on one.
    const double pagesAdded = to.doublePage && !from.doublePage ? 0.5 : 1;
    const double scale = std::sqrt(areaInsideMargins(to) * pagesAdded / areaInsideMargins(from));
    return std::abs(std::log(scale)) <= nearlySame ? 1 : scale;
}

// Round things and ornaments keep their proportions.
bool keepsProportions(const Footprint& piece) {
    return piece.oblique || piece.piece->kind == PieceKind::Embellishment ||
           (std::holds_alternative<OvalShape>(piece.piece->shape) &&
            piece.piece->size.width == piece.piece->size.height);
}

Size scaled(Size size, double factor, Length step) {
    const auto side = [&](Length length) {
        return factor == 1 ? length : std::max(length.scaledRounded(factor).roundedTo(step), step);
    };
    return {side(size.width), side(size.height)};
}

// The piece about its middle with another size.
Piece resized(const Piece& piece, Size size) {
    if (size == piece.size) {
        return piece;
    }
    const Point middle = trimBox(piece).centreRoundedDown();
    return withBox(
        piece, Rect::at(middle - Point{size.width.halfRoundedDown(), size.height.halfRoundedDown()},
                        size));
}

std::vector<Piece> wishedPieces(const Source& source, const std::vector<PhotoChoice>& choices) {
    std::vector<Piece> wished;
    wished.reserve(source.pieces.size());
    for (const Footprint& piece : source.pieces) {
        wished.push_back(
            keepsProportions(piece) && !piece.piece->printSize
                ? resized(*piece.piece, scaled(piece.piece->size, source.scale, source.step))
                : *piece.piece);
    }
    for (std::size_t c = 0; c < source.photos.size(); ++c) {
        for (const std::size_t i : source.photos[c].members) {
            wished[i] = resized(wished[i], choices[c].trim);
            wished[i].printSize = choices[c].print;
        }
    }
    return wished;
}

Length leastLength(const Piece& piece, Length length) {
    switch (piece.kind) {
        case PieceKind::PhotoSlot:
            return std::min(length, std::max(Length::inches(1), length.scaledRounded(0.4)));
        case PieceKind::Title:
        case PieceKind::Journaling:
            return std::min(length, Length::inches(0, 1, 2));
        default:
            return std::min(length, Length::inches(0, 1, 4));
    }
}

// Strips are thin on purpose, and a line of lettering has its height.
double stretchWeight(const Piece& piece, Length length) {
    const Length other = std::max(piece.size.width, piece.size.height);
    const bool thin = length < other && length <= Length::inches(2, 1, 2);
    if (piece.kind == PieceKind::Strip && thin) {
        return 10;
    }
    return piece.kind == PieceKind::Title && thin ? 3 : 1;
}

Wish wishFor(const Footprint& before, const Piece& wished, Axis axis) {
    const Footprint after = footprint(before.id, wished);
    const Interval trim = along(after.trim, axis);
    const Interval outer = along(after.outer, axis);
    Wish wish;
    wish.length = trim.length();
    wish.lowBorder = trim.low - outer.low;
    wish.highBorder = outer.high - trim.high;
    wish.least = leastLength(wished, wish.length);
    wish.weight = stretchWeight(wished, wish.length);
    if (after.oblique) {
        wish.firmness = Wish::Firmness::Fixed;
        return wish;
    }
    wish.firmness = keepsProportions(before) ? Wish::Firmness::Firm
                    : wished.printSize       ? Wish::Firmness::Photo
                                             : Wish::Firmness::Free;
    if (wished.printSize) {
        const bool swapped = wished.rotation.toMillidegrees() % 180'000 != 0;
        wish.longest = along(*wished.printSize, swapped ? across(axis) : axis);
    }
    return wish;
}

std::vector<Interval> settledAlong(const Source& source, const std::vector<Piece>& wished,
                                   Axis axis, Springs::Shares shares) {
    AxisTask task{axis,
                  source.pieces,
                  source.relations,
                  source.sketch.page,
                  source.to,
                  {},
                  source.step,
                  shares,
                  source.isNewMeasure ? source.step : Length()};
    for (std::size_t i = 0; i < wished.size(); ++i) {
        task.wishes.push_back(wishFor(source.pieces[i], wished[i], axis));
    }
    return settled(task);
}

Piece placed(const Piece& wished, const Rect& trim) {
    Piece piece = wished;
    if (!wished.rotation.isQuarterTurn()) {
        const Rect now = footprint({}, wished).trim;
        piece.place = piece.place + (trim.topLeft() - now.topLeft());
        return piece;
    }
    if (wished.rotation.toMillidegrees() % 180'000 == 0) {
        return withBox(piece, trim);
    }
    const Size size = trim.size().turned();
    const Point place = {(trim.left() + trim.right() - size.width).halfRoundedDown(),
                         (trim.top() + trim.bottom() - size.height).halfRoundedDown()};
    return withBox(piece, Rect::at(place, size));
}

}  // namespace

Source::Source(const Sketch& carried, const PageSetup& target, std::optional<Length> trimmerStep)
    : sketch(carried),
      to(target),
      pieces(footprints(carried)),
      relations(pieces.size() > mostRelatedPieces ? std::vector<Relation>{}
                                                  : relationsOf(pieces, carried.page)),
      scale(scaleBetween(carried.page, target)),
      step(trimmerStep.value_or(newStep(carried, target))),
      isNewMeasure(step != ownStep(carried)),
      photos(photoClasses(pieces, isNewMeasure ? std::optional(step) : std::nullopt)) {}

Attempt attempt(const Source& source, const std::vector<PhotoChoice>& choices,
                Springs::Shares shares) {
    const std::vector<Piece> wished = wishedPieces(source, choices);
    const std::vector<Interval> x = settledAlong(source, wished, Axis::X, shares);
    const std::vector<Interval> y = settledAlong(source, wished, Axis::Y, shares);
    Attempt result;
    result.sketch = source.sketch;
    result.sketch.page = source.to;
    for (std::size_t i = 0; i < wished.size(); ++i) {
        const bool wasOn = surface(source.sketch.page).contains(source.pieces[i].outer);
        const Piece piece = withinPrint(placed(wished[i], {x[i], y[i]}));
        result.sketch.pieces.at(source.pieces[i].id) =
            wasOn ? broughtOnPage(piece, surface(source.to), source.step) : piece;
    }
    judge(source, result);
    return result;
}

Attempt scaledAttempt(const Source& source) {
    std::vector<PhotoChoice> nearest;
    nearest.reserve(source.photos.size());
    for (const PhotoClass& photos : source.photos) {
        nearest.push_back(photoChoices(photos, source.scale, source.step).front());
    }
    const std::vector<Piece> wished = wishedPieces(source, nearest);
    const Rect from = surface(source.sketch.page);
    const Rect to = surface(source.to);
    Attempt result;
    result.sketch = source.sketch;
    result.sketch.page = source.to;
    for (std::size_t i = 0; i < wished.size(); ++i) {
        const Footprint& before = source.pieces[i];
        Piece piece = before.piece->printSize || keepsProportions(before)
                          ? wished[i]
                          : resized(wished[i], scaled(wished[i].size, source.scale, source.step));
        const auto shift = [&](Axis axis) {
            const Length middle = along(trimBox(piece), axis).centreRoundedDown();
            return middle.scaledRounded(along(to.size(), axis).ticks(),
                                        along(from.size(), axis).ticks()) -
                   middle;
        };
        piece.place = piece.place + Point{shift(Axis::X), shift(Axis::Y)};
        const bool wasOn = from.contains(before.outer);
        result.sketch.pieces.at(before.id) =
            withinPrint(wasOn ? broughtOnPage(piece, to, source.step) : piece);
    }
    return result;
}

Attempt bestAttempt(const Source& source) {
    std::vector<std::vector<PhotoChoice>> choices;
    std::vector<PhotoChoice> chosen;
    std::vector<PhotoChoice> same;
    for (const PhotoClass& photos : source.photos) {
        choices.push_back(photoChoices(photos, source.scale, source.step));
        chosen.push_back(choices.back().front());
        same.push_back({photos.print, trimFrom(photos, photos.print, source.step)});
    }
    if (source.scale == 1) {
        Attempt even = attempt(source, same, Springs::Shares::Even);
        if (even.lost.empty() && even.cost < goodEnough) {
            return even;
        }
    }
    Attempt best = attempt(source, same);
    const auto keepBetter = [&](const std::vector<PhotoChoice>& other) {
        if (Attempt tried = attempt(source, other); tried.cost < best.cost) {
            best = std::move(tried);
            return true;
        }
        return false;
    };
    if (chosen == same || !keepBetter(chosen)) {
        chosen = same;
    }
    const int rounds = source.pieces.size() > searchedPieces ? 0 : 2;
    for (int round = 0; round < rounds; ++round) {
        for (std::size_t c = 0; c < choices.size(); ++c) {
            for (const PhotoChoice& choice : choices[c]) {
                std::vector<PhotoChoice> other = chosen;
                other[c] = choice;
                if (other != chosen && keepBetter(other)) {
                    chosen = std::move(other);
                }
            }
        }
    }
    return best;
}

}  // namespace matwright::carry
