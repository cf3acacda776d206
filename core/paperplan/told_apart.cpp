// SPDX-License-Identifier: MIT
#include <algorithm>
#include <deque>

#include "core/paperplan/paper_sheets.h"

namespace matwright {

namespace {

class TellingApart {
  public:
    TellingApart(const PaperJob& kinds, const CutPlan& kindsPlan, const CutRules& rules,
                 std::span<const PaperPiece> pieces)
        : m_kinds(kinds), m_plan(kindsPlan), m_pieces(pieces) {
        m_told.job.rules = rules;
    }

    ToldApart run() {
        addPieces();
        std::vector<std::size_t> nextSheet(m_kinds.sheets.size());
        for (const SheetPlan& sheet : m_plan.sheets) {
            const auto kind = static_cast<std::size_t>(sheet.sheet);
            const SheetKindOfJob& sheets = m_kinds.sheets[kind];
            const std::size_t member = sheets.cut.atHand ? nextSheet[kind]++ : 0;
            addSheet(sheet, sheets.cut, sheets.members[member]);
        }
        putInOrder();
        return std::move(m_told);
    }

  private:
    // Those that are cut first; those with a middle first of these.
    void addPieces() {
        m_free.resize(m_kinds.pieces.size());
        for (std::size_t kind = 0; kind < m_kinds.pieces.size(); ++kind) {
            std::vector<std::size_t> members = m_kinds.pieces[kind].members;
            std::ranges::stable_partition(
                members, [&](std::size_t member) { return !m_pieces[member].middle.has_value(); });
            const auto uncut = static_cast<std::size_t>(m_plan.uncut[kind]);
            for (std::size_t i = 0; i < members.size(); ++i) {
                CutPiece cut = m_kinds.pieces[kind].cut;
                cut.count = 1;
                cut.size = m_pieces[members[i]].size;
                m_told.plan.uncut.push_back(i < uncut ? 1 : 0);
                if (i < uncut) {
                    m_told.uncut.push_back(members[i]);
                } else {
                    m_free[kind].push_back(static_cast<int>(m_told.job.pieces.size()));
                }
                m_told.job.pieces.push_back(cut);
                m_told.jobPieces.push_back(members[i]);
            }
        }
    }

    void addSheet(SheetPlan sheet, CutSheet cut, const PaperSource& source) {
        cut.atHand = 1;
        sheet.sheet = static_cast<int>(m_told.job.sheets.size());
        for (CutPart& part : sheet.parts) {
            if (part.use != CutPart::Use::Piece) {
                continue;
            }
            std::deque<int>& free = m_free[static_cast<std::size_t>(part.piece)];
            part.piece = free.front();
            free.pop_front();
            const Size size = m_told.job.pieces[static_cast<std::size_t>(part.piece)].size;
            part.turned = part.area.size() != size;
        }
        m_told.job.sheets.push_back(cut);
        m_told.plan.sheets.push_back(std::move(sheet));
        m_told.sources.push_back(source);
    }

    bool isCutOn(std::size_t piece, const SheetPlan& sheet) const {
        return std::ranges::any_of(sheet.parts, [&](const CutPart& part) {
            return part.use == CutPart::Use::Piece &&
                   m_told.jobPieces[static_cast<std::size_t>(part.piece)] == piece;
        });
    }

    // A middle comes after the sheet its mat is cut from; papers that share mats stay together.
    void putInOrder() {
        std::vector<std::size_t> waiting(m_told.plan.sheets.size());
        for (std::size_t i = 0; i < waiting.size(); ++i) {
            waiting[i] = i;
        }
        std::vector<SheetPlan> sheets;
        std::vector<PaperSource> sources;
        while (!waiting.empty()) {
            const auto next = std::ranges::find_if(waiting, [&](std::size_t index) {
                const auto* middle = std::get_if<FromMiddle>(&m_told.sources[index]);
                return !middle || std::ranges::any_of(sheets, [&](const SheetPlan& done) {
                    return isCutOn(middle->piece, done);
                });
            });
            // A piece on a middle is smaller than the mat around it, so one is always ready.
            const auto at = next == waiting.end() ? waiting.begin() : next;
            sheets.push_back(m_told.plan.sheets[*at]);
            sources.push_back(m_told.sources[*at]);
            waiting.erase(at);
        }
        m_told.plan.sheets = std::move(sheets);
        m_told.sources = std::move(sources);
    }

    const PaperJob& m_kinds;
    const CutPlan& m_plan;
    std::span<const PaperPiece> m_pieces;
    std::vector<std::deque<int>> m_free;  // by kind: pieces of the job that are not placed yet
    ToldApart m_told;
};

}  // namespace

ToldApart toldApart(const PaperJob& job, const CutPlan& plan, const CutRules& rules,
                    std::span<const PaperPiece> pieces) {
    return TellingApart(job, plan, rules, pieces).run();
}

}  // namespace matwright
