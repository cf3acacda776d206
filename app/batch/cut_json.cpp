// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "app/batch/cut_outputs.h"

namespace matwright::app {

namespace {

Json piecesOf(const PlannedSheet& sheet) {
    Json pieces = Json::array();
    const std::vector<std::string> letters = partLetters(sheet.plan);
    for (std::size_t i = 0; i < letters.size(); ++i) {
        const CutPart& part = sheet.plan.parts[i];
        if (part.use == CutPart::Use::Piece) {
            pieces.push_back({{"letter", letters[i]},
                              {"name", pieceName(sheet, part.piece)},
                              {"size", json(part.area.size())},
                              {"left", json(part.area.left())},
                              {"top", json(part.area.top())},
                              {"turned", part.turned}});
        }
    }
    return pieces;
}

Json sheetJson(const PaperSheet& sheet, const PaperPlan& plan) {
    const PlannedSheet& planned = sheet.planned;
    Json all = Json::object();
    all["heading"] = planned.heading;
    if (const auto* hand = std::get_if<FromHand>(&sheet.source)) {
        all["source"] = "on hand";
        all["paperId"] = hand->id.value;
    } else if (const auto* middle = std::get_if<FromMiddle>(&sheet.source)) {
        all["source"] = "middle";
        all["middleOf"] = plan.pieces[middle->piece].name;
    } else {
        all["source"] = "to buy";
    }
    all["size"] = json(planned.size);
    all["pieces"] = piecesOf(planned);
    all["steps"] = stepSentences(planned);
    all["knifeCuts"] = Json::array();
    for (const KnifeCut& cut : planned.knifeCuts) {
        all["knifeCuts"].push_back(knifeSentence(planned, cut));
    }
    all["notes"] = planned.notes;
    all["leftovers"] = Json::array();
    for (const Size size : sheet.leftovers) {
        all["leftovers"].push_back(json(size));
    }
    return all;
}

}  // namespace

Json cutJson(const PaperPlan& plan) {
    Json all{{"bound", plan.bound}, {"provedCheapest", plan.provedCheapest}};
    all["sheets"] = Json::array();
    for (const PaperSheet& sheet : plan.sheets) {
        all["sheets"].push_back(sheetJson(sheet, plan));
    }
    all["toBuy"] = plan.toBuy;
    all["notCut"] = Json::array();
    for (const PaperNotCut& left : plan.notCut) {
        all["notCut"].push_back({{"name", plan.pieces[left.piece].name}, {"why", left.why}});
    }
    all["needPaper"] = Json::array();
    for (const std::size_t piece : plan.needPaper) {
        all["needPaper"].push_back(plan.pieces[piece].name);
    }
    all["remarks"] = plan.remarks;
    return all;
}

}  // namespace matwright::app
