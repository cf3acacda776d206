// SPDX-License-Identifier: MIT
#include "tests/core/paperplan/plan_laws.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include "core/sheets/plan_check.h"

namespace matwright::test {

namespace {

class Laws {
  public:
    Laws(const PaperPlan& plan, std::span<const PaperPage> pages,
         std::span<const PaperOnHand> onHand, const PaperPlanOptions& options)
        : m_plan(plan), m_pages(pages), m_onHand(onHand), m_options(options) {}

    std::vector<std::string> run() {
        m_broken = faultsOf(m_plan.plan, m_plan.job);
        everythingIsThere();
        for (std::size_t i = 0; i < m_plan.sheets.size(); ++i) {
            stepsGiveThePieces(i);
            comesFromSomewhere(i);
            goesBack(m_plan.sheets[i]);
        }
        everyPieceIsCutOnce();
        return std::move(m_broken);
    }

  private:
    void expect(bool good, const std::string& what) {
        if (!good) {
            m_broken.push_back(what);
        }
    }

    const Piece& pageItem(const PaperPiece& piece) const {
        return m_pages[piece.page].sketch.pieces.at(piece.piece);
    }

    // Every mat, strip and block stands in the list, in one piece or as two sides of the fold.
    void everythingIsThere() {
        std::map<std::tuple<std::size_t, PieceId, int>, int> found;
        for (const PaperPiece& piece : m_plan.pieces) {
            const int mat = piece.mat ? static_cast<int>(*piece.mat) : -1;
            found[{piece.page, piece.piece, mat}] += piece.side == FoldSide::Whole ? 2 : 1;
        }
        std::size_t wanted = 0;
        for (std::size_t page = 0; page < m_pages.size(); ++page) {
            for (const auto& [id, piece] : m_pages[page].sketch.pieces) {
                const int mats = static_cast<int>(piece.mats.size());
                const bool itself = piece.kind != PieceKind::PhotoSlot &&
                                    (piece.kind == PieceKind::Strip ||
                                     piece.kind == PieceKind::Block || !piece.paper.empty());
                for (int mat = itself ? -1 : 0; mat < mats; ++mat) {
                    ++wanted;
                    expect(
                        (found[{page, id, mat}] == 2),
                        fmt::format("page {}, piece {}, mat {} is not there", page, id.value, mat));
                }
            }
        }
        expect(found.size() == wanted, "there is more to cut than on the pages");
    }

    void stepsGiveThePieces(std::size_t index) {
        const PlannedSheet& sheet = m_plan.sheets[index].planned;
        const auto parts =
            carriedOut(sheet.steps, sheet.size, m_options.rules.kerf, SettingUsed::Exact);
        if (!parts) {
            m_broken.push_back(parts.error().text());
            return;
        }
        std::size_t pieces = 0;
        for (const CutOff& off : *parts) {
            const CutPart& part = sheet.plan.parts[static_cast<std::size_t>(off.part)];
            if (part.use != CutPart::Use::Piece) {
                continue;
            }
            ++pieces;
            const PaperPiece& piece = m_plan.pieces[static_cast<std::size_t>(part.piece)];
            ++m_cut[static_cast<std::size_t>(part.piece)];
            m_cutOn[static_cast<std::size_t>(part.piece)] = index;
            expect(off.size == piece.size || (!sheet.hasUp && off.size == piece.size.turned()),
                   fmt::format("{} comes out in another size", piece.name));
            expect(paperKey(piece.paper) == paperKey(m_plan.sheets[index].paper),
                   fmt::format("{} is cut from another paper", piece.name));
        }
        const auto wanted = std::ranges::count_if(
            sheet.plan.parts, [](const CutPart& part) { return part.use == CutPart::Use::Piece; });
        expect(std::cmp_equal(pieces, wanted), "the steps leave pieces uncut");
    }

