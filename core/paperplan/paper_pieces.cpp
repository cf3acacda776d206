// SPDX-License-Identifier: MIT
#include "core/paperplan/paper_pieces.h"

#include <fmt/format.h>

#include "core/measure/length_text.h"
#include "core/outline/outline.h"

namespace matwright {

namespace {

// The rectangle as it lies in a box of this size after so many quarter turns, clockwise.
Rect turnedInside(Rect area, Size box, int quarterTurns) {
    for (int i = 0; i < quarterTurns; ++i) {
        area = {{box.height - area.bottom(), box.height - area.top()}, area.x};
        box = box.turned();
    }
    return area;
}

int quarterTurnsOf(Angle rotation) {
    return rotation.isQuarterTurn() ? rotation.toMillidegrees() / 90'000 : 0;
}

std::string handWork(const Piece& piece, std::optional<std::size_t> mat, Size box) {
    const Shape& shape = piece.shape;
    if (std::holds_alternative<OvalShape>(shape)) {
        return box.width == box.height
                   ? fmt::format(
                         "Then cut a circle {} across out of it, by hand or with a cutting "
                         "machine.",
                         exactText(box.width))
                   : "Then cut the oval that fills it out of it, by hand or with a cutting "
                     "machine.";
    }
    if (std::holds_alternative<PolygonShape>(shape)) {
        return "Then cut its shape out of it, by hand or with a cutting machine, as the template "
               "shows it.";
    }
    if (const auto* rounded = std::get_if<RoundedRectangleShape>(&shape)) {
        return fmt::format("Then round its corners (radius {}), by hand or with a corner punch.",
                           exactText(cornerRadius(piece, *rounded, mat)));
    }
    return {};
}

std::string matWord(const Piece& piece, std::size_t mat) {
    if (piece.mats.size() == 1) {
        return "mat";
    }
    return mat == 0 ? "inner mat" : "outer mat";
}

class PieceFinder {
  public:
    PieceFinder(std::span<const PaperPage> allPages, Length glueEdge)
        : m_pages(allPages), m_glueEdge(glueEdge) {}

    std::vector<PaperPiece> run() {
        for (std::size_t i = 0; i < m_pages.size(); ++i) {
            for (const PieceId id : m_pages[i].sketch.order) {
                addAllOf(i, id, m_pages[i].sketch.pieces.at(id));
            }
        }
        return std::move(m_found);
    }

  private:
    void addAllOf(std::size_t page, PieceId id, const Piece& piece) {
        if (piece.kind == PieceKind::PhotoSlot) {
            for (std::size_t mat = piece.mats.size(); mat > 0; --mat) {
                addOne(page, id, piece, mat - 1);
            }
        } else if (isPaper(piece) || !piece.paper.empty()) {
            addOne(page, id, piece, std::nullopt);
        }
    }

    void addOne(std::size_t page, PieceId id, const Piece& piece, std::optional<std::size_t> mat) {
        PaperPiece found;
        found.page = page;
        found.piece = id;
        found.mat = mat;
        found.paper = mat ? piece.mats[*mat].paper : piece.paper;
        found.name = nameOf(page, id, piece, mat);
        const Rect box = boxOf(piece, mat);
        const int turns = quarterTurnsOf(piece.rotation);
        found.size = turns % 2 != 0 ? box.size().turned() : box.size();
        found.isAngled = !piece.rotation.isQuarterTurn();
        found.byHand = handWork(piece, mat, box.size());
        if (mat) {
            const std::optional<Rect> middle = middleOf(piece, *mat, box, turns);
            found.middle = piece.mats[*mat].gutted ? middle : std::nullopt;
            found.noMiddle = middle ? "" : whyNoMiddle(piece);
        }
        part(std::move(found), piece, turnedBounds(piece, box));
    }

