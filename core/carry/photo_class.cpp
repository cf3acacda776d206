// SPDX-License-Identifier: MIT
#include "core/carry/photo_class.h"

#include <algorithm>
#include <cmath>

#include "core/measure/catalogue.h"

namespace matwright::carry {

namespace {

// Of areas, against the scaled print's.
constexpr double smallestShare = 0.3;
constexpr double largestShare = 2.4;

bool isMetric(Size print) {
    const Length centimetre = Length::millimetres(10);
    return print.width.isMultipleOf(centimetre) && print.height.isMultipleOf(centimetre);
}

double shapeOf(Size size) {
    return std::log(ratio(size.height, size.width));
}

// The whole print stays the whole print.
Size keptTrim(const Piece& photo, std::optional<Length> newStep) {
    const auto side = [&](Length trim, Length print) {
        return newStep && trim != print
                   ? std::clamp(trim.roundedTo(*newStep), std::min(*newStep, print),
                                std::max(trim, print))
                   : trim;
    };
    return {side(photo.size.width, photo.printSize->width),
            side(photo.size.height, photo.printSize->height)};
}

Length sideFrom(Length trim, Length print, Length newPrint, Length step) {
    const Length wished = newPrint.scaledRounded(trim.ticks(), print.ticks()).roundedTo(step);
    return std::clamp(wished, std::min(step, newPrint), newPrint);
}

// The catalogue's prints as the class lies.
std::vector<Size> printsFor(const PhotoClass& photos) {
    std::vector<Size> prints;
    const bool wasSquare = photos.print.width == photos.print.height;
    for (const NamedSize& named : printSizes()) {
        const bool square = named.size.width == named.size.height;
        if ((square || !wasSquare) && (isMetric(photos.print) || !isMetric(named.size))) {
            prints.push_back(photos.print.width > photos.print.height ? named.size.turned()
                                                                      : named.size);
        }
    }
    return prints;
}

}  // namespace

std::vector<PhotoClass> photoClasses(const std::vector<Footprint>& pieces,
                                     std::optional<Length> newStep) {
    std::vector<PhotoClass> classes;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const Piece& piece = *pieces[i].piece;
        if (!piece.printSize) {
            continue;
        }
        auto it = std::ranges::find_if(classes, [&](const PhotoClass& c) {
            return c.print == *piece.printSize && c.trim == piece.size;
        });
        if (it == classes.end()) {
            it = classes.insert(classes.end(),
                                {*piece.printSize, piece.size, keptTrim(piece, newStep), {}});
        }
        it->members.push_back(i);
    }
    return classes;
}

std::vector<PhotoChoice> photoChoices(const PhotoClass& photos, double scale, Length step) {
    const double wished = squareInches(photos.trim) * scale * scale;
    const std::vector<Size> prints = printsFor(photos);
    std::vector<PhotoChoice> choices{{photos.print, trimFrom(photos, photos.print, step)}};
    const auto add = [&](const PhotoChoice& choice) {
        if (std::ranges::find(choices, choice) == choices.end()) {
            choices.push_back(choice);
        }
    };
    for (const Size& print : prints) {
        const Size trim = trimFrom(photos, print, step);
        const double share = squareInches(trim) / wished;
        if (smallestShare <= share && share <= largestShare) {
            add({print, trim});
        }
    }
    for (const double factor : {1.0, 0.9, 0.8}) {
        const auto side = [&](Length length) {
            return std::max(length.scaledRounded(scale * factor).roundedTo(step), step);
        };
        const Size trim = {side(photos.trim.width), side(photos.trim.height)};
        const Size* smallest = nullptr;
        for (const Size& print : prints) {
            if (print.contains(trim) &&
                (!smallest || squareInches(print) < squareInches(*smallest))) {
                smallest = &print;
            }
        }
        if (smallest && scale * factor != 1) {
            add({*smallest, trim});
        }
    }
    std::ranges::stable_sort(choices, {}, [&](const PhotoChoice& choice) {
        return std::abs(std::log(squareInches(choice.trim) / wished)) +
               std::abs(shapeOf(choice.trim) - shapeOf(photos.trim)) +
               (choice.trim == choice.print ? 0 : 0.3);
    });
    return choices;
}

Size trimFrom(const PhotoClass& photos, Size print, Length step) {
    const auto side = [step](Length trim, Length kept, Length before, Length now) {
        return before == now ? std::min(kept, now) : sideFrom(trim, before, now, step);
    };
    return {side(photos.trim.width, photos.keptTrim.width, photos.print.width, print.width),
            side(photos.trim.height, photos.keptTrim.height, photos.print.height, print.height)};
}

}  // namespace matwright::carry