    void comesFromSomewhere(std::size_t index) {
        const PaperSheet& sheet = m_plan.sheets[index];
        if (const auto* hand = std::get_if<FromHand>(&sheet.source)) {
            const auto entry = std::ranges::find(m_onHand, hand->id, &PaperOnHand::id);
            expect(entry != m_onHand.end() && ++m_taken[hand->id] <= entry->count &&
                       entry->size == sheet.planned.size &&
                       paperKey(entry->name) == paperKey(sheet.paper),
                   fmt::format("sheet {} is not on hand", index + 1));
        } else if (const auto* middle = std::get_if<FromMiddle>(&sheet.source)) {
            middleIsThere(index, middle->piece);
        } else {
            expect(std::ranges::find(m_options.toBuy, sheet.planned.size) != m_options.toBuy.end(),
                   "a sheet is to be bought in a size that is not offered");
        }
    }

    // The mat is cut before; the middle is hidden under the layer above by the glue edge, measured
    // from the sketch; it is cut out once, inside its mat.
    void middleIsThere(std::size_t index, std::size_t mat) {
        const PaperPiece& piece = m_plan.pieces[mat];
        const Piece& item = pageItem(piece);
        const std::string where = fmt::format("the middle of {}", piece.name);
        if (!piece.mat || !m_cutOn.contains(mat) || !item.mats[*piece.mat].gutted) {
            m_broken.push_back(where + " is not there");
            return;
        }
        expect(m_middles.insert(mat).second, where + " is used twice");
        const Rect cover = *piece.mat == 0 ? trimBox(item) : matBox(item, *piece.mat - 1);
        Size hidden = cover.expanded(-m_options.glueEdge).size();
        if (item.rotation.toMillidegrees() % 180'000 == 90'000) {
            hidden = hidden.turned();
        }
        expect(hidden == m_plan.sheets[index].planned.size, where + " has another size");
        const PlannedSheet& from = m_plan.sheets[m_cutOn[mat]].planned;
        std::size_t cuts = 0;
        for (const KnifeCut& cut : from.knifeCuts) {
            const CutPart& part = from.plan.parts[static_cast<std::size_t>(cut.part)];
            if (std::cmp_not_equal(part.piece, mat)) {
                continue;
            }
            ++cuts;
            expect(part.area.contains(cut.area), where + " sticks out of its mat");
            expect(cut.area.size() == (part.turned ? hidden.turned() : hidden),
                   where + " is cut out in another size");
        }
        expect(cuts == 1, where + " is not cut out once");
    }

    void goesBack(const PaperSheet& sheet) {
        for (const Size size : sheet.leftovers) {
            expect(size.width >= m_options.rules.usefulSide &&
                       size.height >= m_options.rules.usefulSide,
                   "a leftover goes back that is of no use");
        }
    }

    void everyPieceIsCutOnce() {
        for (const PaperNotCut& left : m_plan.notCut) {
            ++m_cut[left.piece];
            expect(!left.why.empty(), "a piece is not cut and nobody knows why");
        }
        for (const std::size_t piece : m_plan.needPaper) {
            ++m_cut[piece];
            expect(paperKey(m_plan.pieces[piece].paper).empty(),
                   "a piece has a paper and needs one");
        }
        for (std::size_t i = 0; i < m_plan.pieces.size(); ++i) {
            expect(m_cut[i] == 1,
                   fmt::format("{} is cut {} times", m_plan.pieces[i].name, m_cut[i]));
        }
    }

    const PaperPlan& m_plan;
    std::span<const PaperPage> m_pages;
    std::span<const PaperOnHand> m_onHand;
    const PaperPlanOptions& m_options;
    std::map<std::size_t, int> m_cut;
    std::map<std::size_t, std::size_t> m_cutOn;
    std::map<PaperId, int> m_taken;
    std::set<std::size_t> m_middles;
    std::vector<std::string> m_broken;
};

}  // namespace

std::vector<std::string> brokenPlanLaws(const PaperPlan& plan, std::span<const PaperPage> pages,
                                        std::span<const PaperOnHand> onHand,
                                        const PaperPlanOptions& options) {
    return Laws(plan, pages, onHand, options).run();
}

}  // namespace matwright::test
