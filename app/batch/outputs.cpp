// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <QBuffer>
#include <algorithm>
#include <string>

#include "app/batch/commands.h"
#include "app/batch/files.h"
#include "app/rendering/paint.h"
#include "app/rendering/template_sheets.h"
#include "core/drawing/svg.h"
#include "core/picture/picture.h"
#include "core/template/cut_lines.h"

namespace matwright::app {

namespace {

std::string_view bytesOf(const QByteArray& bytes) {
    return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

TilingOptions tilingOf(const TemplateCommand& command) {
    return {command.sheet->size, command.printerMargin, command.overlap};
}

Drawing drawingOf(const TemplateCommand& command, const Sketch& sketch, Scale scale) {
    TemplateOptions look = command.look;
    look.scale = scale;
    if (const auto plan = planTiles(sketch.page, tilingOf(command)); command.tiled && plan) {
        look.parts = plan->parts();
    }
    return templateDrawing(sketch, look);
}

Result<TemplateSheets> sheetsOf(const TemplateCommand& command, const PageSetup& page,
                                const Drawing& drawing) {
    return command.tiled ? tiledTemplate(drawing, page, tilingOf(command)) : wholeTemplate(drawing);
}

// "page.svg" -> "page-03-B1.svg", "page-03-left-B1.svg"
std::filesystem::path numbered(std::filesystem::path output, std::size_t index,
                               const TilePlan& plan) {
    const std::size_t digits = std::to_string(plan.tiles.size()).size();
    std::string tile = plan.tiles[index].name();
    std::ranges::replace(tile, ' ', '-');
    const std::string name = fmt::format("{}-{:0{}}-{}{}", output.stem().string(), index + 1,
                                         digits, tile, output.extension().string());
    return output.replace_filename(name);
}

int writeSvgs(const TemplateCommand& command, const TemplateSheets& sheets, const std::string& what,
              BatchPorts& ports) {
    if (!sheets.tilePlan) {
        return writeResult(command.input, command.output, svgText(sheets.pages.front().drawing),
                           what, ports);
    }
    for (std::size_t i = 0; i < sheets.pages.size(); ++i) {
        const int code =
            writeResult(command.input, numbered(command.output, i, *sheets.tilePlan),
                        svgText(sheets.pages[i].drawing),
                        fmt::format("sheet {} of {}", i + 1, sheets.pages.size()), ports);
        if (code != Done) {
            return code;
        }
    }
    return Done;
}

int writePdf(const TemplateCommand& command, const TemplateSheets& sheets, const std::string& title,
             const std::string& what, BatchPorts& ports) {
    ports.startPainting();
    const Result<QByteArray> pdf = pdfBytes(sheets.pages, QString::fromStdString(title));
    if (!pdf) {
        Error error = pdf.error();
        error.where = command.output.string();
        return fail(ports, CouldNotWrite, error);
    }
    return writeResult(command.input, command.output, bytesOf(*pdf), what, ports);
}

}  // namespace

int runTemplate(const TemplateCommand& command, BatchPorts& ports) {
    const bool asSvg = hasSuffix(command.output, ".svg");
    if (!asSvg && !hasSuffix(command.output, ".pdf")) {
        return refuseSuffix(command.output, ".svg or .pdf", ports);
    }
    const auto sketch = readInput(command.input, ports);
    if (!sketch) {
        return sketch.error();
    }
    const Scale scale = command.scale.value_or(naturalScale(*sketch));
    const Drawing drawing = drawingOf(command, *sketch, scale);
    const Result<TemplateSheets> sheets = sheetsOf(command, sketch->page, drawing);
    if (!sheets) {
        return fail(ports, WrongUse, sheets.error());
    }
    const std::string what = describe(*sheets, drawing.size, *command.sheet, scale).toStdString();
    return asSvg ? writeSvgs(command, *sheets, what, ports)
                 : writePdf(command, *sheets, drawing.title, what, ports);
}

int runCutLines(const FileCommand& command, BatchPorts& ports) {
    if (!hasSuffix(command.output, ".svg")) {
        return refuseSuffix(command.output, ".svg", ports);
    }
    const auto sketch = readInput(command.input, ports);
    if (!sketch) {
        return sketch.error();
    }
    return writeResult(command.input, command.output, svgText(cutLineDrawing(*sketch)), {}, ports);
}

int runPicture(const PictureCommand& command, BatchPorts& ports) {
    if (!hasSuffix(command.output, ".png")) {
        return refuseSuffix(command.output, ".png", ports);
    }
    const auto sketch = readInput(command.input, ports);
    if (!sketch) {
        return sketch.error();
    }
    ports.startPainting();
    const Drawing picture = sketchPicture(*sketch);
    const QImage image = imageOf(picture, command.width / picture.size.width.toInches());
    QBuffer png;
    if (image.isNull() || !image.save(&png, "PNG")) {
        return fail(ports, CouldNotWrite,
                    {ErrorCode::TooLarge, "This picture has too many pixels; ask for fewer.",
                     command.output.string()});
    }
    return writeResult(command.input, command.output, bytesOf(png.data()),
                       fmt::format("{} × {} pixels", image.width(), image.height()), ports);
}

}  // namespace matwright::app
