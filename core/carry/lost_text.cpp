// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "core/carry/gave_way.h"

namespace matwright::carry {

namespace {

std::string_view sideName(const Relation& relation) {
    if (relation.axis == Axis::X) {
        return relation.end == End::Low ? "left" : "right";
    }
    return relation.end == End::Low ? "top" : "bottom";
}

std::string_view wayName(const Relation& relation) {
    return relation.axis == Axis::X ? "from side to side" : "from top to bottom";
}

std::string_view pageName(const Relation& relation) {
    if (!relation.onDouble || relation.axis == Axis::Y) {
        return "page";
    }
    return relation.page == 0 ? "left page" : "right page";
}

// "3, 4 and 7"
std::string numbersText(const std::vector<std::size_t>& pieces) {
    std::string text;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        text += i == 0 ? "" : i + 1 == pieces.size() ? " and " : ", ";
        text += std::to_string(pieces[i] + 1);
    }
    return text;
}

}  // namespace

std::string labelOf(const Source& source, const std::vector<std::size_t>& pieces) {
    if (pieces.size() == 1) {
        return fmt::format("{} \u00B7 {}", pieces.front() + 1,
                           displayName(*source.pieces[pieces.front()].piece));
    }
    return "Pieces " + numbersText(pieces);
}

std::string lostText(const Source& source, const Relation& relation) {
    const std::string label = labelOf(source, relation.pieces);
    const std::string_view side = sideName(relation);
    // The edge that is meant where the mat's edge is another.
    const std::string_view edge = relation.outer ? "" : ", counted from its trim,";
    switch (relation.kind) {
        case RelationKind::OnPageEdge:
            return fmt::format("{}{} no longer reaches the {} edge of the {}.", label, edge, side,
                               pageName(relation));
        case RelationKind::OnMargin:
            return fmt::format("{}{} no longer lies on the {} margin of the {}.", label, edge, side,
                               pageName(relation));
        case RelationKind::Gutter:
            return label + " are no longer a gutter apart.";
        case RelationKind::Flush:
            return label + " no longer touch.";
        case RelationKind::InLine:
            return fmt::format("The {} {} of pieces {} are no longer in line.", side,
                               relation.outer ? "edges" : "trims", numbersText(relation.pieces));
        case RelationKind::CentredOnPage:
            return fmt::format("{} is no longer in the middle of the {} {}.", label,
                               pageName(relation), wayName(relation));
        case RelationKind::CentredInMargins:
            return fmt::format("{} is no longer in the middle between the margins of the {} {}.",
                               label, pageName(relation), wayName(relation));
        case RelationKind::CentredOnFold:
            return fmt::format("{} is no longer in the middle of the double page.", label);
        case RelationKind::EqualGaps:
            return fmt::format("The gaps between pieces {} are no longer equal.",
                               numbersText(relation.pieces));
        case RelationKind::CentredTogether:
            return fmt::format("The middles of pieces {} are no longer in line {}.",
                               numbersText(relation.pieces), wayName(relation));
    }
    return {};
}

}  // namespace matwright::carry
