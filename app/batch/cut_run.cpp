// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <ostream>
#include <set>
#include <system_error>

#include "app/batch/commands.h"
#include "app/batch/cut_outputs.h"
#include "app/batch/files.h"
#include "core/pagefile/page_file.h"
#include "core/paperplan/plan_key.h"

namespace matwright::app {

namespace {

// A sketch file is read as a page without photos.
std::expected<std::vector<PaperPage>, int> readPages(const CutCommand& command, BatchPorts& ports) {
    std::vector<PaperPage> pages;
    std::set<std::filesystem::path> seen;
    for (const std::filesystem::path& path : command.pages) {
        std::error_code unknown;
        const std::filesystem::path file = std::filesystem::weakly_canonical(path, unknown);
        if (!seen.insert(unknown ? path : file).second) {
            complain(ports, path, "This page is named twice; it is planned once.");
            continue;
        }
        Result<LoadedPage> loaded = loadPage(ports.files, path);
        if (!loaded) {
            return std::unexpected(fail(ports, InputRefused, loaded.error()));
        }
        for (const std::string& warning : loaded->warnings) {
            complain(ports, path, warning);
        }
        Sketch& sketch = loaded->making.sketch;
        const std::string name = sketch.name.empty() ? path.stem().stem().string() : sketch.name;
        pages.push_back({name, std::move(sketch), {}});
        for (const auto& [words, look] : loaded->making.work.papers) {
            pages.back().colours.emplace(words, look.colour);
        }
    }
    return pages;
}

// A list that is not there yet is an empty one, and is not made only to be looked at.
std::expected<std::vector<PaperOnHand>, int> papersOnHand(const CutCommand& command,
                                                          BatchPorts& ports) {
    std::error_code unknown;
    if (!command.takeOff && !std::filesystem::exists(storeOf(command.papers, ports), unknown)) {
        return std::vector<PaperOnHand>();
    }
    auto store = openPapers(command.papers, ports);
    if (!store) {
        return std::unexpected(store.error());
    }
    Result<std::vector<PaperOnHand>> list = store->list();
    if (!list) {
        return std::unexpected(fail(ports, InputRefused, list.error()));
    }
    return std::move(*list);
}

std::string titleOf(const std::vector<PaperPage>& pages) {
    return pages.size() == 1 ? pages.front().name
                             : fmt::format("{} and {} more", pages.front().name, pages.size() - 1);
}

int tellTakenOff(const std::optional<PapersChange>& before, BatchPorts& ports) {
    const std::string when =
        before ? fmt::format(" on {} UTC ({})", before->when, before->label) : std::string();
    complain(ports, {},
             fmt::format("These papers were taken off the list already{}. Nothing was changed; "
                         "--again takes them off once more.",
                         when));
    return Findings;
}

int takeOff(const CutCommand& command, const PaperPlan& plan, std::span<const PaperOnHand> onHand,
            const std::string& title, BatchPorts& ports) {
    auto store = openPapers(command.papers, ports);
    if (!store) {
        return store.error();
    }
    const Result<std::optional<PapersChange>> before = store->lastCut(plan.key);
    if (!before) {
        return fail(ports, CouldNotWrite, before.error());
    }
    const PapersCut cut = papersCut(plan, onHand, "Cut papers for " + title,
                                    cutName(plan.key, command.again ? *before : std::nullopt));
    if (*before && !command.again) {
        return tellTakenOff(*before, ports);
    }
    const auto done = store->cut(cut);
    if (!done) {
        return fail(ports, CouldNotWrite, done.error());
    }
    if (!*done) {
        return tellTakenOff(store->lastCut(plan.key).value_or(std::nullopt), ports);
    }
    int sheets = 0;
    for (const PapersCut::Taken& taken : cut.taken) {
        sheets += taken.count;
    }
    int scraps = 0;
    for (const PaperOnHand& scrap : cut.putBack) {
        scraps += scrap.count;
    }
    // Beside JSON the sentence would be in the way.
    (command.papers.json ? ports.err : ports.out)
        << fmt::format("Took {} {} off the list and put {} {} back.\n", sheets,
                       sheets == 1 ? "sheet" : "sheets", scraps, scraps == 1 ? "scrap" : "scraps");
    return Done;
}

int writeWhatIsAsked(const CutCommand& command, const PaperPlan& plan, const std::string& title,
                     BatchPorts& ports) {
    int code = Done;
    if (command.pdf) {
        code = writeCutPdf(command, plan, "Cutting plan for " + title, ports);
    }
    if (code == Done && command.svgFolder) {
        code = writeCutSvgs(*command.svgFolder, plan, ports);
    }
    return code;
}

}  // namespace

int runCut(const CutCommand& command, BatchPorts& ports) {
    if (command.pdf && !hasSuffix(*command.pdf, ".pdf")) {
        return refuseSuffix(*command.pdf, ".pdf", ports);
    }
    const auto pages = readPages(command, ports);
    if (!pages) {
        return pages.error();
    }
    const auto onHand = papersOnHand(command, ports);
    if (!onHand) {
        return onHand.error();
    }
    PaperPlanOptions options = command.options;
    options.scale = command.scale.value_or(naturalScale(pages->front().sketch));
    if (command.buyNothing) {
        options.toBuy.clear();
    }
    const Result<PaperPlan> plan = planPapers(*pages, *onHand, options);
    if (!plan) {
        return fail(ports, WrongUse, plan.error());
    }
    const std::string title = titleOf(*pages);
    ports.out << (command.papers.json ? textOf(cutJson(*plan)) + '\n' : cutText(*plan));
    if (const int code = writeWhatIsAsked(command, *plan, title, ports); code != Done) {
        return code;
    }
    if (command.takeOff && !plan->sheets.empty()) {
        const int code = takeOff(command, *plan, *onHand, title, ports);
        if (code != Done) {
            return code;
        }
    }
    return plan->notCut.empty() && plan->needPaper.empty() ? Done : Findings;
}

}  // namespace matwright::app
