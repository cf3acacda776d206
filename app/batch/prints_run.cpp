// SPDX-License-Identifier: MIT
#include "app/batch/prints_run.h"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>
#include <set>
#include <tuple>

#include "app/batch/commands.h"
#include "app/batch/files.h"
#include "app/batch/json_values.h"
#include "app/batch/table.h"
#include "app/prints/double_check_pdf.h"
#include "core/library/names.h"
#include "core/library/printable.h"
#include "core/measure/length_text.h"
#include "core/photo/photo_source.h"
#include "core/photo/photo_words.h"
#include "core/prints/on_all_cores.h"
#include "core/prints/print_names.h"
#include "core/prints/print_notes.h"
#include "core/prints/rendering.h"
#include "core/prints/within_memory.h"

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

Error taken(const std::filesystem::path& file) {
    return {ErrorCode::WriteFailed,
            "There is a file of this name already, and it stays as it is. Choose another folder, "
            "or write over it with --replace.",
            file.string()};
}

// Why nothing may be written there; the name is looked at again when it is.
std::optional<Error> findInTheWay(const Making& making, const std::filesystem::path& file,
                                  bool replace) {
    if (isPhotoOf(making, file)) {
        return Error{ErrorCode::WriteFailed,
                     "A photo of the page has the name of this print. Choose another folder.",
                     file.string()};
    }
    std::error_code ignored;
    if (!replace && std::filesystem::exists(std::filesystem::symlink_status(file, ignored))) {
        return taken(file);
    }
    return std::nullopt;
}

Result<void> written(const Sheet& sheet, std::string_view bytes, bool replace, FileStore& files) {
    if (replace) {
        return files.replace(sheet.file, bytes);
    }
    const Result<bool> created = files.create(sheet.file, bytes);
    if (!created) {
        return std::unexpected(created.error());
    }
    return *created ? Result<void>() : std::unexpected(taken(sheet.file));
}

Result<void> make(const PrintRun& run, Sheet& sheet, const PrintsCommand& command,
                  FileStore& files) {
    if (std::optional<Error> inTheWay = findInTheWay(run.making, sheet.file, command.replace)) {
        return std::unexpected(*std::move(inTheWay));
    }
    const Result<std::string> bytes = made(run, sheet.gang, command.options);
    if (!bytes) {
        sheet.isPhotoAtFault = bytes.error().code != ErrorCode::WriteFailed;
        return std::unexpected(bytes.error());
    }
    return written(sheet, *bytes, command.replace, files);
}

void makeAll(PrintRun& run, const PrintsCommand& command, FileStore& files) {
    std::ignore = onAllCores(run.sheets.size(), [&](std::size_t i) {
        Sheet& sheet = run.sheets[i];
        const Result<void> done = withinMemory([&] { return make(run, sheet, command, files); });
        if (!done) {
            sheet.failure = done.error();
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

// The photos' sizes as they are; those that cannot be read keep what is remembered, and say so when
// they are printed.
void lookAtPhotos(Making& making) {
    for (const auto& entry : making.work.placements) {
        Photo& photo = making.work.photos.at(entry.second.photo);
        if (const auto facts = photoFacts(photo.path)) {
            photo.upright = facts->upright;
        }
    }
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
    auto making = readPage(command.page, ports);
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
    lookAtPhotos(run.making);
    run.prints = printsOf(run.making, command.options);
    run.sheets = sheetsOf(run.prints, command);
    for (const std::string& note : printNotes(run.making, command.options, command.ganged)) {
        complain(ports, command.page, note);
    }
    makeAll(run, command, ports.files);
    return tell(run, command.json, ports);
}

int runDoubleCheck(const DoubleCheckCommand& command, BatchPorts& ports) {
    if (!hasSuffix(command.output, ".pdf")) {
        return refuseSuffix(command.output, ".pdf", ports);
    }
    auto making = readPage(command.page, ports);
    if (!making) {
        return making.error();
    }
    const std::size_t prints = printsOf(*making, command.options).size();
    if (prints == 0) {
        return fail(ports, InputRefused,
                    {ErrorCode::Unsupported,
                     "No slot of this page has a photo, so there is nothing to look over.",
                     command.page.string()});
    }
    lookAtPhotos(*making);
    ports.startPainting();
    const auto pdf =
        doubleCheckPdf(*making, command.options, command.sheet->size, naturalScale(making->sketch));
    if (!pdf) {
        return fail(ports, CouldNotWrite,
                    {pdf.error().code, pdf.error().sentence, command.output.string()});
    }
    return writeResult(
        command.page, command.output, {pdf->constData(), static_cast<std::size_t>(pdf->size())},
        fmt::format("{} print{} to look over", prints, prints == 1 ? "" : "s"), ports);
}

}  // namespace matwright::app
