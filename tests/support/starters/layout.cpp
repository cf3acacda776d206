// SPDX-License-Identifier: MIT
#include "tests/support/starters/layout.h"

#include <utility>

#include "core/sketch/edit.h"

namespace matwright::test {

namespace {

constexpr const char* lightCardstock = "light cardstock";
constexpr const char* darkCardstock = "dark cardstock";

PageSetup pageOf(Size size, Length margin, Length gutter) {
    PageSetup setup;
    setup.size = size;
    setup.margins = Margins::all(margin);
    setup.gutter = gutter;
    return setup;
}

PageSetup inchPage(Length width, Length height) {
    return pageOf({width, height}, 0.5_in, 0.25_in);
}

PageSetup millimetrePage(Length width, Length height) {
    return pageOf({width, height}, 12_mm, 6_mm);
}

bool isMetric(const Piece& piece) {
    return !piece.size.width.isMultipleOf(0.0625_in);
}

}  // namespace

PageSetup page12() {
    return inchPage(12_in, 12_in);
}
PageSetup page8() {
    return inchPage(8_in, 8_in);
}
PageSetup letterUpright() {
    return inchPage(8.5_in, 11_in);
}
PageSetup letterLying() {
    return inchPage(11_in, 8.5_in);
}
PageSetup a4Upright() {
    return millimetrePage(210_mm, 297_mm);
}
PageSetup a4Lying() {
    return millimetrePage(297_mm, 210_mm);
}

PageSetup facing(PageSetup setup) {
    setup.doublePage = true;
    setup.foldGap = 0.5_in;
    return setup;
}

PageSetup withMargin(PageSetup setup, Length margin) {
    setup.margins = Margins::all(margin);
    return setup;
}

Length onTheRight(const PageSetup& setup, Length x) {
    return setup.size.width + setup.foldGap + x;
}

Piece photo(Size print) {
    return trimmed(print, print);
}

Piece trimmed(Size print, Size trim) {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.size = trim;
    piece.printSize = print;
    return piece;
}

Piece matted(Piece photo) {
    const Length border = isMetric(photo) ? 3_mm : 0.125_in;
    return matted(std::move(photo), border);
}

Piece matted(Piece photo, Length border) {
    photo.mats = {Mat{border, std::nullopt, lightCardstock}};
    return photo;
}

Piece doubleMatted(Piece photo) {
    const Length outer = isMetric(photo) ? 6_mm : 0.25_in;
    photo = matted(std::move(photo));
    photo.mats.push_back(Mat{outer, std::nullopt, darkCardstock});
    return photo;
}

Piece bottomHeavy(Piece photo, Length border, Length bottom) {
    photo.mats = {Mat{border, bottom, lightCardstock}};
    return photo;
}

Piece focal(Piece photo) {
    photo.name = "focal photo";
    return photo;
}

Piece round(Piece piece) {
    piece.shape = OvalShape{};
    return piece;
}

Piece turned(Piece piece, std::int64_t millidegrees) {
    piece.rotation = Angle::millidegrees(millidegrees);
    return piece;
}

std::vector<Piece> times(int count, const Piece& piece) {
    return std::vector<Piece>(static_cast<std::size_t>(count), piece);
}

Layout::Layout(std::string name, std::string note, PageSetup page) {
    m_sketch.name = std::move(name);
    m_sketch.note = std::move(note);
    m_sketch.page = page;
}

Rect Layout::add(PieceKind kind, Rect box, Shape shape, std::string paper) {
    Piece piece;
    piece.kind = kind;
    piece.size = box.size();
    piece.shape = std::move(shape);
    piece.paper = std::move(paper);
    return lay(std::move(piece), box.topLeft());
}

Rect Layout::strip(Rect box) {
    return add(PieceKind::Strip, box, RectangleShape{}, "patterned paper");
}
Rect Layout::block(Rect box) {
    return add(PieceKind::Block, box, RectangleShape{}, "plain cardstock");
}
Rect Layout::roundBlock(Rect box) {
    return add(PieceKind::Block, box, OvalShape{}, "patterned paper");
}
Rect Layout::title(Rect box) {
    return add(PieceKind::Title, box, RectangleShape{}, "");
}
Rect Layout::roundTitle(Rect box) {
    return add(PieceKind::Title, box, OvalShape{}, "light cardstock");
}
Rect Layout::journaling(Rect box) {
    return add(PieceKind::Journaling, box, RectangleShape{}, "");
}

Rect Layout::spot(Point centre, Length diameter) {
    const Length radius = diameter.halfRoundedDown();
    return add(PieceKind::Embellishment,
               Rect::at({centre.x - radius, centre.y - radius}, {diameter, diameter}), OvalShape{},
               "");
}

void Layout::cluster(Point centre, Length diameter, Trail trail) {
    const auto share = [&](std::int64_t eighths) {
        return diameter.scaledRounded(eighths, 8).roundedTo(0.125_in);
    };
    const auto place = [&](Length along, Length aside) {
        const Point step = trail == Trail::Right  ? Point{along, aside}
                           : trail == Trail::Down ? Point{aside, along}
                                                  : Point{aside, -along};
        return centre + step;
    };
    spot(centre, diameter);
    spot(place(share(6), share(1)), share(5));
    spot(place(share(10), -share(1)), share(3));
}

void Layout::spots(Point firstCentre, Length diameter) {
    for (int i = 0; i < 3; ++i) {
        spot({firstCentre.x + i * diameter.scaledRounded(4, 3), firstCentre.y}, diameter);
    }
}

Rect Layout::pennant(Rect box) {
    const auto [width, height] = box.size();
    const Length middle = width.halfRoundedDown();
    return add(
        PieceKind::Embellishment, box,
        PolygonShape{
            {{{}, {}}, {width, {}}, {width, height}, {middle, height - middle}, {{}, height}}},
        "");
}

Rect Layout::lay(Piece piece, Point place) {
    const Point inset = piece.place - outermostBox(piece).topLeft();
    piece.place = place + inset;
    const PieceId id = nextId(m_sketch);
    m_sketch.order.push_back(id);
    return outermostBox(m_sketch.pieces.emplace(id, std::move(piece)).first->second);
}

Rect Layout::row(Point place, const std::vector<Piece>& pieces) {
    return grid(place, static_cast<int>(pieces.size()), pieces);
}

Rect Layout::column(Point place, const std::vector<Piece>& pieces) {
    return grid(place, 1, pieces);
}

Rect Layout::grid(Point place, int columns, const std::vector<Piece>& pieces) {
    const Length gutter = m_sketch.page.gutter;
    Rect all = Rect::at(place, {});
    Point next = place;
    int inRow = 0;
    for (const Piece& piece : pieces) {
        if (inRow == columns) {
            next = {place.x, all.bottom() + gutter};
            inRow = 0;
        }
        const Rect laid = lay(piece, next);
        all = all.united(laid);
        next.x = laid.right() + gutter;
        ++inRow;
    }
    return all;
}

}  // namespace matwright::test
