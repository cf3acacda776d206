// SPDX-License-Identifier: MIT
#include "core/prints/cut_marks.h"

#include <algorithm>

namespace matwright {

namespace {

constexpr std::uint8_t markInk = 96;

// A free stretch of an axis where a mark fits, last excluded; empty where it does not.
struct MarkRun {
    int first = 0;
    int last = 0;
};

struct MarkMeasures {
    int away;
    int shortest;
    int longest;
};

MarkMeasures measuresAt(int ppi) {
    return {std::max(1, pixelAt(Length::inches(0, 1, 64), ppi)),
            std::max(1, pixelAt(Length::inches(0, 1, 32), ppi)),
            std::max(1, pixelAt(Length::inches(0, 1, 8), ppi))};
}

MarkRun before(int edge, const MarkMeasures& measures) {
    const int last = edge - measures.away;
    const MarkRun run{std::max(0, last - measures.longest), last};
    return run.last - run.first >= measures.shortest ? run : MarkRun{};
}

MarkRun after(int edge, int end, const MarkMeasures& measures) {
    const int first = edge + measures.away;
    const MarkRun run{first, std::min(end, first + measures.longest)};
    return run.last - run.first >= measures.shortest ? run : MarkRun{};
}

PixelRect around(const PixelRect& a, const PixelRect& b) {
    return {std::min(a.left, b.left), std::min(a.top, b.top), std::max(a.right, b.right),
            std::max(a.bottom, b.bottom)};
}

void darken(Raster& paper, int x, int y) {
    if (x < 0 || y < 0 || x >= paper.size.width || y >= paper.size.height) {
        return;
    }
    const auto pixel = static_cast<std::size_t>(y) * static_cast<std::size_t>(paper.size.width) +
                       static_cast<std::size_t>(x);
    std::fill_n(paper.pixels.begin() + static_cast<std::ptrdiff_t>(3 * pixel), 3, markInk);
}

}  // namespace

bool haveRoomForMarks(PixelSize paper, const PixelRect& trim, const PixelRect& picture, int ppi) {
    const MarkMeasures measures = measuresAt(ppi);
    const PixelRect covered = around(trim, picture);
    const auto isMark = [](const MarkRun& run) { return run.last > run.first; };
    return isMark(before(covered.top, measures)) || isMark(before(covered.left, measures)) ||
           isMark(after(covered.bottom, paper.height, measures)) ||
           isMark(after(covered.right, paper.width, measures));
}

void drawCutMarks(Raster& paper, const PixelRect& trim, const PixelRect& picture, int ppi) {
    const MarkMeasures measures = measuresAt(ppi);
    const PixelRect covered = around(trim, picture);
    // The pixel just outside the trim, so that the cut leaves no line on the print.
    for (const int x : {trim.left - 1, trim.right}) {
        for (const MarkRun run :
             {before(covered.top, measures), after(covered.bottom, paper.size.height, measures)}) {
            for (int y = run.first; y < run.last; ++y) {
                darken(paper, x, y);
            }
        }
    }
    for (const int y : {trim.top - 1, trim.bottom}) {
        for (const MarkRun run :
             {before(covered.left, measures), after(covered.right, paper.size.width, measures)}) {
            for (int x = run.first; x < run.last; ++x) {
                darken(paper, x, y);
            }
        }
    }
}

}  // namespace matwright
