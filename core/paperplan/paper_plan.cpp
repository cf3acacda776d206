// SPDX-License-Identifier: MIT
#include "core/paperplan/paper_plan.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <chrono>

#include "core/paperplan/paper_sheets.h"
#include "core/paperplan/plan_key.h"
#include "core/paperplan/plan_words.h"
#include "core/sheets/plan_check.h"

namespace matwright {

namespace {

std::optional<Error> findFaultOf(const PaperPlanOptions& options) {
    if (options.glueEdge.isNegative() || options.glueEdge > Length::inches(10)) {
        return Error{ErrorCode::OutOfRange, "Give a glue edge of 0 to 10 in.", "glue edge"};
    }
    for (const Size size : options.toBuy) {
        PaperOnHand bought;
        bought.name = "sheet to buy";
        bought.size = size;
        if (auto fault = findFault(bought)) {
            return Error{ErrorCode::OutOfRange, fault->sentence, "sheet to buy"};
        }
    }
    return std::nullopt;
}

struct Planned {
    CutJob job;
    CutAnswer answer;
};

// Papers that are not on hand look as on the first page that says how.
void colourFromPages(PaperJob& job, std::span<const PaperPage> pages) {
    std::map<std::string, Colour> colours;
    for (const PaperPage& page : pages) {
        for (const auto& [words, colour] : page.colours) {
            colours.emplace(paperKey(words), colour);
        }
    }
    for (JobPaper& paper : job.papers) {
        const auto known = colours.find(paperKey(paper.name));
        if (!paper.isOnHand && known != colours.end()) {
            paper.colour = known->second;
        }
    }
}

// Plans until no middle is used whose mat is not cut; each time fewer are on offer. The time is for
// all of it.
Result<Planned> planKinds(PaperJob& job, std::span<const PaperPiece> pieces,
                          const PaperPlanOptions& options, const std::stop_token& stop,
                          const std::function<void(const PaperProgress&)>& progress) {
    const auto end = std::chrono::steady_clock::now() + options.limits.time;
    for (CutLimits limits = options.limits;;) {
        Planned planned{job.cutJob(options.rules), {}};
        const auto tell = [&](const CutProgress& now) {
            if (progress) {
                progress(paperProgress(now, planned.job));
            }
        };
        Result<CutAnswer> answer = planCuts(planned.job, limits, stop, tell);
        if (!answer) {
            return std::unexpected(answer.error());
        }
        planned.answer = std::move(*answer);
        if (!withdrawMiddles(job, planned.answer.plan, pieces)) {
            return planned;
        }
        limits.time = std::max(std::chrono::milliseconds(),
                               std::chrono::duration_cast<std::chrono::milliseconds>(
                                   end - std::chrono::steady_clock::now()));
    }
}

// A person who switched them on would look for them.
void tellIdleMiddles(PaperPlan& plan, const ToldApart& told) {
    std::vector<std::size_t> idle;
    for (std::size_t i = 0; i < plan.pieces.size(); ++i) {
        const bool isUsed = std::ranges::any_of(plan.sheets, [i](const PaperSheet& sheet) {
            return sheet.source == PaperSource(FromMiddle{i});
        });
        const bool isCut = std::ranges::find(told.uncut, i) == told.uncut.end();
        if (plan.pieces[i].middle && isCut && !isUsed && !paperKey(plan.pieces[i].paper).empty()) {
            idle.push_back(i);
        }
    }
    if (idle.size() == 1) {
        plan.remarks.push_back(fmt::format("The middle of {} stays in: it would save no sheet.",
                                           plan.pieces[idle.front()].name));
    } else if (!idle.empty()) {
        plan.remarks.push_back(
            fmt::format("The middles of {} mats stay in: they would save no sheet.", idle.size()));
    }
}

void tellWhatIsLeft(PaperPlan& plan, const ToldApart& told, const PaperJob& job, Scale scale) {
    const bool endedEarly = plan.endedByClock || plan.cancelled;
    for (std::size_t i = 0; i < plan.pieces.size(); ++i) {
        if (paperKey(plan.pieces[i].paper).empty()) {
            plan.needPaper.push_back(i);
        }
    }
    for (const std::size_t piece : told.uncut) {
        plan.notCut.push_back({piece, whyNotCut(plan.pieces[piece], job, scale, endedEarly)});
    }
    plan.toBuy = buyingLines(plan.sheets, scale);
    plan.remarks = planRemarks(job, plan.sheets);
    tellIdleMiddles(plan, told);
}

}  // namespace

std::vector<std::string> PaperPlan::buyLines() const {
    std::vector<std::string> lines;
    lines.reserve(toBuy.size());
    for (const std::string& line : toBuy) {
        lines.push_back("To buy: " + line);
    }
    return lines;
}

std::vector<std::string> PaperPlan::missingLines() const {
    std::vector<std::string> lines;
    lines.reserve(notCut.size() + needPaper.size());
    for (const PaperNotCut& left : notCut) {
        lines.push_back(fmt::format("Not cut: {}. {}", pieces[left.piece].name, left.why));
    }
    for (const std::size_t piece : needPaper) {
        lines.push_back(fmt::format("Needs a paper: {}", pieces[piece].name));
    }
    return lines;
}

std::vector<std::string> PaperPlan::summary() const {
    const char* const nothing =
        needPaper.empty() ? "Nothing is to be cut." : "Nothing can be cut yet.";
    std::vector<std::string> lines{bound.empty() ? nothing : bound + "."};
    for (const auto& part : {buyLines(), missingLines(), remarks}) {
        lines.insert(lines.end(), part.begin(), part.end());
    }
    return lines;
}

std::vector<PlannedSheet> PaperPlan::plannedSheets() const {
    std::vector<PlannedSheet> all;
    all.reserve(sheets.size());
    for (const PaperSheet& sheet : sheets) {
        all.push_back(sheet.planned);
    }
    return all;
}

Result<PaperPlan> planPapers(std::span<const PaperPage> pages, std::span<const PaperOnHand> onHand,
                             const PaperPlanOptions& options, const std::stop_token& stop,
                             const std::function<void(const PaperProgress&)>& progress) {
    if (auto fault = findFaultOf(options)) {
        return std::unexpected(*fault);
    }
    PaperPlan plan;
    plan.pieces = paperPieces(pages, options.glueEdge);
    plan.key = planKey(pages, plan.pieces);
    PaperJob kinds = paperJob(plan.pieces, onHand, options);
    colourFromPages(kinds, pages);
    const Result<Planned> planned = planKinds(kinds, plan.pieces, options, stop, progress);
    if (!planned) {
        return std::unexpected(planned.error());
    }
    const ToldApart told = toldApart(kinds, planned->answer.plan, options.rules, plan.pieces);
    assert(faultsOf(told.plan, told.job).empty());
    plan.sheets = paperSheets(told, kinds, plan.pieces, onHand, options);
    plan.provedCheapest = planned->answer.provedCheapest;
    plan.endedByClock = planned->answer.endedByClock;
    plan.cancelled = planned->answer.cancelled;
    tellWhatIsLeft(plan, told, kinds, options.scale);
    if (!told.job.pieces.empty()) {
        plan.bound = paperBound(planned->answer, planned->job, plan.sheets);
    }
    plan.job = told.job;
    plan.plan = told.plan;
    plan.jobPieces = told.jobPieces;
    return plan;
}

}  // namespace matwright
