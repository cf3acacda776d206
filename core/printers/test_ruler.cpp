// SPDX-License-Identifier: MIT
#include "core/printers/test_ruler.h"

#include <fmt/format.h>

namespace matwright {

namespace {

constexpr Length thin = Length::hundredthMillimetres(15);
constexpr Length numberHeight = Length::points(6);

class RulerDrawing {
  public:
    explicit RulerDrawing(const TestRuler& ruler) : m_ruler(ruler) {}

    std::vector<DrawingItem> run() {
        line(at({}, {}), at(m_ruler.length, {}), thin);
        for (const Length mark : {Length(), m_ruler.length}) {
            line(at(mark, -testMarkLength), at(mark, testMarkLength), testMarkWidth);
        }
        inches();
        millimetres();
        letter({}, m_ruler.first);
        letter(m_ruler.length, m_ruler.second);
        return std::move(m_items);
    }

  private:
    // `beside` is positive to the right of a ruler that goes down, and under one across.
    Point at(Length along, Length beside) const {
        return m_ruler.down ? m_ruler.start + Point{beside, along}
                            : m_ruler.start + Point{along, beside};
    }
    void line(Point from, Point to, Length width) {
        m_items.emplace_back(PathItem{
            {linePath(vertexAt(from), vertexAt(to))}, Stroke{width, testInk, {}}, std::nullopt});
    }
    void text(Point place, const std::string& words, Length height, bool bold,
              TextAnchor anchor = TextAnchor::Middle) {
        m_items.emplace_back(TextItem{vertexAt(place), height, words, anchor, {}, bold, testInk});
    }
    bool isFree(Length along) const {
        return m_ruler.free.length().isPositive() && m_ruler.free.contains(along);
    }
    void tick(Length along, Length beside) {
        if (!isFree(along)) {
            line(at(along, {}), at(along, beside), thin);
        }
    }
    // Beside a ruler that goes down numbers begin, or end, where long ticks end.
    void number(Length along, Length beside, std::int64_t value) {
        if (isFree(along) || along == m_ruler.length) {
            return;
        }
        const bool left = beside.isNegative();
        const TextAnchor anchor = !m_ruler.down ? TextAnchor::Middle
                                  : left        ? TextAnchor::End
                                                : TextAnchor::Start;
        constexpr Length nearer = Length::hundredthMillimetres(80);
        const Point place = at(along, !m_ruler.down ? beside
                                      : left        ? beside + nearer
                                                    : beside - nearer);
        // Text stands on its baseline; this puts its middle where it is wanted.
        text({place.x, place.y + numberHeight.scaledRounded(3, 8)}, fmt::format("{}", value),
             numberHeight, false, anchor);
    }
    // Long ticks stay well below the marks.
    void inches() {
        constexpr Length step = Length::inches(0, 1, 16);
        for (std::int64_t n = 1; n * step < m_ruler.length; ++n) {
            const std::int64_t thousandths = n % 16 == 0  ? 140
                                             : n % 8 == 0 ? 100
                                             : n % 4 == 0 ? 80
                                             : n % 2 == 0 ? 60
                                                          : 40;
            tick(n * step, -Length::inches(0, thousandths, 1000));
            if (n % 16 == 0) {
                number(n * step, -Length::inches(0, 19, 100), n / 16);
            }
        }
    }
    void millimetres() {
        constexpr Length step = Length::millimetres(1);
        for (std::int64_t n = 1; n * step < m_ruler.length; ++n) {
            const std::int64_t tenths = n % 10 == 0 ? 35 : n % 5 == 0 ? 25 : 15;
            tick(n * step, Length::hundredthMillimetres(10 * tenths));
            if (n % 10 == 0) {
                number(n * step, Length::hundredthMillimetres(490), n);
            }
        }
    }
    void letter(Length mark, const std::string& name) {
        constexpr Length height = Length::points(10);
        const Length out = Length::inches(0, 1, 10);
        const Length along = mark.isZero() ? -out : mark + out;
        const Point place = at(along, {});
        text({place.x, place.y + height.scaledRounded(3, 8)}, name, height, true);
    }

    const TestRuler& m_ruler;
    std::vector<DrawingItem> m_items;
};

}  // namespace

std::vector<DrawingItem> rulerItems(const TestRuler& ruler) {
    return RulerDrawing(ruler).run();
}

}  // namespace matwright
