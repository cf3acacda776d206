// SPDX-License-Identifier: MIT
#include "tests/support/plausible_sketch.h"

#include <algorithm>
#include <utility>

#include "core/measure/catalogue.h"

namespace matwright::test {

namespace {

constexpr Length sixteenths(std::int64_t n) {
    return Length::inches(0, n, 16);
}

bool isOneIn(Random& random, std::uint64_t n) {
    return below(random, n) == 0;
}

class Planner {
  public:
    explicit Planner(Random& random) : m_random(random) {
        const auto sizes = pageSizes();
        m_sketch.page.size = sizes[below(random, sizes.size())].size;
        m_sketch.page.doublePage = isOneIn(random, 5);
        if (m_sketch.page.doublePage && isOneIn(random, 2)) {
            m_sketch.page.foldGap = sixteenths(8);
        }
        m_sketch.page.margins = Margins::all(sixteenths(4 + 4 * std::int64_t(below(random, 3))));
        m_sketch.page.gutter = sixteenths(2 + 2 * std::int64_t(below(random, 3)));
    }

    Sketch planned() {
        if (isOneIn(m_random, 2)) {
            addStrip();
        }
        for (const Rect& area : insideMargins(m_sketch.page)) {
            fill(area);
        }
        return std::move(m_sketch);
    }

  private:
    void add(Piece piece) {
        const PieceId id = nextId(m_sketch);
        m_sketch.order.push_back(id);
        m_sketch.pieces.emplace(id, std::move(piece));
    }

    void addBox(PieceKind kind, Rect box) {
        if (box.size().width >= sixteenths(4) && box.size().height >= sixteenths(4)) {
            Piece piece;
            piece.kind = kind;
            piece.place = box.topLeft();
            piece.size = box.size();
            add(std::move(piece));
        }
    }

    void addStrip() {
        const Rect page = surface(m_sketch.page);
        const Length top = sixteenths(std::int64_t(below(m_random, 100)));
        addBox(PieceKind::Strip, Rect::at({page.left(), top}, {page.size().width, sixteenths(20)}));
    }

    // Rows from the top of the area until it is full, then words and an ornament.
    void fill(const Rect& area) {
        Length top = area.top();
        for (auto rows = 1 + below(m_random, 3); rows > 0; --rows) {
            const Length height = addRow(area, top);
            if (height.isZero()) {
                break;
            }
            top += height + m_sketch.page.gutter;
        }
        const Length room = area.bottom() - top;
        if (room < sixteenths(16)) {
            return;
        }
        const Length half =
            area.x.low + area.x.length().scaledRounded(1, 2).roundedTo(sixteenths(1));
        addBox(PieceKind::Title, {{area.left(), half}, {top, top + sixteenths(16)}});
        addBox(PieceKind::Journaling,
               {{half + m_sketch.page.gutter, area.right()}, {top, area.bottom()}});
        if (isOneIn(m_random, 3)) {
            Piece ornament;
            ornament.kind = PieceKind::Embellishment;
            ornament.shape = OvalShape{};
            ornament.size = {sixteenths(14), sixteenths(14)};
            ornament.place = {half - sixteenths(20), top + sixteenths(4)};
            ornament.rotation = Angle::degrees(isOneIn(m_random, 2) ? 0 : 8);
            add(std::move(ornament));
        }
    }

    Piece photo() {
        const auto prints = printSizes();
        const Size print = prints[below(m_random, prints.size() - 2)].size;
        Piece piece;
        piece.kind = PieceKind::PhotoSlot;
        piece.printSize = isOneIn(m_random, 2) ? print : print.turned();
        piece.size = *piece.printSize;
        if (isOneIn(m_random, 4)) {
            piece.size.width -= sixteenths(8);
        }
        if (isOneIn(m_random, 2)) {
            piece.mats.push_back({sixteenths(2), {}, "white"});
        }
        if (isOneIn(m_random, 8)) {
            piece.mats.push_back({sixteenths(2), sixteenths(8), "kraft"});
        }
        if (isOneIn(m_random, 12)) {
            piece.rotation = Angle::degrees(5);
        }
        return piece;
    }

    // How high the row is; zero where none fits.
    Length addRow(const Rect& area, Length top) {
        const Piece first = photo();
        const Rect own = outermostBox(first);
        const Length pitch = own.size().width + m_sketch.page.gutter;
        const auto fitting = (area.size().width + m_sketch.page.gutter).ticks() / pitch.ticks();
        if (fitting < 1 || top + own.size().height > area.bottom()) {
            return {};
        }
        const auto count =
            1 + std::int64_t(below(m_random, std::uint64_t(std::min<std::int64_t>(fitting, 5))));
        const Length width = count * pitch - m_sketch.page.gutter;
        const Length left = isOneIn(m_random, 2)
                                ? area.left()
                                : area.left() + (area.size().width - width).halfRoundedDown();
        for (std::int64_t i = 0; i < count; ++i) {
            Piece piece = first;
            piece.place = piece.place + (Point{left + i * pitch, top} - own.topLeft());
            add(std::move(piece));
        }
        return own.size().height;
    }

    Random& m_random;
    Sketch m_sketch;
};

}  // namespace

Sketch plausibleSketch(Random& random) {
    return Planner(random).planned();
}

}  // namespace matwright::test
