// SPDX-License-Identifier: MIT
#include "core/pagefile/page_drawing.h"

#include <fmt/format.h>

#include "core/drawing/svg.h"
#include "core/outline/outline.h"
#include "core/pagefile/base64.h"
#include "core/pagefile/vocabulary.h"
#include "core/pagepicture/page_picture.h"
#include "core/picture/picture.h"
#include "core/sketchfile/model_writer.h"

namespace matwright {

namespace {

using Node = pugi::xml_node;

constexpr Colour paperWhite{255, 255, 255};

std::string number(Length length) {
    return svgNumber(static_cast<double>(length.ticks()));
}

class PageDrawing {
  public:
    PageDrawing(Node svg, const Making& making, const SmallPictures& pictures)
        : m_making(making), m_pictures(pictures), m_group(svg.append_child("g")) {
        set(m_group, "id", "made-page");
        set(m_group, "font-family", drawingFontFamily);
        m_carried = svg.append_child("defs");
    }

    void append(const PagePiece& part) {
        if (const auto* colour = std::get_if<Colour>(&part.fill)) {
            appendPath(part, *colour);
        } else if (const auto* paper = std::get_if<PaperFill>(&part.fill)) {
            appendPath(part, paper->look.colour);
        } else if (const auto* photo = std::get_if<PhotoFill>(&part.fill)) {
            appendPhoto(part, *photo);
        } else if (const auto* look = std::get_if<SketchFill>(&part.fill)) {
            appendSvgItems(m_group, look->items);
        }
    }

  private:
    void appendPath(const PagePiece& part, Colour colour) {
        appendSvgItems(m_group, {PathItem{{part.outline}, part.edge, colour}});
    }

    // Across the fold there are two parts of one photo: its small picture is whole, and is drawn
    // once over both.
    void appendPhoto(const PagePiece& part, const PhotoFill& photo) {
        if (photo.from > 0) {
            return;
        }
        const Piece& piece = m_making.sketch.pieces.at(part.piece);
        const std::string jpeg = takePicture(part.piece);
        const bool isRectangle = std::holds_alternative<RectangleShape>(piece.shape);
        if (jpeg.empty() || !isRectangle) {
            std::vector<DrawingItem> items = pieceItems(piece, false);
            items.erase(items.begin(),
                        items.begin() + static_cast<std::ptrdiff_t>(piece.mats.size()));
            appendSvgItems(m_group, items);
        } else {
            appendSvgItems(m_group, {PathItem{{trimOutline(piece)}, part.edge, paperWhite}});
        }
        if (!jpeg.empty()) {
            LaidBox window = photo.window;
            if (photo.to < 1) {
                window = windowBox(piece, m_making.work.placements.at(part.piece).border);
            }
            appendImage(isRectangle ? m_group : m_carried, part.piece, window, jpeg);
        }
    }

    std::string takePicture(PieceId slot) {
        std::string jpeg = m_pictures ? m_pictures(slot) : std::string();
        if (jpeg.size() > m_room) {
            return {};
        }
        m_room -= jpeg.size();
        return jpeg;
    }

    static void appendImage(Node parent, PieceId slot, const LaidBox& at, const std::string& jpeg) {
        const Node image = parent.append_child("image");
        set(image, "id", fmt::format("{}{}", pagewords::smallPicture, slot.value));
        set(image, "x", number(at.box.left()));
        set(image, "y", number(at.box.top()));
        set(image, "width", number(at.box.size().width));
        set(image, "height", number(at.box.size().height));
        set(image, "preserveAspectRatio", "none");
        if (!at.rotation.isZero()) {
            set(image, "transform",
                fmt::format("rotate({} {} {})", at.rotation.toDegrees(), svgNumber(at.centre.x),
                            svgNumber(at.centre.y)));
        }
        set(image, "xlink:href", pagewords::dataStart + toBase64(jpeg));
    }

    const Making& m_making;
    const SmallPictures& m_pictures;
    Node m_group;
    Node m_carried;
    std::size_t m_room = maxSmallPictureBytes;
};

}  // namespace

void appendPageDrawing(pugi::xml_node& svg, const Making& making, const SmallPictures& pictures) {
    Drawing empty;
    empty.size = surface(making.sketch.page).size();
    appendSvg(svg, empty);  // the root's size
    PageDrawing drawing(svg, making, pictures);
    for (const PagePiece& part : pagePicture(making)) {
        drawing.append(part);
    }
}

}  // namespace matwright
