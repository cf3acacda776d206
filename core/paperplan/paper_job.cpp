// SPDX-License-Identifier: MIT
#include "core/paperplan/paper_job.h"

#include <algorithm>
#include <cmath>

namespace matwright {

namespace {

class JobBuilder {
  public:
    JobBuilder(std::span<const PaperPiece> pieces, std::span<const PaperOnHand> onHand,
               const PaperPlanOptions& options)
        : m_pieces(pieces), m_onHand(onHand), m_options(options) {}

    PaperJob run() {
        for (const PaperPiece& piece : m_pieces) {
            addPaper(piece.paper);
        }
        for (const PaperOnHand& paper : m_onHand) {
            lookAt(paper);
        }
        for (std::size_t i = 0; i < m_pieces.size(); ++i) {
            addPiece(i);
        }
        for (const PaperOnHand& paper : m_onHand) {
            addSheets(paper);
        }
        for (std::size_t i = 0; i < m_job.papers.size(); ++i) {
            for (const Size size : m_options.toBuy) {
                const CutSheet sheet{
                    size, std::nullopt, sheetPrice(size, true), {}, static_cast<int>(i)};
                addSheet(sheet, ToBuy{});
            }
        }
        for (std::size_t i = 0; i < m_pieces.size(); ++i) {
            addMiddle(i);
        }
        return std::move(m_job);
    }

  private:
    void addPaper(const std::string& words) {
        const std::string key = paperKey(words);
        if (!key.empty() && m_numbers.emplace(key, std::ssize(m_job.papers)).second) {
            m_job.papers.push_back({words, false, false, PaperOnHand().colour});
        }
    }

    // -1 where nothing is to be cut from it.
    int numberOf(const std::string& words) const {
        const auto found = m_numbers.find(paperKey(words));
        return found == m_numbers.end() ? -1 : static_cast<int>(found->second);
    }

    void lookAt(const PaperOnHand& paper) {
        const int number = numberOf(paper.name);
        if (number < 0) {
            return;
        }
        JobPaper& known = m_job.papers[static_cast<std::size_t>(number)];
        if (!known.isOnHand) {
            known.name = paper.name;
            known.colour = paper.colour;
            known.isOnHand = true;
        }
        known.hasUp = known.hasUp || paper.pattern == PaperPattern::HasUp;
    }

    void addPiece(std::size_t index) {
        const PaperPiece& piece = m_pieces[index];
        const int paper = numberOf(piece.paper);
        if (paper < 0) {
            return;
        }
        const bool mayTurn = !m_job.papers[static_cast<std::size_t>(paper)].hasUp;
        const Size size = mayTurn && piece.size.isUpright() ? piece.size.turned() : piece.size;
        const CutPiece cut{size, 0, mayTurn, paper};
        auto kind = std::ranges::find_if(m_job.pieces, [&](const PieceKindOfJob& other) {
            return other.cut.paper == paper && other.cut.size == size;
        });
        if (kind == m_job.pieces.end()) {
            kind = m_job.pieces.insert(kind, {cut, {}});
        }
        ++kind->cut.count;
        kind->members.push_back(index);
    }

    void addSheet(const CutSheet& sheet, const PaperSource& source) {
        auto kind = std::ranges::find_if(m_job.sheets, [&](const SheetKindOfJob& other) {
            return other.cut.paper == sheet.paper && other.cut.size == sheet.size &&
                   other.cut.price == sheet.price;
        });
        if (kind == m_job.sheets.end()) {
            m_job.sheets.push_back({sheet, {source}});
        } else if (kind->cut.atHand) {
            ++*kind->cut.atHand;
            kind->members.push_back(source);
        }
    }

    void addSheets(const PaperOnHand& paper) {
        const int number = numberOf(paper.name);
        const std::int64_t price =
            paper.kind == PaperKind::Scrap ? scrapPrice : sheetPrice(paper.size, false);
        // More than one a piece are never needed.
        const int most = std::min(paper.count, static_cast<int>(m_pieces.size()));
        for (int i = 0; number >= 0 && i < most; ++i) {
            addSheet({paper.size, 1, price, {}, number}, FromHand{paper.id});
        }
    }

    void addMiddle(std::size_t index) {
        const PaperPiece& piece = m_pieces[index];
        const int number = numberOf(piece.paper);
        if (piece.middle && number >= 0) {
            addSheet({piece.middle->size(), 1, middlePrice, {}, number}, FromMiddle{index});
        }
    }

    std::span<const PaperPiece> m_pieces;
    std::span<const PaperOnHand> m_onHand;
    const PaperPlanOptions& m_options;
    std::map<std::string, std::ptrdiff_t> m_numbers;
    PaperJob m_job;
};

// How many sheets of each kind the plan takes.
std::vector<int> sheetsTaken(const PaperJob& job, const CutPlan& plan) {
    std::vector<int> taken(job.sheets.size());
    for (const SheetPlan& sheet : plan.sheets) {
        ++taken[static_cast<std::size_t>(sheet.sheet)];
    }
    return taken;
}

// Pieces that stay uncut, of each kind those first whose middles are of no use.
std::vector<bool> uncutPieces(const PaperJob& job, const CutPlan& plan,
                              std::span<const PaperPiece> pieces) {
    std::vector<bool> uncut(pieces.size());
    for (std::size_t kind = 0; kind < job.pieces.size(); ++kind) {
        std::vector<std::size_t> members = job.pieces[kind].members;
        std::ranges::stable_partition(
            members, [&](std::size_t member) { return !pieces[member].middle.has_value(); });
        for (int i = 0; i < plan.uncut[kind]; ++i) {
            uncut[members[static_cast<std::size_t>(i)]] = true;
        }
    }
    return uncut;
}

}  // namespace

std::int64_t sheetPrice(Size size, bool isBought) {
    const double squareInches = size.width.toInches() * size.height.toInches();
    const std::int64_t price = std::llround(squareInches * 100 / 144);
    return std::max<std::int64_t>(price, 10) * (isBought ? 100 : 1);
}

CutJob PaperJob::cutJob(const CutRules& rules) const {
    CutJob job;
    job.rules = rules;
    for (const PieceKindOfJob& kind : pieces) {
        job.pieces.push_back(kind.cut);
    }
    for (const SheetKindOfJob& kind : sheets) {
        job.sheets.push_back(kind.cut);
    }
    return job;
}

PaperJob paperJob(std::span<const PaperPiece> pieces, std::span<const PaperOnHand> onHand,
                  const PaperPlanOptions& options) {
    return JobBuilder(pieces, onHand, options).run();
}

bool withdrawMiddles(PaperJob& job, const CutPlan& plan, std::span<const PaperPiece> pieces) {
    const std::vector<bool> uncut = uncutPieces(job, plan, pieces);
    const std::vector<int> taken = sheetsTaken(job, plan);
    bool tooMany = false;
    for (std::size_t kind = 0; kind < job.sheets.size(); ++kind) {
        SheetKindOfJob& sheets = job.sheets[kind];
        std::erase_if(sheets.members, [&](const PaperSource& source) {
            const auto* middle = std::get_if<FromMiddle>(&source);
            return middle && uncut[middle->piece];
        });
        if (sheets.cut.atHand) {
            sheets.cut.atHand = static_cast<int>(sheets.members.size());
            tooMany = tooMany || taken[kind] > *sheets.cut.atHand;
        }
    }
    return tooMany;
}

}  // namespace matwright
