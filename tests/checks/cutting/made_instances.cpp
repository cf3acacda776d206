// SPDX-License-Identifier: MIT
#include "tests/checks/cutting/made_instances.h"

#include <array>
#include <random>

namespace matwright::test {

namespace {

// Sides are evenly spread from 1 to `longest`.
struct EvenClass {
    int longest;
    int sheet;
};
constexpr std::array<EvenClass, 6> evenClasses{
    {{10, 10}, {10, 30}, {35, 40}, {35, 100}, {100, 100}, {100, 300}}};

constexpr int mixedSheet = 100;

struct Range {
    int from;
    int to;
};
struct Shape {
    Range w;
    Range h;
};
// Wide and low, narrow and high, large, small.
constexpr std::array<Shape, 4> shapes{
    {{{67, 100}, {1, 50}}, {{1, 50}, {67, 100}}, {{50, 100}, {50, 100}}, {{1, 50}, {1, 50}}}};

// The remainder is not quite even, which does not matter here, and the same everywhere.
int numberIn(Range range, std::mt19937_64& random) {
    const int width = range.to - range.from + 1;
    return range.from + static_cast<int>(random() % static_cast<std::uint64_t>(width));
}

Size sizeIn(const Shape& shape, std::mt19937_64& random) {
    const int w = numberIn(shape.w, random);
    const int h = numberIn(shape.h, random);
    return {Length::fromTicks(w), Length::fromTicks(h)};
}

// Seven pieces in ten are of the shape that the class is named for, one in ten of each other.
Size mixedSize(std::size_t named, std::mt19937_64& random) {
    const auto draw = static_cast<std::size_t>(numberIn({0, 9}, random));
    return sizeIn(shapes[draw < 7 ? named : (named + draw - 6) % shapes.size()], random);
}

}  // namespace

MadeInstance madeInstance(int number, int pieces, std::uint64_t seed, bool mayTurn) {
    std::mt19937_64 random(seed * 10'000 + static_cast<std::uint64_t>(pieces) * 100 +
                           static_cast<std::uint64_t>(number));
    MadeInstance instance;
    instance.name = "class " + std::to_string(number) + ", " + std::to_string(pieces) +
                    " pieces, seed " + std::to_string(seed);
    const auto index = static_cast<std::size_t>(number - 1);
    const bool isEven = index < evenClasses.size();
    const int side = isEven ? evenClasses[index].sheet : mixedSheet;
    instance.job.sheets.push_back(
        {{Length::fromTicks(side), Length::fromTicks(side)}, std::nullopt, 1, {}, 0});
    instance.job.rules.usefulSide = Length::fromTicks(1);
    for (int n = 0; n < pieces; ++n) {
        Size size;
        if (isEven) {
            const Range range{1, evenClasses[index].longest};
            size = sizeIn({range, range}, random);
        } else {
            size = mixedSize(index - evenClasses.size(), random);
        }
        instance.job.pieces.push_back({size, 1, mayTurn, 0});
    }
    return instance;
}

}  // namespace matwright::test
