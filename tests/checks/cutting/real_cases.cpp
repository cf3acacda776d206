// SPDX-License-Identifier: MIT
#include "tests/checks/cutting/real_cases.h"

#include <array>
#include <random>

#include "core/measure/catalogue.h"

namespace matwright::test {

namespace {

constexpr Length sixteenths(std::int64_t n) {
    return Length::inches(0, n, 16);
}

class Case {
  public:
    explicit Case(std::uint64_t seed) : m_random(seed) {}

    CutJob run() {
        m_papers = 2 + number(4);
        const int pages = 1 + number(6);
        for (int page = 0; page < pages; ++page) {
            addPage();
        }
        for (int paper = 0; paper < m_papers; ++paper) {
            addSheets(paper);
        }
        if (number(10) == 0) {
            m_job.rules.kerf = Length::inches(0, 1, 32);
        }
        return m_job;
    }

  private:
    int number(int below) {
        return static_cast<int>(m_random() % static_cast<std::uint64_t>(below));
    }
    int paper() { return number(m_papers); }
    // Every second paper is patterned with an up direction; on plain ones everything turns.
    bool turns(int paper) const { return paper % 2 == 0; }

    void add(Size size, int paper) { m_job.pieces.push_back({size, 1, turns(paper), paper}); }

    void addPage() {
        const bool square = number(10) < 7;
        const Size page = square ? Size{Length::inches(12), Length::inches(12)}
                                 : Size{Length::inches(8, 1, 2), Length::inches(11)};
        const int mats = paper();
        const int under = paper();
        const int border = 2 + number(3);
        for (int photos = 2 + number(4); photos > 0; --photos) {
            addMats(mats, under, border, number(10) < 3);
        }
        for (int strips = number(4); strips > 0; --strips) {
            const Length across = number(4) == 0 ? page.width.halfRoundedDown() : page.width;
            add({across, sixteenths(8 + 2 * number(20))}, paper());
        }
        for (int blocks = number(3); blocks > 0; --blocks) {
            add({sixteenths(48 + 4 * number(20)), sixteenths(48 + 4 * number(20))}, paper());
        }
    }

    void addMats(int paper, int under, int border, bool isDouble) {
        constexpr std::array prints{"2x3", "3x3", "3x4", "3x4", "4x4", "4x6", "4x6", "5x7"};
        const NamedSize* print = nullptr;
        while (!print) {
            print = findPrintSize(prints[static_cast<std::size_t>(number(8))]);
        }
        Size size = number(2) == 0 ? print->size : print->size.turned();
        if (number(3) == 0) {
            size.width -= sixteenths(number(8));
            size.height -= sixteenths(number(8));
        }
        const auto matted = [](Size inner, int by) {
            return Size{inner.width + sixteenths(2 * by), inner.height + sixteenths(2 * by)};
        };
        add(matted(size, border), paper);
        if (isDouble) {
            add(matted(size, border + 2 + number(2)), under);
        }
    }

    void addSheets(int paper) {
        m_job.sheets.push_back(
            {{Length::inches(12), Length::inches(12)}, std::nullopt, 100, {}, paper});
        if (turns(paper)) {
            m_job.sheets.push_back(
                {{Length::inches(8, 1, 2), Length::inches(11)}, std::nullopt, 75, {}, paper});
        }
        for (int scraps = number(4); scraps > 0; --scraps) {
            m_job.sheets.push_back(
                {{sixteenths(40 + number(120)), sixteenths(40 + number(120))}, 1, 1, {}, paper});
        }
    }

    std::mt19937_64 m_random;
    CutJob m_job;
    int m_papers = 0;
};

}  // namespace

CutJob realCase(std::uint64_t seed) {
    return Case(seed).run();
}

}  // namespace matwright::test
