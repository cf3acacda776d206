// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <ostream>

#include "app/batch/cut_outputs.h"
#include "app/batch/files.h"
#include "app/batch/paper_commands.h"
#include "app/batch/table.h"
#include "core/drawing/colour_text.h"
#include "core/papers/known_papers.h"
#include "core/papers/papers_csv.h"

namespace matwright::app {

namespace {

std::string counted(std::size_t papers) {
    return papers == 1 ? "1 paper" : fmt::format("{} papers", papers);
}

std::string alreadyThere(const KnownPapers& sorted) {
    std::string text =
        fmt::format("{} on the list already and not added; --all adds {} all the same.",
                    sorted.known == 1 ? "1 paper is" : fmt::format("{} papers are", sorted.known),
                    sorted.known == 1 ? "it" : "them");
    if (sorted.otherCount > 0) {
        text += fmt::format(" Of {} the list has another number of sheets, which stays as it is.",
                            sorted.otherCount);
    }
    return text + '\n';
}

// In the unit each sheet is exact in.
std::string papersTable(const std::vector<PaperOnHand>& papers) {
    Table table({"Name", "Size", "Count", "Kind", "Pattern", "Sides", "Thickness"}, {2});
    for (const PaperOnHand& paper : papers) {
        table.addRow({paper.name, naturalSizeText(paper.size), fmt::to_string(paper.count),
                      paper.kind == PaperKind::Scrap ? "scrap" : "whole",
                      paper.pattern == PaperPattern::HasUp ? "up" : "",
                      paper.sides == PaperSides::Two ? "two" : "one", paper.thickness});
    }
    return table.text();
}

Json paperJson(const PaperOnHand& paper) {
    Json all{{"id", paper.id.value},
             {"name", paper.name},
             {"size", json(paper.size)},
             {"count", paper.count},
             {"scrap", paper.kind == PaperKind::Scrap},
             {"hasUp", paper.pattern == PaperPattern::HasUp},
             {"twoSided", paper.sides == PaperSides::Two},
             {"thickness", paper.thickness},
             {"colour", colourText(paper.colour)}};
    if (!paper.picture.empty()) {
        all["picture"] = paper.picture;
        all["pictureWidth"] = json(paper.pictureWidth);
    }
    return all;
}

// Takes back or brings back; `nothing` where there is none.
template <typename Act>
int turnBack(const PapersCommand& command, BatchPorts& ports, Act act, const char* verb,
             const char* nothing) {
    auto store = openPapers(command, ports);
    if (!store) {
        return store.error();
    }
    const Result<std::optional<PapersChange>> done = act(*store);
    if (!done) {
        return fail(ports, CouldNotWrite, done.error());
    }
    if (!*done) {
        complain(ports, {}, nothing);
        return Findings;
    }
    ports.out << verb << ": " << (*done)->label << '\n';
    return Done;
}

}  // namespace

std::filesystem::path storeOf(const PapersCommand& command, const BatchPorts& ports) {
    return command.store.empty() ? ports.dataFolder / "papers.sqlite" : command.store;
}

std::expected<PapersStore, int> openPapers(const PapersCommand& command, BatchPorts& ports) {
    Result<PapersStore> store =
        PapersStore::open(std::filesystem::absolute(storeOf(command, ports)));
    if (!store) {
        return std::unexpected(fail(ports, InputRefused, store.error()));
    }
    return std::move(*store);
}

int runPapersList(const PapersCommand& command, BatchPorts& ports) {
    auto store = openPapers(command, ports);
    if (!store) {
        return store.error();
    }
    const Result<std::vector<PaperOnHand>> papers = store->list();
    if (!papers) {
        return fail(ports, InputRefused, papers.error());
    }
    if (command.json) {
        Json list = Json::array();
        for (const PaperOnHand& paper : *papers) {
            list.push_back(paperJson(paper));
        }
        ports.out << textOf({{"papers", std::move(list)}}) << '\n';
    } else {
        ports.out << (papers->empty() ? "There are no papers on hand.\n" : papersTable(*papers));
    }
    return Done;
}

int runPapersAdd(const PapersAddCommand& command, BatchPorts& ports) {
    if (const auto fault = findFault(command.paper)) {
        return fail(ports, WrongUse, *fault);
    }
    auto store = openPapers(command.papers, ports);
    if (!store) {
        return store.error();
    }
    if (const Result<PaperId> id = store->add(command.paper); !id) {
        return fail(ports, CouldNotWrite, id.error());
    }
    ports.out << fmt::format("Added {} × {}, {}.\n", command.paper.count, command.paper.name,
                             naturalSizeText(command.paper.size));
    return Done;
}

int runPapersImport(const PapersFileCommand& command, BatchPorts& ports) {
    const Result<std::string> text = ports.files.read(command.file, maxPapersCsvBytes);
    if (!text) {
        return fail(ports, InputRefused, text.error());
    }
    const Result<std::vector<PaperOnHand>> papers = readPapersCsv(*text);
    if (!papers) {
        return fail(ports, InputRefused,
                    {papers.error().code, papers.error().sentence, command.file.string()});
    }
    auto store = openPapers(command.papers, ports);
    if (!store) {
        return store.error();
    }
    const Result<std::vector<PaperOnHand>> list = store->list();
    if (!list) {
        return fail(ports, InputRefused, list.error());
    }
    KnownPapers sorted = command.all ? KnownPapers{*papers} : knownPapers(*papers, *list);
    if (sorted.known > 0) {
        ports.out << alreadyThere(sorted);
    }
    if (!sorted.fresh.empty()) {
        const auto ids = store->add(sorted.fresh, "Import " + counted(sorted.fresh.size()));
        if (!ids) {
            return fail(ports, CouldNotWrite, ids.error());
        }
    }
    ports.out << "Added " << counted(sorted.fresh.size()) << ".\n";
    return Done;
}

int runPapersExport(const PapersFileCommand& command, BatchPorts& ports) {
    if (!hasSuffix(command.file, ".csv")) {
        return refuseSuffix(command.file, ".csv", ports);
    }
    auto store = openPapers(command.papers, ports);
    if (!store) {
        return store.error();
    }
    const Result<std::vector<PaperOnHand>> papers = store->list();
    if (!papers) {
        return fail(ports, InputRefused, papers.error());
    }
    return writeNewFile(command.file, papersCsv(*papers), counted(papers->size()), ports);
}

int runPapersUndo(const PapersCommand& command, BatchPorts& ports) {
    return turnBack(
        command, ports, [](PapersStore& store) { return store.undo(); }, "Taken back",
        "There is no change to take back.");
}

int runPapersRedo(const PapersCommand& command, BatchPorts& ports) {
    return turnBack(
        command, ports, [](PapersStore& store) { return store.redo(); }, "Brought back",
        "There is no change to bring back.");
}

}  // namespace matwright::app
