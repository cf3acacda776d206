// SPDX-License-Identifier: MIT
#include "core/paperplan/paper_sheets.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/paperplan/plan_words.h"

namespace matwright {

namespace {

// Where a piece of the plan is cut.
struct CutPlace {
    std::size_t sheet = 0;
    int part = 0;
};

// The middle of a mat where the mat lies on its sheet; a mat that lies turned has been given a
// quarter turn clockwise.
Rect middleOnSheet(const PaperPiece& mat, const CutPart& part) {
    Rect middle = *mat.middle;
    if (part.turned) {
        const Length height = mat.size.height;
        middle = {{height - middle.bottom(), height - middle.top()}, middle.x};
    }
    return middle.moved(part.area.topLeft());
}

std::vector<Size> usefulLeftovers(const SheetPlan& sheet, Length usefulSide) {
    std::vector<Size> sizes;
    const Length least = std::max(usefulSide, smallestPaperSide);
    for (const CutPart& part : sheet.parts) {
        const Size size = part.area.size();
        if (part.use == CutPart::Use::Leftover && size.width >= least && size.height >= least) {
            sizes.push_back(size);
        }
    }
    return sizes;
}

class SheetWriter {
  public:
    SheetWriter(const ToldApart& told, const PaperJob& job, std::span<const PaperPiece> pieces,
                std::span<const PaperOnHand> onHand, const PaperPlanOptions& options)
        : m_told(told),
          m_job(job),
          m_pieces(pieces),
          m_onHand(onHand),
          m_options(options),
          m_steps(stepsOf(told.plan, options.scale)) {}

    std::vector<PaperSheet> run() {
        for (std::size_t i = 0; i < m_told.plan.sheets.size(); ++i) {
            addSheet(i);
        }
        for (std::size_t i = 0; i < m_sheets.size(); ++i) {
            if (const auto* middle = std::get_if<FromMiddle>(&m_sheets[i].source)) {
                addKnifeCut(middle->piece, i);
            }
        }
        return std::move(m_sheets);
    }

  private:
    void addSheet(std::size_t index) {
        SheetPlan plan = m_told.plan.sheets[index];
        const CutSheet& cut = m_told.job.sheets[static_cast<std::size_t>(plan.sheet)];
        const JobPaper& paper = m_job.papers[static_cast<std::size_t>(cut.paper)];
        PaperSheet sheet;
        sheet.source = m_told.sources[index];
        sheet.paper = paper.name;
        sheet.leftovers = usefulLeftovers(plan, m_options.rules.usefulSide);
        PlannedSheet& planned = sheet.planned;
        planned.heading =
            fmt::format("Sheet {}: {}, {}{}", index + 1, paper.name,
                        sizeText(cut.size, m_options.scale), sourceText(sheet.source));
        planned.size = cut.size;
        planned.steps = m_steps[index];
        planned.scale = m_options.scale;
        planned.colour = paper.colour;
        planned.hasUp = paper.hasUp;
        addPieces(plan, index, planned);
        planned.plan = std::move(plan);
        planned.notes = notesOf(planned);
        m_sheets.push_back(std::move(sheet));
    }

    void addPieces(SheetPlan& plan, std::size_t sheet, PlannedSheet& planned) {
        for (std::size_t i = 0; i < plan.parts.size(); ++i) {
            CutPart& part = plan.parts[i];
            if (part.use == CutPart::Use::Piece) {
                const std::size_t piece = m_told.jobPieces[static_cast<std::size_t>(part.piece)];
                part.piece = static_cast<int>(piece);
                planned.names.emplace(part.piece, m_pieces[piece].name);
                m_places[piece] = {sheet, static_cast<int>(i)};
            }
        }
    }

    std::string sourceText(const PaperSource& source) const {
        if (const auto* hand = std::get_if<FromHand>(&source)) {
            const auto entry = std::ranges::find(m_onHand, hand->id, &PaperOnHand::id);
            return entry != m_onHand.end() && entry->kind == PaperKind::Scrap ? ", a scrap" : "";
        }
        if (const auto* middle = std::get_if<FromMiddle>(&source)) {
            const auto place = m_places.find(middle->piece);
            const std::string& name = m_pieces[middle->piece].name;
            return place == m_places.end()
                       ? fmt::format(", the middle of {}", name)
                       : fmt::format(", the middle of {} on sheet {}: {}", letterAt(place->second),
                                     place->second.sheet + 1, name);
        }
        return ", to buy";
    }

    std::string letterAt(const CutPlace& place) const {
        return partLetters(m_told.plan.sheets[place.sheet])[static_cast<std::size_t>(place.part)];
    }

    std::vector<std::string> notesOf(const PlannedSheet& planned) const {
        std::vector<std::string> notes;
        const std::vector<std::string> letters = partLetters(planned.plan);
        for (std::size_t i = 0; i < letters.size(); ++i) {
            const CutPart& part = planned.plan.parts[i];
            if (part.use != CutPart::Use::Piece) {
                continue;
            }
            const PaperPiece& piece = m_pieces[static_cast<std::size_t>(part.piece)];
            for (const std::string& said : pieceSentences(piece, planned.hasUp)) {
                notes.push_back(fmt::format("{}: {}", letters[i], said));
            }
        }
        return notes;
    }

    void addKnifeCut(std::size_t mat, std::size_t sheet) {
        const CutPlace place = m_places.at(mat);
        PlannedSheet& planned = m_sheets[place.sheet].planned;
        const CutPart& part = planned.plan.parts[static_cast<std::size_t>(place.part)];
        planned.knifeCuts.push_back({place.part, middleOnSheet(m_pieces[mat], part),
                                     fmt::format("it is sheet {}", sheet + 1)});
    }

    const ToldApart& m_told;
    const PaperJob& m_job;
    std::span<const PaperPiece> m_pieces;
    std::span<const PaperOnHand> m_onHand;
    const PaperPlanOptions& m_options;
    std::vector<SheetSteps> m_steps;
    std::map<std::size_t, CutPlace> m_places;  // by piece of the plan
    std::vector<PaperSheet> m_sheets;
};

}  // namespace

std::vector<PaperSheet> paperSheets(const ToldApart& told, const PaperJob& job,
                                    std::span<const PaperPiece> pieces,
                                    std::span<const PaperOnHand> onHand,
                                    const PaperPlanOptions& options) {
    return SheetWriter(told, job, pieces, onHand, options).run();
}

}  // namespace matwright
