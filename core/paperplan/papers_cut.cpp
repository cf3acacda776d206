// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>

#include "core/paperplan/paper_plan.h"

namespace matwright {

namespace {

// The sheet of paper itself: of a middle the sheet that its mat is cut from.
const PaperSheet* wholeOf(const PaperSheet* sheet, std::span<const PaperSheet> sheets) {
    const auto* middle = std::get_if<FromMiddle>(&sheet->source);
    if (!middle) {
        return sheet;
    }
    const auto mat = static_cast<int>(middle->piece);
    const auto found = std::ranges::find_if(sheets, [&](const PaperSheet& other) {
        return std::ranges::any_of(other.planned.plan.parts, [&](const CutPart& part) {
            return part.use == CutPart::Use::Piece && part.piece == mat;
        });
    });
    // A mat is larger than what is cut from its middle, so this comes to an end.
    return found == sheets.end() ? sheet : wholeOf(&*found, sheets);
}

// An entry as the leftovers of this sheet look. Of a bought sheet no more is known than what it is
// called; what has an up among papers of that name was planned with an up.
PaperOnHand scrapOf(const PaperSheet& whole, std::span<const PaperOnHand> onHand) {
    const auto* hand = std::get_if<FromHand>(&whole.source);
    const std::string key = paperKey(whole.paper);
    const auto same = std::ranges::find_if(onHand, [&](const PaperOnHand& paper) {
        return hand ? paper.id == hand->id : paperKey(paper.name) == key;
    });
    PaperOnHand scrap;
    if (same != onHand.end()) {
        scrap = *same;
    } else {
        scrap.name = whole.paper;
        scrap.colour = whole.planned.colour;
    }
    if (!hand && whole.planned.hasUp) {
        scrap.pattern = PaperPattern::HasUp;
    }
    scrap.id = {};
    scrap.kind = PaperKind::Scrap;
    scrap.count = 1;
    return scrap;
}

void addScraps(PapersCut& cut, const PaperSheet& sheet, std::span<const PaperSheet> sheets,
               std::span<const PaperOnHand> onHand) {
    PaperOnHand scrap = scrapOf(*wholeOf(&sheet, sheets), onHand);
    if (scrap.name.size() > maxPaperNameBytes) {
        return;  // the plan's remarks say so
    }
    for (const Size size : sheet.leftovers) {
        scrap.size = size;
        const auto same = std::ranges::find_if(cut.putBack, [&](PaperOnHand other) {
            other.count = scrap.count;
            return other == scrap;
        });
        if (same == cut.putBack.end()) {
            cut.putBack.push_back(scrap);
        } else {
            ++same->count;
        }
    }
}

}  // namespace

PapersCut papersCut(const PaperPlan& plan, std::span<const PaperOnHand> onHand,
                    std::string_view label, std::string_view once) {
    PapersCut cut;
    cut.label = label;
    cut.once = once;
    std::map<PaperId, int> taken;
    for (const PaperSheet& sheet : plan.sheets) {
        if (const auto* hand = std::get_if<FromHand>(&sheet.source)) {
            ++taken[hand->id];
        }
        addScraps(cut, sheet, plan.sheets, onHand);
        for (const CutPart& part : sheet.planned.plan.parts) {
            if (part.use == CutPart::Use::Piece) {
                const PaperPiece& piece = plan.pieces[static_cast<std::size_t>(part.piece)];
                cut.pieces.push_back({piece.name, sheet.paper, part.area.size(), 1});
            }
        }
    }
    for (const auto& [id, count] : taken) {
        const auto entry = std::ranges::find(onHand, id, &PaperOnHand::id);
        cut.taken.push_back({id, count, entry == onHand.end() ? PaperOnHand() : *entry});
    }
    return cut;
}

}  // namespace matwright
