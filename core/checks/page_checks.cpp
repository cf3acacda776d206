// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "core/checks/amount_text.h"
#include "core/checks/finders.h"

namespace matwright {

namespace {

// How far a box reaches past each side of a frame; zero where it does not.
struct Overshoot {
    Length left, top, right, bottom;
    bool isNone() const {
        return left.isZero() && top.isZero() && right.isZero() && bottom.isZero();
    }
};

Overshoot overshoot(const Rect& box, const Rect& frame, Length slack) {
    const auto past = [&](Length by) { return by > slack ? by : Length(); };
    return {past(frame.left() - box.left()), past(frame.top() - box.top()),
            past(box.right() - frame.right()), past(box.bottom() - frame.bottom())};
}

// "1/8 in over the left margin and 1/4 in over the top margin", from a format for one side.
std::string sidesText(const Overshoot& over, Scale scale,
                      fmt::format_string<std::string, const char*&> one) {
    std::vector<std::string> parts;
    const auto add = [&](Length by, const char* side) {
        if (!by.isZero()) {
            parts.push_back(fmt::format(one, amountText(by, scale), side));
        }
    };
    add(over.left, "left");
    add(over.top, "top");
    add(over.right, "right");
    add(over.bottom, "bottom");
    return listText(parts);
}

// "move it right and down, or make it smaller"; only smaller where two opposite sides are over.
std::string adviceText(const Overshoot& over) {
    if ((!over.left.isZero() && !over.right.isZero()) ||
        (!over.top.isZero() && !over.bottom.isZero())) {
        return "make it smaller";
    }
    std::vector<std::string> ways;
    if (!over.left.isZero() || !over.right.isZero()) {
        ways.emplace_back(over.left.isZero() ? "left" : "right");
    }
    if (!over.top.isZero() || !over.bottom.isZero()) {
        ways.emplace_back(over.top.isZero() ? "up" : "down");
    }
    return fmt::format("move it {}{} or make it smaller", listText(ways),
                       ways.size() > 1 ? "," : "");
}

bool keepsToMargins(const Piece& piece) {
    return piece.kind == PieceKind::PhotoSlot || piece.kind == PieceKind::Title ||
           piece.kind == PieceKind::Journaling;
}

// The stretch between the two pages.
Interval fold(const PageSetup& page) {
    return {page.size.width, page.size.width + page.foldGap};
}

bool isAcrossFold(const PageSetup& page, const CheckedPiece& checked) {
    return page.doublePage && checked.bounds.left() + checked.slack < fold(page).high &&
           checked.bounds.right() - checked.slack > fold(page).low;
}

// The area inside the margins that a box has to keep to: of the page it lies on, or of both pages
// together where it lies across the fold.
Rect marginFrame(const PageSetup& page, const CheckedPiece& checked) {
    const std::vector<Rect> frames = insideMargins(page);
    if (frames.size() == 1) {
        return frames.front();
    }
    if (isAcrossFold(page, checked)) {
        return frames.front().united(frames.back());
    }
    return checked.bounds.right() - checked.slack <= fold(page).low ? frames.front()
                                                                    : frames.back();
}

}  // namespace

void findOffPage(const CheckContext& context, const CheckedPiece& checked, Findings& findings) {
    const Rect page = surface(context.sketch.page);
    const Overshoot over = overshoot(checked.bounds, page, checked.slack);
    if (over.isNone()) {
        return;
    }
    const std::string label = context.label(checked.id);
    if (!checked.bounds.interiorIntersects(page)) {
        findings.push_back({CheckKind::OffPage,
                            {checked.id},
                            label + " lies beside the page; move it onto the page or delete it."});
        return;
    }
    findings.push_back(
        {CheckKind::OffPage,
         {checked.id},
         fmt::format("{} runs {}; {}.", label,
                     sidesText(over, context.settings.scale, "{} off the {} edge of the page"),
                     adviceText(over))});
}

void findOverMargin(const CheckContext& context, const CheckedPiece& checked, Findings& findings) {
    const PageSetup& page = context.sketch.page;
    if (!keepsToMargins(checked.piece) || !checked.bounds.interiorIntersects(surface(page))) {
        return;
    }
    const Overshoot offPage = overshoot(checked.bounds, surface(page), checked.slack);
    Overshoot over = overshoot(checked.bounds, marginFrame(page, checked), checked.slack);
    const auto forget = [](Length& side, Length alreadyTold) {
        side = alreadyTold.isZero() ? side : Length();
    };
    forget(over.left, offPage.left);
    forget(over.top, offPage.top);
    forget(over.right, offPage.right);
    forget(over.bottom, offPage.bottom);
    if (!over.isNone()) {
        findings.push_back(
            {CheckKind::OverMargin,
             {checked.id},
             fmt::format("{} runs {}; {}.", context.label(checked.id),
                         sidesText(over, context.settings.scale, "{} over the {} margin"),
                         adviceText(over))});
    }
}

void findAcrossFold(const CheckContext& context, const CheckedPiece& checked, Findings& findings) {
    const PageSetup& page = context.sketch.page;
    const bool matters =
        checked.piece.kind == PieceKind::PhotoSlot || checked.piece.kind == PieceKind::Journaling;
    if (!matters || !isAcrossFold(page, checked)) {
        return;
    }
    const Length toTheLeft = checked.bounds.right() - fold(page).low;
    const Length toTheRight = fold(page).high - checked.bounds.left();
    findings.push_back(
        {CheckKind::AcrossFold,
         {checked.id},
         fmt::format("{} lies across the fold; move it {} to the {} so that it stays on one page.",
                     context.label(checked.id),
                     amountText(std::min(toTheLeft, toTheRight), context.settings.scale),
                     toTheLeft <= toTheRight ? "left" : "right")});
}

}  // namespace matwright
