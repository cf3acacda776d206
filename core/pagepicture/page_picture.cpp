// SPDX-License-Identifier: MIT
#include "core/pagepicture/page_picture.h"

#include <utility>

#include "core/making/fold.h"
#include "core/outline/outline.h"
#include "core/picture/picture.h"

namespace matwright {

namespace {

constexpr Length hairline = Length::hundredthMillimetres(15);
constexpr Colour paperWhite{255, 255, 255};
constexpr Colour pageEdge{110, 110, 110};

LaidBox laid(const Piece& piece, const Rect& box) {
    const Rect trim = trimBox(piece);
    const Vertex a = vertexAt(trim.topLeft());
    const Vertex b = vertexAt(trim.bottomRight());
    return {box, piece.rotation, {(a.x + b.x) / 2, (a.y + b.y) / 2}};
}

Stroke edgeOf(Colour fill) {
    const auto darker = [](std::uint8_t value) { return static_cast<std::uint8_t>(value * 3 / 4); };
    return {hairline, {darker(fill.red), darker(fill.green), darker(fill.blue)}, {}};
}

// One piece's parts, bottom to top.
class PieceParts {
  public:
    PieceParts(const PhotoWork& work, const PageSetup& page, PieceId id, const Piece& piece,
               const Placement* placement)
        : m_work(work), m_page(page), m_id(id), m_piece(piece), m_placement(placement) {}

    void appendTo(std::vector<PagePiece>& parts) const {
        for (std::size_t mat = m_piece.mats.size(); mat-- > 0;) {
            parts.push_back(matPart(mat));
        }
        if (m_placement != nullptr) {
            appendPhoto(parts, *m_placement);
        } else if (const PaperLook* look = lookFor(m_piece.paper)) {
            parts.push_back(paperPart(*look));
            if (!isPaper(m_piece)) {
                parts.push_back(sketchPart(true));
            }
        } else {
            parts.push_back(sketchPart(false));
        }
    }

  private:
    PagePiece part(PagePart what, Path outline) const {
        return {what, m_id, 0, std::move(outline), Colour(), std::nullopt};
    }

    const PaperLook* lookFor(const std::string& paper) const {
        const auto it = m_work.papers.find(paper);
        return it == m_work.papers.end() ? nullptr : &it->second;
    }

    static void fillWith(PagePiece& made, const PaperLook& look, LaidBox at) {
        if (look.picture.empty()) {
            made.fill = look.colour;
        } else {
            made.fill = PaperFill{look, at};
        }
        made.edge = edgeOf(look.colour);
    }

    PagePiece matPart(std::size_t mat) const {
        PagePiece made = part(PagePart::Mat, matOutline(m_piece, mat));
        made.mat = mat;
        const PaperLook* look = lookFor(m_piece.mats[mat].paper);
        fillWith(made, look != nullptr ? *look : PaperLook{matFill(mat), {}, {}, {}},
                 laid(m_piece, matBox(m_piece, mat)));
        return made;
    }

    PagePiece paperPart(const PaperLook& look) const {
        PagePiece made = part(PagePart::Piece, trimOutline(m_piece));
        fillWith(made, look, laid(m_piece, trimBox(m_piece)));
        return made;
    }

    void appendPhoto(std::vector<PagePiece>& parts, const Placement& placement) const {
        const Size whole = shownWindow(m_piece, placement.border, m_page);
        if (!whole.isPositive()) {  // while it is dragged smaller than its white border
            parts.push_back(part(PagePart::Piece, trimOutline(m_piece)));
            parts.back().fill = Colour{255, 255, 255};
            return;
        }
        const PixelSize upright = m_work.photos.at(placement.photo).upright;
        const PhotoFill fill{placement.photo,
                             placement.crop,
                             windowIn(placement.crop, upright, whole),
                             windowBox(m_piece, placement.border),
                             whole,
                             0,
                             1};
        PagePiece made = part(PagePart::Piece, trimOutline(m_piece));
        const auto parting = foldParting(m_piece, placement.border, m_page);
        if (!parting) {
            made.fill = fill;
            parts.push_back(std::move(made));
            return;
        }
        parts.push_back(halfOf(fill, trimBox(m_piece).left(), parting->left, 0,
                               parting->share(placement.border), placement.border));
        parts.push_back(halfOf(fill, trimBox(m_piece).right() - parting->right, parting->right,
                               parting->share(placement.border), 1, placement.border));
    }

    // One page's print, up to the fold: the border has no side there.
    PagePiece halfOf(PhotoFill fill, Length left, Length width, double from, double to,
                     Length border) const {
        const Rect trim = trimBox(m_piece);
        const Rect print{{left, left + width}, trim.y};
        fill.window.box = {{from == 0 ? print.left() + border : print.left(),
                            to == 1 ? print.right() - border : print.right()},
                           trim.y.expanded(-border)};
        fill.from = from;
        fill.to = to;
        PagePiece made = part(PagePart::Piece, rectPath(print));
        made.fill = fill;
        return made;
    }

    PagePiece sketchPart(bool onPaper) const {
        std::vector<DrawingItem> items = pieceItems(m_piece, false);
        // Mats, and then the piece's own fill, come first there.
        const std::size_t before = m_piece.mats.size() + (onPaper ? 1 : 0);
        items.erase(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(before));
        PagePiece made = part(PagePart::Piece, trimOutline(m_piece));
        made.fill = SketchFill{std::move(items)};
        return made;
    }

    const PhotoWork& m_work;
    const PageSetup& m_page;
    PieceId m_id;
    const Piece& m_piece;
    const Placement* m_placement;
};

}  // namespace

LaidBox windowBox(const Piece& slot, Length border) {
    return laid(slot, trimBox(slot).expanded(-border));
}

std::vector<PagePiece> pagePicture(const Making& making) {
    std::vector<PagePiece> parts;
    for (const Rect& page : pages(making.sketch.page)) {
        parts.push_back({PagePart::Page, PieceId(), 0, rectPath(page), paperWhite,
                         Stroke{hairline, pageEdge, {}}});
    }
    for (const PieceId id : making.sketch.order) {
        PieceParts(making.work, making.sketch.page, id, making.sketch.pieces.at(id),
                   find(making.work, id))
            .appendTo(parts);
    }
    return parts;
}

std::vector<PagePiece> piecePicture(const PhotoWork& work, const PageSetup& page, PieceId id,
                                    const Piece& piece, const Placement* placement) {
    std::vector<PagePiece> parts;
    PieceParts(work, page, id, piece, placement).appendTo(parts);
    return parts;
}

}  // namespace matwright
