// SPDX-License-Identifier: MIT
#include "core/printers/correction.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace matwright {

namespace {

constexpr Length longestMeasure = Length::inches(60);

bool isWithin(const AxisMeasure& axis) {
    return axis.factor() >= smallestCorrection && axis.factor() <= largestCorrection;
}

bool isMeasure(const AxisMeasure& axis) {
    return axis.wished.isPositive() && axis.measured.isPositive() &&
           axis.wished <= longestMeasure && axis.measured <= longestMeasure;
}

bool isDate(const std::string& date) {
    constexpr std::string_view form = "0000-00-00";
    return date.size() == form.size() && std::ranges::equal(date, form, [](char letter, char like) {
               return like == '-' ? letter == '-' : letter >= '0' && letter <= '9';
           });
}

// middle + (place - middle) * factor, rounded once: the middle may lie between two ticks.
Length scaledAbout(Length place, Length side, const AxisMeasure& axis) {
    const std::int64_t measured = axis.measured.ticks();
    const std::int64_t sum =
        side.ticks() * measured + (2 * place - side).ticks() * axis.wished.ticks();
    const std::int64_t half = sum < 0 ? -measured : measured;
    return Length::fromTicks((sum + half) / (2 * measured));
}

// How far inside the edge what is at the edge is sent; below 0 outside.
Length movedIn(Length side, const AxisMeasure& axis) {
    return scaledAbout({}, side, axis);
}

// The white strip on the paper of a printer that shrinks.
Length whiteStrip(Length side, const AxisMeasure& axis) {
    const AxisMeasure asPrinted{axis.measured, axis.wished};
    return std::max(Length(), movedIn(side, asPrinted));
}

std::string tooText(const AxisMeasure& axis) {
    const double percent = 100 * (1 / axis.factor() - 1);
    if (std::abs(percent) < 0.05) {
        return "true to size";
    }
    return fmt::format("{:.1f} % too {}", std::abs(percent), percent > 0 ? "large" : "small");
}

std::string edgeText(const EdgeEffect& effect) {
    const Length bleed = std::max(effect.bleedAcross, effect.bleedDown);
    const Length lost = std::max(effect.lostAcross, effect.lostDown);
    std::string text;
    if (bleed.isPositive()) {
        text += fmt::format(
            " Pictures up to the edge go on {:.1f} mm beyond it, so that no white "
            "edge is left.",
            bleed.toMillimetres());
    }
    if (lost.isPositive()) {
        text += fmt::format(" The last {:.1f} mm at the edges cannot be printed and stay white.",
                            lost.toMillimetres());
    }
    return text;
}

}  // namespace

Length AxisMeasure::applied(Length length) const {
    return length.scaledRounded(wished.ticks(), measured.ticks());
}

std::optional<Error> findFault(const Correction& correction) {
    if (!isMeasure(correction.across) || !isMeasure(correction.down)) {
        return Error{ErrorCode::OutOfRange,
                     "What a test sheet measures is more than 0 and at most 60 in. Type what the "
                     "ruler shows between the two marks.",
                     ""};
    }
    for (const AxisMeasure* axis : {&correction.across, &correction.down}) {
        if (!isWithin(*axis)) {
            return Error{ErrorCode::OutOfRange,
                         fmt::format("{:.3f} in where {:.3f} in were meant is too far off to be "
                                     "corrected. Look whether the printer fits pages to the paper "
                                     "(choose actual size, 100 %) and whether this paper is in it, "
                                     "then print the test sheet again.",
                                     axis->measured.toInches(), axis->wished.toInches()),
                         axis == &correction.across ? "across" : "down"};
        }
    }
    if (!isDate(correction.date)) {
        return Error{ErrorCode::BadText, "The date of a measurement is written 2026-07-14.",
                     correction.date};
    }
    return std::nullopt;
}

Result<Correction> correctionOf(Size wished, Size measured, const std::string& date) {
    Correction correction{{wished.width, measured.width}, {wished.height, measured.height}, date};
    if (std::optional<Error> fault = findFault(correction)) {
        return std::unexpected(*std::move(fault));
    }
    return correction;
}

Point corrected(Point place, Size paper, const Correction& correction) {
    return {scaledAbout(place.x, paper.width, correction.across),
            scaledAbout(place.y, paper.height, correction.down)};
}

Rect corrected(const Rect& place, Size paper, const Correction& correction) {
    const Point topLeft = corrected(place.topLeft(), paper, correction);
    const Point bottomRight = corrected(place.bottomRight(), paper, correction);
    return {{topLeft.x, bottomRight.x}, {topLeft.y, bottomRight.y}};
}

EdgeEffect edgeEffect(Size paper, const Correction& correction) {
    return {std::max(Length(), movedIn(paper.width, correction.across)),
            std::max(Length(), movedIn(paper.height, correction.down)),
            whiteStrip(paper.width, correction.across), whiteStrip(paper.height, correction.down)};
}

std::string correctionText(Size paper, bool borderless, const Correction& correction) {
    const std::string across = tooText(correction.across);
    const std::string down = tooText(correction.down);
    if (across == "true to size" && down == across) {
        return "Comes out true to size.";
    }
    const std::string text = fmt::format(
        "Comes out {} across and {} down; it is sent so that this is made up for.", across, down);
    return borderless ? text + edgeText(edgeEffect(paper, correction)) : text;
}

}  // namespace matwright
