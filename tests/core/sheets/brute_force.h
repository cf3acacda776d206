// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <tuple>
#include <vector>

namespace matwright::test {

// Whether a few pieces can be cut from a box, by trying every cut at every whole place and every
// way to share the pieces out. Shares nothing with the search. Lengths in any whole unit.
class BruteForce {
  public:
    struct Piece {
        int w;
        int h;
        bool mayTurn;
    };

    BruteForce(std::vector<Piece> pieces, int kerf) : m_pieces(std::move(pieces)), m_kerf(kerf) {}

    bool fits(unsigned selection, int w, int h) {
        if (selection == 0) {
            return true;
        }
        if (w <= 0 || h <= 0) {
            return false;
        }
        const auto key = std::tuple(selection, w, h);
        if (const auto known = m_known.find(key); known != m_known.end()) {
            return known->second;
        }
        return m_known[key] = isOnePiece(selection, w, h) || cutFits(selection, w, h);
    }

    // Fewest sheets of one size for all pieces; 0 where one fits on none.
    int fewestSheets(int w, int h) {
        const unsigned all = (1U << m_pieces.size()) - 1;
        std::vector<int> fewest(all + 1, 99);
        fewest[0] = 0;
        for (unsigned selection = 1; selection <= all; ++selection) {
            for (unsigned part = selection; part > 0; part = (part - 1) & selection) {
                if (fewest[selection ^ part] + 1 < fewest[selection] && fits(part, w, h)) {
                    fewest[selection] = fewest[selection ^ part] + 1;
                }
            }
        }
        return fewest[all] == 99 ? 0 : fewest[all];
    }

  private:
    bool isOnePiece(unsigned selection, int w, int h) const {
        for (std::size_t i = 0; i < m_pieces.size(); ++i) {
            if (selection == 1U << i) {
                const Piece& p = m_pieces[i];
                return (p.w <= w && p.h <= h) || (p.mayTurn && p.h <= w && p.w <= h);
            }
        }
        return false;
    }

    bool cutFits(unsigned selection, int w, int h) {
        for (unsigned part = selection; part > 0; part = (part - 1) & selection) {
            for (int x = 1; x < w; ++x) {
                if (fits(part, x, h) && fits(selection ^ part, w - x - m_kerf, h)) {
                    return true;
                }
            }
            for (int y = 1; y < h; ++y) {
                if (fits(part, w, y) && fits(selection ^ part, w, h - y - m_kerf)) {
                    return true;
                }
            }
        }
        return false;
    }

    std::vector<Piece> m_pieces;
    int m_kerf;
    std::map<std::tuple<unsigned, int, int>, bool> m_known;
};

}  // namespace matwright::test
