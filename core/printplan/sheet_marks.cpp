// SPDX-License-Identifier: MIT
#include "core/printplan/sheet_marks.h"

#include <algorithm>

namespace matwright {

namespace {

constexpr std::uint8_t sheetMarkInk = 96;

class SheetMarking {
  public:
    SheetMarking(Raster& sheet, const std::vector<PixelRect>& prints, int ppi)
        : m_sheet(sheet),
          m_prints(prints),
          m_away(std::max(1, pixelAt(Length::inches(0, 1, 64), ppi))),
          m_shortest(std::max(1, pixelAt(Length::inches(0, 1, 32), ppi))),
          m_longest(std::max(1, pixelAt(Length::inches(0, 1, 8), ppi))) {}

    void run() {
        for (const PixelRect& print : m_prints) {
            for (const int x : {print.left - 1, print.right}) {
                mark(x, print.top - 1 - m_away, 0, -1);
                mark(x, print.bottom + m_away, 0, 1);
            }
            for (const int y : {print.top - 1, print.bottom}) {
                mark(print.left - 1 - m_away, y, -1, 0);
                mark(print.right + m_away, y, 1, 0);
            }
        }
    }

  private:
    bool isBare(int x, int y) const {
        return x >= 0 && y >= 0 && x < m_sheet.size.width && y < m_sheet.size.height &&
               std::ranges::none_of(
                   m_prints,
                   [&](const PixelRect& print) {
                       return x >= print.left && x < print.right && y >= print.top &&
                              y < print.bottom;
                   });
    }
    // From (x, y) away from the print, as far as the paper is bare.
    void mark(int x, int y, int stepX, int stepY) {
        int length = 0;
        while (length < m_longest && isBare(x + length * stepX, y + length * stepY)) {
            ++length;
        }
        if (length < m_shortest) {
            return;
        }
        for (int i = 0; i < length; ++i) {
            darken(x + i * stepX, y + i * stepY);
        }
    }
    void darken(int x, int y) {
        const auto pixel = static_cast<std::ptrdiff_t>(y) * m_sheet.size.width + x;
        std::fill_n(m_sheet.pixels.begin() + 3 * pixel, 3, sheetMarkInk);
    }

    Raster& m_sheet;
    const std::vector<PixelRect>& m_prints;
    int m_away;
    int m_shortest;
    int m_longest;
};

}  // namespace

void drawSheetMarks(Raster& sheet, const std::vector<PixelRect>& prints, int ppi) {
    SheetMarking(sheet, prints, ppi).run();
}

}  // namespace matwright
