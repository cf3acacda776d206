// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>

#include "core/paperplan/paper_plan.h"
#include "core/template/text_block.h"

namespace matwright {

namespace {

// An entry as the leftovers of this sheet look.
PaperOnHand scrapOf(const PaperSheet& sheet, std::span<const PaperOnHand> onHand) {
    const auto* hand = std::get_if<FromHand>(&sheet.source);
    const std::string key = paperKey(sheet.paper);
    const auto same = std::ranges::find_if(onHand, [&](const PaperOnHand& paper) {
        return hand ? paper.id == hand->id : paperKey(paper.name) == key;
    });
    PaperOnHand scrap;
    if (same != onHand.end()) {
        scrap = *same;
    } else {
        // A page's words may be longer than a name in the list.
        scrap.name = shortened(sheet.paper, maxPaperNameBytes / 4 - 1);
        scrap.colour = sheet.planned.colour;
    }
    scrap.id = {};
    scrap.kind = PaperKind::Scrap;
    scrap.count = 1;
    return scrap;
}

void addScraps(PapersCut& cut, const PaperSheet& sheet, std::span<const PaperOnHand> onHand) {
    for (const Size size : sheet.leftovers) {
        PaperOnHand scrap = scrapOf(sheet, onHand);
        scrap.size = size;
        const auto same = std::ranges::find_if(cut.putBack, [&](PaperOnHand other) {
            other.count = scrap.count;
            return other == scrap;
        });
        if (same == cut.putBack.end()) {
            cut.putBack.push_back(std::move(scrap));
        } else {
            ++same->count;
        }
    }
}

}  // namespace

PapersCut papersCut(const PaperPlan& plan, std::span<const PaperOnHand> onHand,
                    std::string_view label) {
    PapersCut cut;
    cut.label = label;
    std::map<PaperId, int> taken;
    for (const PaperSheet& sheet : plan.sheets) {
        if (const auto* hand = std::get_if<FromHand>(&sheet.source)) {
            ++taken[hand->id];
        }
        addScraps(cut, sheet, onHand);
        for (const CutPart& part : sheet.planned.plan.parts) {
            if (part.use == CutPart::Use::Piece) {
                const PaperPiece& piece = plan.pieces[static_cast<std::size_t>(part.piece)];
                cut.pieces.push_back({piece.name, sheet.paper, part.area.size(), 1});
            }
        }
    }
    for (const auto& [id, count] : taken) {
        cut.taken.push_back({id, count});
    }
    return cut;
}

}  // namespace matwright
