// SPDX-License-Identifier: MIT
#include "app/batch/cut_outputs.h"

#include <fmt/format.h>

#include <system_error>

#include "app/batch/files.h"
#include "app/rendering/pdf.h"
#include "core/cutpicture/plan_pages.h"
#include "core/cutpicture/sheet_picture.h"
#include "core/drawing/svg.h"

namespace matwright::app {

namespace {

constexpr Size pictureBox{Length::inches(8), Length::inches(8)};

std::string sheetText(const PlannedSheet& sheet) {
    std::string text = sheet.heading + '\n';
    for (const std::string& line : pieceLines(sheet)) {
        text += "  " + line + '\n';
    }
    std::size_t number = 0;
    for (const std::string& sentence : stepSentences(sheet)) {
        text += fmt::format("  {}. {}\n", ++number, sentence);
    }
    for (const KnifeCut& cut : sheet.knifeCuts) {
        text += fmt::format("  {}. {}\n", ++number, knifeSentence(sheet, cut));
    }
    for (const std::string& note : sheet.notes) {
        text += "  " + note + '\n';
    }
    return text;
}

std::string countedSheets(std::size_t sheets) {
    return sheets == 1 ? "1 sheet" : fmt::format("{} sheets", sheets);
}

}  // namespace

std::string cutText(const PaperPlan& plan) {
    std::string text;
    for (const std::string& line : plan.summary()) {
        text += line + '\n';
    }
    for (const PaperSheet& sheet : plan.sheets) {
        text += '\n' + sheetText(sheet.planned);
    }
    return plan.sheets.empty() ? text : fmt::format("{}\n{}\n", text, bladeCaution);
}

int writeCutPdf(const CutCommand& command, const PaperPlan& plan, const std::string& title,
                BatchPorts& ports) {
    PlanPagesOptions options;
    options.paper = command.sheet->size;
    options.title = title;
    options.summary = plan.summary();
    std::vector<PdfPage> pages;
    const std::vector<PlannedSheet> sheets = plan.plannedSheets();
    for (Drawing& page : planPages(sheets, options)) {
        pages.push_back({std::move(page), options.paper, {}, {}});
    }
    ports.startPainting();
    const Result<QByteArray> pdf = pdfBytes(pages, QString::fromStdString(title));
    if (!pdf) {
        return fail(ports, CouldNotWrite,
                    {pdf.error().code, pdf.error().sentence, command.pdf->string()});
    }
    const std::string_view bytes(pdf->constData(), static_cast<std::size_t>(pdf->size()));
    const std::string count = countedSheets(sheets.size());
    return writeNewFile(*command.pdf, bytes, toldUnless(command.papers.json, count), ports);
}

int writeCutSvgs(const CutCommand& command, const PaperPlan& plan, BatchPorts& ports) {
    const std::filesystem::path& folder = *command.svgFolder;
    std::error_code problem;
    std::filesystem::create_directories(folder, problem);
    if (problem) {
        return fail(
            ports, CouldNotWrite,
            {ErrorCode::WriteFailed,
             fmt::format("The folder cannot be made ({}).", problem.message()), folder.string()});
    }
    for (std::size_t i = 0; i < plan.sheets.size(); ++i) {
        const PlannedSheet& sheet = plan.sheets[i].planned;
        const int code = writeNewFile(folder / fmt::format("sheet-{}.svg", i + 1),
                                      svgText(sheetPicture(sheet, pictureBox)),
                                      toldUnless(command.papers.json, sheet.heading), ports);
        if (code != Done) {
            return code;
        }
    }
    return Done;
}

}  // namespace matwright::app
