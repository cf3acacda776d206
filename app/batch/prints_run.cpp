// SPDX-License-Identifier: MIT
#include "app/batch/prints_run.h"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>
#include <set>

#include "app/batch/files.h"
#include "app/batch/json_values.h"
#include "app/batch/table.h"
#include "core/library/names.h"
#include "core/library/printable.h"
#include "core/measure/length_text.h"
#include "core/pagefile/page_file.h"
#include "core/photo/photo_words.h"
#include "core/prints/on_all_cores.h"
#include "core/prints/print_names.h"
#include "core/prints/rendering.h"

namespace matwright::app {

namespace {

// A file to be made, and what became of it.
struct Sheet {
    Gang gang;
    std::filesystem::path file;
    std::optional<Error> failure;
    bool isPhotoAtFault = false;
};

struct PrintRun {
    Making making;
    std::vector<Print> prints;
    std::vector<Sheet> sheets;

    const Photo& photoOf(PhotoId id) const { return making.work.photos.at(id); }
};

std::vector<Sheet> sheetsOf(const std::vector<Print>& prints, const PrintsCommand& command) {
    std::vector<Gang> gangs;
    if (command.ganged) {
        gangs = simpleGangs(prints);
    } else {
        for (std::size_t i = 0; i < prints.size(); ++i) {
            gangs.push_back({prints[i].paper, {{i, {}, false}}});
        }
    }
    std::vector<Sheet> sheets;
    std::set<std::string> taken;  // two long names may lose what sets them apart
    for (Gang& gang : gangs) {
        const std::string stem = fileStemOf(gang, prints);
        std::string name;
        for (int number = 1; name.empty() || !taken.insert(name).second; ++number) {
            name = numberedFileName(stem, number, suffixOf(command.options.format));
        }
        sheets.push_back({std::move(gang), command.folder / name, std::nullopt, false});
    }
    return sheets;
}

// A print alone keeps its trim and bleed boxes in a PDF.
Result<std::string> made(const PrintRun& run, const Gang& gang, const PrintOptions& options) {
    if (gang.places.size() == 1) {
        const Print& print = run.prints[gang.places.front().print];
        return printFile(print, run.photoOf(print.photo), options);
    }
    return gangFile(
        gang, run.prints, [&](PhotoId id) -> const Photo& { return run.photoOf(id); }, options);
}

// Originals are never written over.
bool isPhotoOf(const Making& making, const std::filesystem::path& file) {
    return std::ranges::any_of(making.work.photos, [&](const auto& entry) {
        std::error_code ignored;
        return std::filesystem::equivalent(entry.second.path, file, ignored);
    });
}

void makeAll(PrintRun& run, const PrintOptions& options, FileStore& files) {
    onAllCores(run.sheets.size(), [&](std::size_t i) {
        Sheet& sheet = run.sheets[i];
        const Result<std::string> bytes = made(run, sheet.gang, options);
        if (!bytes) {
            sheet.failure = bytes.error();
            sheet.isPhotoAtFault = bytes.error().code != ErrorCode::WriteFailed;
            return;
        }
        if (isPhotoOf(run.making, sheet.file)) {
            sheet.failure =
                Error{ErrorCode::WriteFailed,
                      "A photo of the page has the name of this print. Choose another folder.",
                      sheet.file.string()};
            return;
        }
        if (const Result<void> written = files.replace(sheet.file, *bytes); !written) {
            sheet.failure = written.error();
        }
    });
}

double ppiOf(const Print& print, const Photo& photo) {
    return effectivePpi(print.crop, photo.upright, print.window);
}

Json asJson(const PrintRun& run, const Sheet& sheet) {
    Json prints = Json::array();
    for (const Gang::Place& place : sheet.gang.places) {
        const Print& print = run.prints[place.print];
        const Photo& photo = run.photoOf(print.photo);
        prints.push_back({{"slot", pieceNumber(run.making.sketch, print.slot)},
                          {"name", print.name},
                          {"photo", printablePath(photo.path)},
                          {"paper", app::json(print.paper)},
                          {"trim", app::json(print.trim.size())},
                          {"ppi", ppiOf(print, photo)},
                          {"loss", lossOf(print.crop, photo.upright, print.window)}});
    }
    Json json{{"file", printablePath(sheet.file.native())},
              {"sheet", app::json(sheet.gang.sheet)},
              {"prints", std::move(prints)},
              {"failure", nullptr}};
    if (sheet.failure) {
        json["failure"] = sheet.failure->text();
    }
    return json;
}

std::string tableOf(const PrintRun& run) {
    Table table({"Print", "Size", "Sharpness", "Cut off", "File"}, {3});
    for (const Sheet& sheet : run.sheets) {
        for (const Gang::Place& place : sheet.gang.places) {
            const Print& print = run.prints[place.print];
            const Photo& photo = run.photoOf(print.photo);
            table.addRow(
                {printablePath(print.name), naturalSizeText(print.paper),
                 ppiText(ppiOf(print, photo)),
                 fmt::format("{:.1f} %", 100 * lossOf(print.crop, photo.upright, print.window)),
                 sheet.failure ? "not made" : printablePath(sheet.file.filename().native())});
        }
    }
    return table.text();
}

std::expected<Making, int> readPageFile(const std::filesystem::path& input, BatchPorts& ports) {
    Result<LoadedPage> loaded = loadPage(ports.files, std::filesystem::absolute(input));
    if (!loaded) {
        return std::unexpected(fail(ports, InputRefused, loaded.error()));
    }
    for (const std::string& warning : loaded->warnings) {
        complain(ports, input, warning);
    }
    return std::move(loaded->making);
}

int tell(const PrintRun& run, bool asJsonText, BatchPorts& ports) {
    int code = Done;
    for (const Sheet& sheet : run.sheets) {
        if (sheet.failure) {
            const ExitCode kind = sheet.isPhotoAtFault ? InputRefused : CouldNotWrite;
            code = std::max(code, fail(ports, kind, *sheet.failure));
        }
    }
    if (asJsonText) {
        Json all = Json::array();
        for (const Sheet& sheet : run.sheets) {
            all.push_back(asJson(run, sheet));
        }
        ports.out << textOf(all) << '\n';
    } else {
        ports.out << (run.prints.empty() ? "No slot of this page has a photo.\n" : tableOf(run));
    }
    return code;
}

}  // namespace

int runPrints(const PrintsCommand& command, BatchPorts& ports) {
    auto making = readPageFile(command.page, ports);
    if (!making) {
        return making.error();
    }
    std::error_code problem;
    std::filesystem::create_directories(command.folder, problem);
    if (problem) {
        return fail(ports, CouldNotWrite,
                    {ErrorCode::WriteFailed,
                     fmt::format("The folder cannot be made ({}).", problem.message()),
                     command.folder.string()});
    }
    PrintRun run{*std::move(making), {}, {}};
    run.prints = printsOf(run.making, command.options);
    run.sheets = sheetsOf(run.prints, command);
    makeAll(run, command.options, ports.files);
    return tell(run, command.json, ports);
}

}  // namespace matwright::app
