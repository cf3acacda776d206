// SPDX-License-Identifier: MIT
// Prints what a snap query (every rule on, with the live gaps) costs among 1,000 and among 10,000
// pieces, both measured in turns in this run, for several ways pieces may lie. Ends with 1 where a
// query among 10,000 costs more than 3 times one among 1,000 in the best of three attempts.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <ctime>

#include "core/snap/snap.h"
#include "tests/support/random_sketch.h"
#include "tests/support/timed_bar.h"

namespace {

using namespace matwright;

constexpr int rounds = 25;
constexpr int queriesARound = 200;
constexpr double allowedRatio = 3;

SnapSettings everyRule() {
    SnapSettings settings;
    settings.thirds = settings.grid = true;
    return settings;
}

Length randomUpTo(test::Random& random, Length limit) {
    return Length::fromTicks(
        static_cast<std::int64_t>(test::below(random, static_cast<std::uint64_t>(limit.ticks()))));
}

void add(Sketch& sketch, Point place, Size size) {
    const PieceId id{static_cast<std::uint32_t>(sketch.pieces.size() + 1)};
    Piece& piece = sketch.pieces[id];
    piece.place = place;
    piece.size = size;
    if (id.value % 2 == 0) {
        piece.kind = PieceKind::PhotoSlot;
        piece.printSize = size;
        piece.mats = {Mat{Length::inches(0, 1, 8), {}, ""}};
    }
    sketch.order.push_back(id);
}

Sketch scattered(int pieces, Length side, Length lowest) {
    test::Random random(1);
    Sketch sketch = blankSketch();
    sketch.page.size = {side, side};
    for (int i = 0; i < pieces; ++i) {
        add(sketch, {randomUpTo(random, side), randomUpTo(random, lowest)},
            {Length::inches(0, 1, 4) + randomUpTo(random, Length::inches(2)),
             Length::inches(0, 1, 4) + randomUpTo(random, Length::inches(2))});
    }
    return sketch;
}

// Above and below, with a band of the page left free between them.
Sketch aboveAndBelow(int pieces) {
    Sketch sketch = scattered(pieces, Length::inches(12), Length::inches(3));
    for (auto& [id, piece] : sketch.pieces) {
        if (id.value % 4 < 2) {
            piece.place.y += Length::inches(9);
        }
    }
    return sketch;
}

Sketch inRows(int pieces) {
    Sketch sketch = blankSketch();
    const int columns = static_cast<int>(std::ceil(std::sqrt(pieces)));
    const Length step = Length::fromTicks(Length::inches(12).ticks() / columns);
    for (int i = 0; i < pieces; ++i) {
        add(sketch, {step * (i % columns), step * (i / columns)},
            {step - Length::inches(0, 1, 32), step - Length::inches(0, 1, 32)});
    }
    return sketch;
}

Sketch stacked(int pieces) {
    Sketch sketch = blankSketch();
    for (int i = 0; i < pieces; ++i) {
        add(sketch, {Length::inches(3), Length::inches(4)}, {Length::inches(4), Length::inches(4)});
    }
    return sketch;
}

struct Case {
    const char* name;
    Sketch few;
    Sketch many;
    Rect where;  // the boxes' top left corners
};

std::vector<SnapBox> boxesIn(const Rect& where) {
    test::Random random(2);
    std::vector<SnapBox> boxes;
    for (int i = 0; i < queriesARound; ++i) {
        const Point at = where.topLeft() + Point{randomUpTo(random, where.size().width),
                                                 randomUpTo(random, where.size().height)};
        const Rect trim = Rect::at(at, {Length::inches(3), Length::inches(2)});
        boxes.push_back({trim, trim.expanded(Length::inches(0, 1, 8))});
    }
    return boxes;
}

// Of processor time, so that a busy machine changes little.
double secondsSince(std::clock_t start) {
    return static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

volatile std::size_t sink = 0;

double microsecondsAQuery(const SnapContext& context, const std::vector<SnapBox>& boxes) {
    const SnapSettings settings = everyRule();
    const std::clock_t start = std::clock();
    for (const SnapBox& box : boxes) {
        sink = sink + static_cast<std::size_t>(snap(context, box, {}, settings).by().x.ticks());
        sink = sink + gapsAround(context, box.outermost).size();
    }
    return secondsSince(start) * 1e6 / static_cast<double>(boxes.size());
}

double median(std::vector<double> values) {
    std::ranges::nth_element(values,
                             values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2));
    return values[values.size() / 2];
}

double ratioOf(const Case& example) {
    const std::vector<SnapBox> boxes = boxesIn(example.where);
    const SnapContext few(example.few, {});
    const std::clock_t start = std::clock();
    const SnapContext many(example.many, {});
    const double building = secondsSince(start) * 1e3;
    std::vector<double> fewTimes, manyTimes;
    for (int i = 0; i < rounds; ++i) {
        fewTimes.push_back(microsecondsAQuery(few, boxes));
        manyTimes.push_back(microsecondsAQuery(many, boxes));
    }
    const double ratio = median(manyTimes) / median(fewTimes);
    fmt::print("{:<34} {:>8.1f} us {:>8.1f} us {:>7.2f}x   index {:.1f} ms\n", example.name,
               median(fewTimes), median(manyTimes), ratio, building);
    return ratio;
}

}  // namespace

int main() {
    if (test::timingsMeanNothing()) {
        return test::skippedBar;
    }
    const Length page = Length::inches(12);
    const Rect whole{{Length(), Length::inches(9)}, {Length(), Length::inches(9)}};
    const Rect lowerHalf{{Length(), Length::inches(9)}, {Length::inches(9), Length::inches(10)}};
    const Rect band{{Length(), Length::inches(9)}, {Length::inches(6), Length::inches(6, 1, 2)}};
    const Case cases[] = {
        {"scattered on one page", scattered(1000, page, page), scattered(10'000, page, page),
         whole},
        {"scattered, page grows with them", scattered(1000, page, page),
         scattered(10'000, Length::inches(38), Length::inches(38)), whole},
        {"in rows and columns", inRows(1000), inRows(10'000), whole},
        {"all in one place", stacked(1000), stacked(10'000), whole},
        {"all above, none beside the box", scattered(1000, page, Length::inches(6)),
         scattered(10'000, page, Length::inches(6)), lowerHalf},
        {"a free band through the middle", aboveAndBelow(1000), aboveAndBelow(10'000), band},
    };
    fmt::print("{:<34} {:>11} {:>11}\n", "a query among", "1,000", "10,000");
    double worst = 0;
    for (const Case& example : cases) {
        const auto measured = [&example] { return ratioOf(example); };
        worst = std::max(worst, test::bestRatio(allowedRatio, measured));
    }
    fmt::print("snap query, 10,000 against 1,000 pieces: worst {:.2f}x, allowed {:.1f}x\n", worst,
               allowedRatio);
    return worst <= allowedRatio ? 0 : 1;
}
