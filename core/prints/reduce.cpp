// SPDX-License-Identifier: MIT
#include "core/prints/reduce.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace matwright {

using vips::VImage;

namespace {

constexpr double goodEnough = 0.04;
constexpr int kernelReach = 3;  // pixels of the result: neighbours beyond the part count as well
constexpr int mostSkipped = 140;

AxisCut tried(const Stretch& stretch, int before, int after) {
    const double scale = stretch.scale();
    const int given = stretch.pixels + before + after;
    const double wanted = given * scale;
    const double twiceMiddle = 2 * (stretch.start - before * scale) + wanted;
    auto sum = static_cast<int>(std::lround(twiceMiddle));
    auto count = static_cast<int>(std::lround(wanted));
    if ((sum - count) % 2 != 0) {
        const int other = count + (wanted > count ? 1 : -1);
        if (std::lround(other / scale) == given) {
            count = other;
        } else {
            sum += twiceMiddle > sum ? 1 : -1;
        }
    }
    return {(sum - count) / 2, count, before, std::abs(sum - twiceMiddle) / 2};
}

VImage smaller(const VImage& picture, const Stretch& across, const Stretch& down) {
    const AxisCut x = cutFor(across);
    const AxisCut y = cutFor(down);
    const auto kernel = [] { return VImage::option()->set("kernel", VIPS_KERNEL_LANCZOS3); };
    return cutOut(picture, x.from, y.from, x.count, y.count)
        .reducev(down.scale(), kernel())
        .reduceh(across.scale(), kernel())
        .extract_area(x.skipped, y.skipped, across.pixels, down.pixels);
}

bool reachesOutside(const Stretch& stretch, int side) {
    return stretch.start < 0 || stretch.start + stretch.length > side;
}

// At least one axis grows: one affine step over both. Where the other shrinks, it does so by
// little, because both come from one window.
VImage larger(const VImage& picture, const Stretch& across, const Stretch& down) {
    if (reachesOutside(across, picture.width()) || reachesOutside(down, picture.height())) {
        // The step repeats the picture's edge for its interpolation only; beyond it is black.
        constexpr int room = 4;
        const auto first = [](const Stretch& stretch) {
            return static_cast<int>(std::floor(stretch.start)) - room;
        };
        const auto count = [](const Stretch& stretch) {
            return static_cast<int>(std::ceil(stretch.length)) + 2 * room + 1;
        };
        const int left = first(across);
        const int top = first(down);
        return larger(cutOut(picture, left, top, count(across), count(down)),
                      {across.start - left, across.length, across.pixels},
                      {down.start - top, down.length, down.pixels});
    }
    const double x = 1 / across.scale();
    const double y = 1 / down.scale();
    // The library puts pixel middles on whole numbers.
    return picture.affine({x, 0, 0, y},
                          VImage::option()
                              ->set("interpolate", vips::VInterpolate::new_from_name("bicubic"))
                              ->set("oarea", std::vector<int>{0, 0, across.pixels, down.pixels})
                              ->set("idx", 0.5 - across.start)
                              ->set("idy", 0.5 - down.start)
                              ->set("odx", -0.5)
                              ->set("ody", -0.5)
                              ->set("extend", VIPS_EXTEND_COPY));
}

}  // namespace

VImage cutOut(const VImage& picture, int left, int top, int width, int height) {
    const int before = std::max(0, -left);
    const int above = std::max(0, -top);
    const int after = std::max(0, left + width - picture.width());
    const int below = std::max(0, top + height - picture.height());
    VImage whole = picture;
    if (before + above + after + below > 0) {
        whole = picture.embed(before, above, picture.width() + before + after,
                              picture.height() + above + below,
                              VImage::option()->set("extend", VIPS_EXTEND_COPY));
    }
    return whole.extract_area(left + before, top + above, width, height);
}

AxisCut cutFor(const Stretch& stretch) {
    AxisCut best;
    best.error = 1;
    for (int before = kernelReach; before <= mostSkipped && best.error > goodEnough; ++before) {
        for (const int after : {kernelReach, kernelReach + 1}) {
            const AxisCut cut = tried(stretch, before, after);
            if (cut.error < best.error - goodEnough / 2) {
                best = cut;
            }
        }
    }
    return best;
}

VImage resampled(const VImage& picture, const Stretch& across, const Stretch& down) {
    const bool shrinks = across.scale() >= 1 && down.scale() >= 1;
    return shrinks ? smaller(picture, across, down) : larger(picture, across, down);
}

}  // namespace matwright
