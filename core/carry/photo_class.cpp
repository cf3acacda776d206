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

double area(Size size) {
    return size.width.toInches() * size.height.toInches();
}

double shapeOf(Size size) {
    return std::log(ratio(size.height, size.width));
}

Length sideFrom(Length trim, Length print, Length newPrint, Length step) {
    if (print == newPrint) {
        return std::min(trim, newPrint);
    }
    const Length wished = newPrint.scaledRounded(trim.ticks(), print.ticks()).roundedTo(step);
    return std::clamp(wished, std::min(step, newPrint), newPrint);
}

}  // namespace

std::vector<PhotoClass> photoClasses(const std::vector<Footprint>& pieces) {
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
            it = classes.insert(classes.end(), {*piece.printSize, piece.size, {}});
        }
        it->members.push_back(i);
    }
    return classes;
}

std::vector<Size> printChoices(const PhotoClass& photos, double scale) {
    const double wished = area(photos.print) * scale * scale;
    std::vector<Size> choices;
    const auto distance = [&](Size print) {
        return std::abs(std::log(area(print) / wished)) +
               std::abs(shapeOf(print) - shapeOf(photos.print));
    };
    for (const NamedSize& named : printSizes()) {
        const Size lying = named.size.turned();
        const Size print = photos.print.width > photos.print.height ? lying : named.size;
        const bool square = print.width == print.height;
        const bool wasSquare = photos.print.width == photos.print.height;
        const double share = area(print) / wished;
        if (print != photos.print && (square || !wasSquare) &&
            (isMetric(photos.print) || !isMetric(print)) && smallestShare <= share &&
            share <= largestShare) {
            choices.push_back(print);
        }
    }
    choices.push_back(photos.print);
    std::ranges::sort(choices, {}, distance);
    return choices;
}

Size trimFrom(const PhotoClass& photos, Size print, Length step) {
    return {sideFrom(photos.trim.width, photos.print.width, print.width, step),
            sideFrom(photos.trim.height, photos.print.height, print.height, step)};
}

}  // namespace matwright::carry
