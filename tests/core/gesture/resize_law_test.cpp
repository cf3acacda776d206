// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <cmath>
#include <functional>

#include "core/gesture/gesture.h"
#include "core/sketch/soundness.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

constexpr Handle allHandles[] = {Handle::TopLeft,    Handle::Top,         Handle::TopRight,
                                 Handle::Right,      Handle::BottomRight, Handle::Bottom,
                                 Handle::BottomLeft, Handle::Left};
constexpr int drags = 20'000;

struct Drag {
    Piece start;
    Handle handle;
    Point by;
    ResizeOptions options;
    Piece after() const { return resizedBy(start, handle, by, options); }
};

Length randomPull(test::Random& random) {
    // Mostly within a page, now and then across the whole coordinate range.
    const std::int64_t reach = Length::inches(test::below(random, 20) == 0 ? 2500 : 6).ticks();
    return Length::fromTicks(
        static_cast<std::int64_t>(test::below(random, static_cast<std::uint64_t>(2 * reach))) -
        reach);
}

Drag randomDrag(test::Random& random) {
    Drag drag;
    drag.start = test::randomPiece(random);
    drag.handle = allHandles[test::below(random, std::size(allHandles))];
    drag.by = {randomPull(random), randomPull(random)};
    drag.options.keepRatio = test::below(random, 3) == 0;
    drag.options.fromCentre = test::below(random, 3) == 0;
    return drag;
}

// The page place of the corner, side middle or centre that lies `side` from the centre; written
// out here on its own, in long doubles.
struct PagePlace {
    long double x;
    long double y;
};
PagePlace placeOf(const Piece& piece, HandleSide side) {
    const long double width = static_cast<long double>(piece.size.width.ticks());
    const long double height = static_cast<long double>(piece.size.height.ticks());
    const long double turn = piece.rotation.toMillidegrees() * 3.14159265358979323846L / 180'000;
    const long double dx = side.x * width / 2;
    const long double dy = side.y * height / 2;
    return {static_cast<long double>(piece.place.x.ticks()) + width / 2 + dx * std::cos(turn) -
                dy * std::sin(turn),
            static_cast<long double>(piece.place.y.ticks()) + height / 2 + dx * std::sin(turn) +
                dy * std::cos(turn)};
}

void forRandomDrags(std::uint64_t seed, const std::function<void(const Drag&)>& check) {
    test::Random random(seed);
    for (int i = 0; i < drags; ++i) {
        const Drag drag = randomDrag(random);
        ASSERT_FALSE(findFault(drag.start));
        check(drag);
        ASSERT_FALSE(testing::Test::HasFailure()) << "seed " << seed << ", drag " << i;
    }
}

TEST(ResizedByLaws, aSoundPieceStaysSound) {
    forRandomDrags(11, [](const Drag& drag) {
        const auto fault = findFault(drag.after());
        EXPECT_FALSE(fault) << fault->text();
    });
}

TEST(ResizedByLaws, theOppositeCornerOrSideStaysWithinOneTick) {
    forRandomDrags(12, [](const Drag& drag) {
        if (drag.options.fromCentre) {
            return;
        }
        const HandleSide side = sideOf(drag.handle);
        const HandleSide opposite{-side.x, -side.y};
        const PagePlace before = placeOf(drag.start, opposite);
        const PagePlace after = placeOf(drag.after(), opposite);
        EXPECT_LE(std::hypot(after.x - before.x, after.y - before.y), 1.0L);
    });
}

TEST(ResizedByLaws, theCentreStaysWithinOneTickWhenResizedFromIt) {
    forRandomDrags(13, [](const Drag& drag) {
        if (!drag.options.fromCentre) {
            return;
        }
        const PagePlace before = placeOf(drag.start, {0, 0});
        const PagePlace after = placeOf(drag.after(), {0, 0});
        EXPECT_LE(std::hypot(after.x - before.x, after.y - before.y), 1.0L);
    });
}

TEST(ResizedByLaws, theRatioHoldsWithinARoundedTick) {
    forRandomDrags(14, [](const Drag& drag) {
        if (!drag.options.keepRatio) {
            return;
        }
        const Size before = drag.start.size;
        const Size after = drag.after().size;
        // Each side is off by half a tick at most.
        const long double w = static_cast<long double>(before.width.ticks());
        const long double h = static_cast<long double>(before.height.ticks());
        const long double skew = static_cast<long double>(after.width.ticks()) * h -
                                 static_cast<long double>(after.height.ticks()) * w;
        EXPECT_LE(std::abs(skew), (w + h) / 2 * 1.0001L + 1);
    });
}

TEST(ResizedByLaws, noSideGetsSmallerThanAllowedOrThanItWas) {
    forRandomDrags(15, [](const Drag& drag) {
        const Size after = drag.after().size;
        EXPECT_GE(after.width, std::min(drag.start.size.width, drag.options.smallest));
        EXPECT_GE(after.height, std::min(drag.start.size.height, drag.options.smallest));
    });
}

TEST(ResizedByLaws, aPullByNothingGivesTheStartPiece) {
    forRandomDrags(16, [](const Drag& drag) {
        EXPECT_EQ(resizedBy(drag.start, drag.handle, {}, drag.options), drag.start);
    });
}

TEST(ResizedByLaws, aPrintThatFollowsAlwaysHoldsTheTrim) {
    forRandomDrags(17, [](const Drag& drag) {
        if (drag.start.printSize != drag.start.size) {
            return;
        }
        const Piece after = drag.after();
        EXPECT_TRUE(after.printSize->contains(after.size));
    });
}

}  // namespace
}  // namespace matwright
