// SPDX-License-Identifier: MIT
#include "core/photo/photo_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/measure/catalogue.h"
#include "core/measure/length_text.h"

namespace matwright {

namespace {

bool reaches(int pixels, Length length, int ppi) {
    return std::int64_t{pixels} * Length::ticksPerInch >= length.ticks() * ppi;
}

bool fills(PixelSize photo, Size print, int ppi) {
    return reaches(photo.width, print.width, ppi) && reaches(photo.height, print.height, ppi);
}

std::int64_t area(Size size) {
    return size.width.ticks() * size.height.ticks();
}

std::string printName(Size print) {
    const NamedSize* known = printSizeOf(print);
    return known ? std::string(known->name) : naturalSizeText(print);
}

bool isLargestOfAll(Size print) {
    return std::ranges::all_of(
        printSizes(), [&](const NamedSize& other) { return area(other.size) <= area(print); });
}

struct Fraction {
    std::int64_t part = 0;
    std::int64_t whole = 1;
    double value() const { return static_cast<double>(part) / static_cast<double>(whole); }
};

// 1 - min(r) / max(r) of the two ratios, exactly.
Fraction lossOf(PixelSize photo, Size print) {
    const std::int64_t a = photo.width * print.height.ticks();
    const std::int64_t b = photo.height * print.width.ticks();
    const std::int64_t part = std::max(a, b) - std::min(a, b);
    const std::int64_t whole = std::max(a, b);
    const std::int64_t common = std::gcd(part, whole);
    return {part / common, whole / common};
}

// Up to here a fraction is told as it is; a nearest one is looked for among twelfths and simpler.
constexpr std::int64_t largestExactWhole = 24;
constexpr std::int64_t largestNearWhole = 12;
constexpr std::int64_t slivers = 200;

Fraction nearestSimple(double loss) {
    if (loss < 1.0 / largestNearWhole) {
        return {1, std::llround(1 / loss)};
    }
    Fraction best{1, largestNearWhole};
    for (std::int64_t whole = 2; whole <= largestNearWhole; ++whole) {
        const Fraction near{std::llround(loss * static_cast<double>(whole)), whole};
        if (near.part < whole && std::abs(near.value() - loss) < std::abs(best.value() - loss)) {
            best = near;
        }
    }
    return best;
}

std::string fractionText(Fraction fraction) {
    return fmt::format("{}/{}", fraction.part, fraction.whole);
}

std::string amountText(Fraction loss) {
    if (loss.whole <= largestExactWhole || (loss.part == 1 && loss.whole <= slivers)) {
        return fractionText(loss);
    }
    if (loss.value() * slivers < 1) {
        return fmt::format("less than 1/{}", slivers);
    }
    if (loss.value() > 1 - 1.0 / largestNearWhole) {
        return fmt::format("more than {}/{}", largestNearWhole - 1, largestNearWhole);
    }
    return "about " + fractionText(nearestSimple(loss.value()));
}

}  // namespace

std::optional<Size> largestPrint(PixelSize upright, int ppi) {
    const bool isLying = upright.width > upright.height;
    std::optional<Size> best;
    for (const NamedSize& print : printSizes()) {
        const Size asThePhotoLies = isLying ? print.size.turned() : print.size;
        // A print that is filled across the photo is filled along it too.
        if (fills(upright, asThePhotoLies, ppi) && (!best || area(asThePhotoLies) > area(*best))) {
            best = asThePhotoLies;
        }
    }
    return best;
}

std::string largestPrintText(PixelSize upright) {
    if (const auto print = largestPrint(upright, wishedPpi)) {
        return fmt::format("{}up to {} at {} ppi", isLargestOfAll(*print) ? "any print, " : "",
                           printName(*print), wishedPpi);
    }
    for (const int ppi : {warnedPpi, poorPpi}) {
        if (const auto print = largestPrint(upright, ppi)) {
            return fmt::format("too small for any print at {} ppi; up to {} at {} ppi{}", wishedPpi,
                               printName(*print), ppi, ppi == poorPpi ? ", which looks soft" : "");
        }
    }
    return fmt::format("too small for any print, even at {} ppi", poorPpi);
}

Sharpness sharpnessAt(double ppi) {
    return ppi >= warnedPpi ? Sharpness::Fine : ppi >= poorPpi ? Sharpness::Soft : Sharpness::Poor;
}

std::string ppiText(double ppi) {
    // Down, so that a figure never reads as one that would not be warned about.
    const auto figure =
        static_cast<std::int64_t>(std::floor(std::clamp(std::isnan(ppi) ? 0 : ppi, 0.0, 1e6)));
    switch (sharpnessAt(ppi)) {
        case Sharpness::Fine:
            return fmt::format("{} ppi", figure);
        case Sharpness::Soft:
            return fmt::format(
                "about {} ppi: this will look soft; print it smaller, or show more of the photo",
                figure);
        case Sharpness::Poor:
            break;
    }
    return fmt::format(
        "{} ppi: too coarse to print at this size; print it smaller, or choose a larger photo",
        figure);
}

std::string lossText(PixelSize upright, Size print) {
    const Fraction loss = lossOf(upright, print);
    if (loss.part == 0) {
        return "nothing is cut off";
    }
    return fmt::format("{} takes off {} of this photo", printName(print), amountText(loss));
}

}  // namespace matwright
