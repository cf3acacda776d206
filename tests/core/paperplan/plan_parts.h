// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "core/paperplan/paper_plan.h"
#include "tests/core/paperplan/plan_laws.h"

namespace matwright::test {

// Small pages and papers, and their plan, which has kept the laws of plans.

constexpr Length in(std::int64_t whole) {
    return Length::inches(whole);
}

inline Piece blockOf(Size size, const std::string& paper) {
    Piece piece;
    piece.kind = PieceKind::Block;
    piece.size = size;
    piece.paper = paper;
    return piece;
}

inline Piece photoOn(Size size, const std::string& paper, bool gutted) {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.size = size;
    piece.printSize = size;
    piece.mats = {{Length::inches(0, 1, 4), {}, paper, gutted}};
    return piece;
}

inline PaperPage pageWith(std::vector<Piece> pieces) {
    PaperPage page{"Holiday", blankSketch()};
    for (Piece& piece : pieces) {
        const PieceId id = nextId(page.sketch);
        page.sketch.order.push_back(id);
        page.sketch.pieces.emplace(id, std::move(piece));
    }
    return page;
}

inline PaperOnHand sheetOf(std::int64_t id, const std::string& name, Size size, int count = 1,
                           PaperKind kind = PaperKind::WholeSheet) {
    PaperOnHand paper;
    paper.id = {id};
    paper.name = name;
    paper.size = size;
    paper.count = count;
    paper.kind = kind;
    return paper;
}

inline PaperPlan planOf(const PaperPage& page, const std::vector<PaperOnHand>& onHand,
                        PaperPlanOptions options = {}) {
    const auto plan = planPapers(std::span(&page, 1), onHand, options);
    EXPECT_TRUE(plan) << plan.error().text();
    EXPECT_EQ(brokenPlanLaws(*plan, std::span(&page, 1), onHand, options),
              std::vector<std::string>());
    return *plan;
}

inline PaperPlanOptions nothingToBuy() {
    PaperPlanOptions options;
    options.toBuy.clear();
    return options;
}

}  // namespace matwright::test
