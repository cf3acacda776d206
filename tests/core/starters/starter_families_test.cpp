// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>
#include <vector>

#include "core/family/family.h"
#include "tests/support/starters/starters.h"

// No starter is another one mirrored, turned or nudged; on pages of one size not even its photos
// are.
namespace matwright {
namespace {

// A photo's outer box from the corner of the box around all photos.
struct Arrangement {
    std::vector<Rect> boxes;
    Size all;
};

Arrangement arrangementOf(const Sketch& sketch) {
    Arrangement photos;
    for (const auto& [id, piece] : sketch.pieces) {
        if (piece.kind == PieceKind::PhotoSlot) {
            photos.boxes.push_back(outermostBox(piece));
        }
    }
    Rect all = photos.boxes.front();
    for (const Rect& box : photos.boxes) {
        all = all.united(box);
    }
    for (Rect& box : photos.boxes) {
        box = box.moved(Point() - all.topLeft());
    }
    photos.all = all.size();
    return photos;
}

Arrangement mirrored(Arrangement photos) {
    for (Rect& box : photos.boxes) {
        box.x = {photos.all.width - box.x.high, photos.all.width - box.x.low};
    }
    return photos;
}

Arrangement quarterTurned(Arrangement photos) {
    for (Rect& box : photos.boxes) {
        box = {{photos.all.height - box.y.high, photos.all.height - box.y.low}, box.x};
    }
    photos.all = photos.all.turned();
    return photos;
}

bool isNear(const Rect& a, const Rect& b) {
    const Length reach = Length::inches(0, 1, 4);
    const auto near = [&](Length p, Length q) { return abs(p - q) <= reach; };
    return near(a.left(), b.left()) && near(a.right(), b.right()) && near(a.top(), b.top()) &&
           near(a.bottom(), b.bottom());
}

bool isNear(const Arrangement& a, const Arrangement& b) {
    return a.boxes.size() == b.boxes.size() &&
           std::ranges::is_permutation(a.boxes, b.boxes,
                                       [](const Rect& p, const Rect& q) { return isNear(p, q); });
}

bool isSameArrangement(const Arrangement& a, Arrangement b) {
    for (int quarter = 0; quarter < 4; ++quarter) {
        if (isNear(a, b) || isNear(a, mirrored(b))) {
            return true;
        }
        b = quarterTurned(b);
    }
    return false;
}

TEST(StarterFamilies, AMirroredTurnedOrNudgedArrangementIsRecognised) {
    for (const auto& [file, sketch] : test::starters()) {
        const Arrangement photos = arrangementOf(sketch);
        Arrangement nudged = quarterTurned(mirrored(photos));
        nudged.boxes.front() = nudged.boxes.front().moved({Length::inches(0, 1, 8), {}});
        EXPECT_TRUE(isSameArrangement(photos, nudged)) << file;
    }
}

TEST(StarterFamilies, NoTwoSketchesAreOfOneFamily) {
    const auto starters = test::starters();
    for (auto a = starters.begin(); a != starters.end(); ++a) {
        EXPECT_TRUE(isSameFamily(a->sketch, a->sketch)) << a->file;
        for (auto b = a + 1; b != starters.end(); ++b) {
            EXPECT_FALSE(isSameFamily(a->sketch, b->sketch)) << a->file << ", " << b->file;
        }
    }
}

TEST(StarterFamilies, NoTwoOnPagesOfOneSizePlaceTheirPhotosAlike) {
    const auto starters = test::starters();
    for (auto a = starters.begin(); a != starters.end(); ++a) {
        const Arrangement photos = arrangementOf(a->sketch);
        for (auto b = a + 1; b != starters.end(); ++b) {
            if (photos.boxes.size() > 1 && a->sketch.page.size == b->sketch.page.size) {
                EXPECT_FALSE(isSameArrangement(photos, arrangementOf(b->sketch)))
                    << a->file << ", " << b->file;
            }
        }
    }
}

}  // namespace
}  // namespace matwright