    std::string nameOf(std::size_t page, PieceId id, const Piece& piece,
                       std::optional<std::size_t> mat) const {
        const Sketch& sketch = m_pages[page].sketch;
        std::string name = displayName(piece);
        if (mat) {
            name = fmt::format("{} under {}", matWord(piece, *mat), name);
        }
        name += fmt::format(" (no. {})", pieceNumber(sketch, id));
        return m_pages.size() > 1 ? fmt::format("{}, {}", name, m_pages[page].name) : name;
    }

    static Rect boxOf(const Piece& piece, std::optional<std::size_t> mat) {
        if (!mat) {
            return trimBox(piece);
        }
        if (!std::holds_alternative<PolygonShape>(piece.shape)) {
            return matBox(piece, *mat);
        }
        // Its mitres may stick out of the grown box.
        Piece unturned = piece;
        unturned.rotation = {};
        return boundsOf(matOutline(unturned, *mat));
    }

    std::optional<Rect> middleOf(const Piece& piece, std::size_t mat, const Rect& box,
                                 int turns) const {
        if (!std::holds_alternative<RectangleShape>(piece.shape)) {
            return std::nullopt;
        }
        const Rect covered = mat == 0 ? trimBox(piece) : matBox(piece, mat - 1);
        const Length least = smallestMiddle + m_glueEdge * 2;
        if (covered.size().width < least || covered.size().height < least) {
            return std::nullopt;
        }
        const Rect hidden = covered.expanded(-m_glueEdge).moved(Point{} - box.topLeft());
        return turnedInside(hidden, box.size(), turns);
    }

    static std::string whyNoMiddle(const Piece& piece) {
        return std::holds_alternative<RectangleShape>(piece.shape)
                   ? "What the next layer hides of it is too small to be of use."
                   : "Only of a rectangle the middle can be used.";
    }

    // Adds it in one piece, or in two where the fold parts it.
    void part(PaperPiece found, const Piece& piece, const Rect& onPage) {
        const std::vector<Rect> sides = pages(m_pages[found.page].sketch.page);
        const bool reachesIn = sides.size() == 2 && onPage.right() > sides[0].right() &&
                               onPage.left() < sides[1].left();
        const bool isLeft = reachesIn && onPage.left() < sides[0].right();
        const bool isRight = reachesIn && onPage.right() > sides[1].left();
        const bool canPart = !found.isAngled && std::holds_alternative<RectangleShape>(piece.shape);
        if (!canPart || (!isLeft && !isRight)) {
            if (reachesIn) {
                found.remark = wholeRemark(isLeft, isRight);
            }
            m_found.push_back(std::move(found));
            return;
        }
        if (found.mat) {
            found.middle.reset();
            found.noMiddle = "It is cut at the fold, and then its middle is not used.";
        }
        PaperPiece right = found;
        found.size.width = sides[0].right() - onPage.left();
        right.size.width = onPage.right() - sides[1].left();
        if (isLeft != isRight) {
            m_found.push_back(isLeft ? std::move(found) : std::move(right));
            m_found.back().remark = "It is cut at the page's edge: the rest would lie in the fold.";
            return;
        }
        addParted(std::move(found), std::move(right));
    }

    void addParted(PaperPiece left, PaperPiece right) {
        left.side = FoldSide::Left;
        left.name += ", left page";
        right.side = FoldSide::Right;
        right.name += ", right page";
        left.remark = right.remark = "It is parted at the fold, a part for each page.";
        m_found.push_back(std::move(left));
        m_found.push_back(std::move(right));
    }

    static std::string wholeRemark(bool isLeft, bool isRight) {
        if (isLeft && isRight) {
            return "It lies over the fold: it is cut in one piece; part it at the fold by hand.";
        }
        return isLeft || isRight ? "It reaches into the fold: it is cut in one piece; cut it off "
                                   "at the page's edge by hand."
                                 : "It lies in the fold, on neither page: it is cut in one piece.";
    }

    std::span<const PaperPage> m_pages;
    Length m_glueEdge;
    std::vector<PaperPiece> m_found;
};

}  // namespace

std::vector<PaperPiece> paperPieces(std::span<const PaperPage> pages, Length glueEdge) {
    return PieceFinder(pages, glueEdge).run();
}

}  // namespace matwright
