// SPDX-License-Identifier: MIT
#include "app/rendering/template_sheets.h"

#include <QCoreApplication>

#include "core/measure/length_text.h"

namespace matwright::app {

TemplateSheets wholeTemplate(const Drawing& drawing) {
    return {{PdfPage{drawing, drawing.size, {}, {}}}, {}};
}

Result<TemplateSheets> tiledTemplate(const Drawing& drawing, const TilingOptions& options) {
    Result<TilePlan> plan = planTiles(drawing.size, options);
    if (!plan) {
        return std::unexpected(plan.error());
    }
    TemplateSheets sheets;
    for (const Tile& tile : plan->tiles) {
        sheets.pages.push_back({tileDrawing(drawing, *plan, tile), plan->sheet, {}, {}});
    }
    sheets.tilePlan = std::move(*plan);
    return sheets;
}

std::optional<TemplateSheets> centredTemplate(const Drawing& drawing, Size sheet) {
    if (!sheet.contains(drawing.size)) {
        sheet = sheet.turned();
    }
    if (!sheet.contains(drawing.size)) {
        return std::nullopt;
    }
    const Point offset{(sheet.width - drawing.size.width).halfRoundedDown(),
                       (sheet.height - drawing.size.height).halfRoundedDown()};
    return TemplateSheets{{PdfPage{drawing, sheet, Rect::at(offset, drawing.size), offset}}, {}};
}

QString shortName(const NamedSize& sheet) {
    const QString name =
        QString::fromUtf8(sheet.name.data(), static_cast<qsizetype>(sheet.name.size()));
    return name.front().isDigit() ? name : name.section(QLatin1Char(' '), 0, 0);
}

QString describe(const TemplateSheets& sheets, Size drawing, const NamedSize& sheet, Scale scale) {
    const auto said = [](const char* text) {
        return QCoreApplication::translate("matwright::app::TemplateSheets", text);
    };
    const QString page = QString::fromStdString(naturalSizeText(drawing));
    const PdfPage& first = sheets.pages.front();
    if (!sheets.tilePlan && first.media == drawing) {
        return said("%1 page in one piece").arg(page);
    }
    const bool sideways = first.media.width > first.media.height;
    if (sheets.pages.size() == 1) {
        return (sideways ? said("%1 page on one %2 sheet, sideways")
                         : said("%1 page on one %2 sheet"))
            .arg(page, shortName(sheet));
    }
    return (sideways ? said("%1 page on %2 %3 sheets, sideways, joined with %4 overlap")
                     : said("%1 page on %2 %3 sheets, joined with %4 overlap"))
        .arg(page, QString::number(sheets.pages.size()), shortName(sheet),
             QString::fromStdString(lengthText(sheets.tilePlan->overlap, scale)));
}

}  // namespace matwright::app
