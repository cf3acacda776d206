// SPDX-License-Identifier: MIT
#include "core/carry/carry_over.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/carry/attempt.h"
#include "core/carry/gave_way.h"
#include "core/carry/judgement.h"
#include "core/carry/on_page.h"
#include "core/measure/catalogue.h"
#include "core/measure/length_text.h"
#include "core/sketch/soundness.h"

namespace matwright {

namespace {

using carry::Attempt;
using carry::Source;

// What cannot be saved as it came out (a polygon squeezed until it touches itself, a place beyond
// the coordinates) goes back to what it was, or becomes a rectangle.
void makeSound(const Source& source, Sketch& sketch) {
    for (const carry::Footprint& before : source.pieces) {
        Piece& piece = sketch.pieces.at(before.id);
        if (!findFault(piece)) {
            continue;
        }
        const bool wasOn = surface(source.sketch.page).contains(before.outer);
        const Piece again = carry::withinPrint(
            wasOn ? carry::broughtOnPage(*before.piece, surface(sketch.page), source.step)
                  : *before.piece);
        if (!findFault(again)) {
            piece = again;
        } else {
            piece.shape = RectangleShape{};
        }
    }
}

CarriedOver carriedCrowd(const Source& source) {
    Attempt scaled = carry::scaledAttempt(source);
    makeSound(source, scaled.sketch);
    std::vector<std::string> gaveWay = carry::gaveWayText(source, scaled);
    gaveWay.push_back(fmt::format(
        "With more than {} pieces everything was only scaled; edges in line, gutters, middles and "
        "overlaps were not looked after.",
        carry::mostRelatedPieces));
    return {std::move(scaled.sketch), std::move(gaveWay)};
}

CarriedOver carriedOnce(const Sketch& sketch, const PageSetup& target,
                        std::optional<Length> trimmerStep) {
    const Source source(sketch, target, trimmerStep);
    if (source.pieces.size() > carry::mostRelatedPieces) {
        return carriedCrowd(source);
    }
    Attempt best = carry::bestAttempt(source);
    makeSound(source, best.sketch);
    carry::judge(source, best);
    std::vector<std::string> gaveWay = carry::gaveWayText(source, best);
    return {std::move(best.sketch), std::move(gaveWay)};
}

std::string pageText(const PageSetup& setup) {
    const NamedSize* named = pageSizeOf(setup.size);
    return named ? std::string(named->name) : naturalSizeText(setup.size);
}

}  // namespace

PageSetup onPageSize(const PageSetup& setup, Size pageSize) {
    PageSetup result = setup;
    result.size = pageSize;
    const auto shrink = [](Length& low, Length& high, Length side) {
        const Length most = side.scaledRounded(3, 4);
        if (const Length both = low + high; both > most) {
            low = low.scaledRounded(most.ticks(), both.ticks());
            high = high.scaledRounded(most.ticks(), both.ticks());
        }
    };
    shrink(result.margins.left, result.margins.right, pageSize.width);
    shrink(result.margins.top, result.margins.bottom, pageSize.height);
    return result;
}

CarriedOver carriedOver(const Sketch& sketch, const PageSetup& target,
                        std::optional<Length> trimmerStep) {
    if (sketch.page == target) {
        return {sketch, {}};
    }
    CarriedOver there = carriedOnce(sketch, target, trimmerStep);
    if (there.gaveWay.empty()) {
        const CarriedOver back = carriedOnce(there.sketch, sketch.page, trimmerStep);
        if (back.sketch != sketch) {
            there.gaveWay.push_back(
                fmt::format("Carried back to {} it would not be quite the same; keep the sketch "
                            "it came from.",
                            pageText(sketch.page)));
        }
    }
    return there;
}

}  // namespace matwright
