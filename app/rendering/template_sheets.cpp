// SPDX-License-Identifier: MIT
#include "app/rendering/template_sheets.h"

#include <QCoreApplication>

#include "core/measure/length_text.h"

namespace matwright::app {

TemplateSheets wholeTemplate(const Drawing& drawing) {
    return {{PdfPage{drawing, drawing.size, {}, {}}}, {}};
}

Result<TemplateSheets> tiledTemplate(const Drawing& drawing, const PageSetup& page,
                                     const TilingOptions& options) {
    Result<TilePlan> plan = planTiles(page, options);
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

namespace {

QString said(const char* text) {
    return QCoreApplication::translate("matwright::app::TemplateSheets", text);
}

// "one Letter sheet", "4 Letter sheets", "4 sheets of 12 × 18 in".
QString countedSheets(std::size_t count, const NamedSize& sheet) {
    const QString name = shortName(sheet);
    const bool isMeasure = name.front().isDigit();
    if (count == 1) {
        return (isMeasure ? said("one sheet of %1") : said("one %1 sheet")).arg(name);
    }
    return (isMeasure ? said("%1 sheets of %2") : said("%1 %2 sheets")).arg(count).arg(name);
}

}  // namespace

QString describe(const TemplateSheets& sheets, Size drawing, const NamedSize& sheet, Scale scale) {
    const bool pageByPage = sheets.tilePlan && sheets.tilePlan->isPageByPage();
    const QString page =
        QString::fromStdString(naturalSizeText(pageByPage ? sheets.tilePlan->page : drawing));
    const PdfPage& first = sheets.pages.front();
    if (!sheets.tilePlan && first.media == drawing) {
        return said("%1 page in one piece").arg(page);
    }
    QString text = (pageByPage ? said("Two pages of %1 on %2") : said("%1 page on %2"))
                       .arg(page, countedSheets(sheets.pages.size(), sheet));
    if (first.media.width > first.media.height) {
        text = said("%1, sideways").arg(text);
    }
    return !sheets.tilePlan || sheets.tilePlan->rows * sheets.tilePlan->columns == 1
               ? text
               : said("%1, joined with %2 overlap")
                     .arg(text,
                          QString::fromStdString(lengthText(sheets.tilePlan->overlap, scale)));
}

}  // namespace matwright::app
