// SPDX-License-Identifier: MIT
#include "app/batch/photo_options.h"

#include <map>

#include "app/batch/help.h"
#include "core/measure/length_text.h"

namespace matwright::app {

namespace {

// Opens the part on first use.
std::function<int()> withPhotos(BatchPorts& ports, std::function<int(PhotoCommands&)> run) {
    return [&ports, run = std::move(run)] {
        const Result<PhotoCommands*> commands =
            ports.photoCommands
                ? ports.photoCommands()
                : Result<PhotoCommands*>(std::unexpected(
                      Error{ErrorCode::NotFound, "This build has no part that reads photos.", ""}));
        return commands ? run(**commands) : fail(ports, InputRefused, commands.error());
    };
}

void addPhotos(CLI::App& app, PhotosCommand& photos, BatchPorts& ports, const AddCommand& add) {
    CLI::App* command =
        add(app, "photos", "What photos are good for: size, date, largest print", photosExamples,
            withPhotos(ports, [&](PhotoCommands& run) { return run.photos(photos, ports); }));
    command->add_option("PHOTO", photos.inputs, "Photo files")->required();
    command->add_flag("--json", photos.json, "As JSON");
}

void addPage(CLI::App& app, PageCommand& page, BatchPorts& ports, const AddCommand& add) {
    CLI::App* command =
        add(app, "page", "A page made from a sketch and a listing of photos", pageExamples,
            withPhotos(ports, [&](PhotoCommands& run) { return run.page(page, ports); }));
    command->add_option("LISTING", page.listing, "The listing, a JSON file")->required();
    addOutput(command, page.output, "The page; its name ends in .page.svg");
}

void addFormat(CLI::App* command, PrintOptions& options) {
    static const std::map<std::string, PrintFormat> formats = {{"jpeg", PrintFormat::Jpeg},
                                                               {"png", PrintFormat::Png},
                                                               {"tiff", PrintFormat::Tiff},
                                                               {"pdf", PrintFormat::Pdf}};
    command
        ->add_option_function<std::string>(
            "--format", [&](const std::string& word) { options.format = formats.at(word); },
            "jpeg, png, tiff or pdf")
        ->check(CLI::IsMember(std::vector<std::string>{"jpeg", "png", "tiff", "pdf"}))
        ->type_name("FORMAT")
        ->default_str("jpeg");
    command->add_option("--ppi", options.ppi, "Pixels an inch")
        ->check(CLI::Range(smallestPpi, largestPpi))
        ->type_name("N")
        ->capture_default_str();
    command->add_option("--quality", options.quality, "Of JPEG and PDF")
        ->check(CLI::Range(1, 100))
        ->type_name("N")
        ->capture_default_str();
}

void addBleed(CLI::App* command, PrintOptions& options) {
    command
        ->add_option_function<std::string>(
            "--bleed",
            [&options](const std::string& text) {
                const Result<Length> read = parseLength(text, Unit::Inch);
                if (!read || read->isNegative() || *read > Length::inches(1)) {
                    throw CLI::ValidationError(
                        "--bleed", read ? "It has to be 0 to 1 in." : read.error().sentence);
                }
                options.bleed = *read;
            },
            "Picture beyond the trim, on all sides")
        ->type_name("LENGTH");
}

void addPrints(CLI::App& app, PrintsCommand& prints, BatchPorts& ports, const AddCommand& add) {
    CLI::App* command =
        add(app, "prints", "Every print of a page as a file of the size it says", printsExamples,
            withPhotos(ports, [&](PhotoCommands& run) { return run.prints(prints, ports); }));
    command->add_option("PAGE", prints.page, "The page file (.page.svg)")->required();
    command->add_option("-o,--output", prints.folder, "The folder of the prints; made where needed")
        ->required()
        ->type_name("FOLDER");
    addFormat(command, prints.options);
    addBleed(command, prints.options);
    command->add_flag("--cut-marks", prints.options.cutMarks,
                      "Hairlines outside the trim, where there is room");
    command->add_flag("--keep-place", prints.options.keepPlace,
                      "Keep place of capture and serial numbers in JPEG files");
    command->add_flag("--replace", prints.replace,
                      "Write over files of the prints' names, as when prints are made anew");
    command->add_flag("--ganged", prints.ganged, "Two 3x4 on one 4x6 and the like");
    command->add_flag("--json", prints.json, "As JSON");
}

void addDoubleCheck(CLI::App& app, DoubleCheckCommand& check, BatchPorts& ports,
                    const AddCommand& add) {
    CLI::App* command =
        add(app, "double-check", "Every print of a page on a sheet to look over, as PDF",
            doubleCheckExamples,
            withPhotos(ports, [&](PhotoCommands& run) { return run.doubleCheck(check, ports); }));
    command->add_option("PAGE", check.page, "The page file (.page.svg)")->required();
    addOutput(command, check.output, "The result; its name ends in .pdf");
    addBleed(command, check.options);
    addSheet(command, check.sheet, "Paper of the sheets");
}

}  // namespace

void addPhotoCommands(CLI::App& app, PhotoCommandLines& lines, BatchPorts& ports,
                      const AddCommand& add) {
    addPhotos(app, lines.photos, ports, add);
    addPage(app, lines.page, ports, add);
    addPrints(app, lines.prints, ports, add);
    addDoubleCheck(app, lines.doubleCheck, ports, add);
    addPrintingCommands(app, lines.printing, ports, add,
                        [&ports](std::function<int(PhotoCommands&)> run) {
                            return withPhotos(ports, std::move(run));
                        });
}

}  // namespace matwright::app
