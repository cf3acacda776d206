// SPDX-License-Identifier: MIT
#include "app/printing/template_choice.h"

#include <QCoreApplication>

namespace matwright::app {

namespace {

QString choiceWord(const char* text) {
    return QCoreApplication::translate("matwright::app::TemplateChoice", text);
}

TilingOptions tilingOf(const TemplateChoice& choice) {
    return {choice.sheet->size, choice.printerMargin, choice.overlap};
}

}  // namespace

TemplateChoice initialChoice(const Settings& settings, const Sketch& sketch) {
    TemplateChoice choice;
    if (const NamedSize* sheet = findSheetSize(settings.sheetId)) {
        choice.sheet = sheet;
    }
    choice.printerMargin = settings.printerMargin;
    choice.overlap = settings.overlap;
    choice.look.scale = settings.scale;
    choice.tiled = settings.templateTiled || !fitsWhole(surface(sketch.page).size(), choice);
    return choice;
}

Settings remembered(Settings settings, const TemplateChoice& choice) {
    settings.sheetId = choice.sheet->id;
    settings.printerMargin = choice.printerMargin;
    settings.overlap = choice.overlap;
    if (choice.howChosen) {
        settings.templateTiled = choice.tiled;
    }
    return settings;
}

bool fitsWhole(Size page, const TemplateChoice& choice) {
    const Size sheet = choice.sheet->size;
    return sheet.contains(page) || sheet.turned().contains(page);
}

TemplateOptions lookOnSheets(const PageSetup& page, const TemplateChoice& choice) {
    TemplateOptions look = choice.look;
    if (choice.tiled) {
        if (const auto plan = planTiles(page, tilingOf(choice))) {
            look.parts = plan->parts();
        }
    }
    return look;
}

Result<TemplateSheets> sheetsToSave(const Drawing& drawing, const PageSetup& page,
                                    const TemplateChoice& choice) {
    return choice.tiled ? tiledTemplate(drawing, page, tilingOf(choice)) : wholeTemplate(drawing);
}

Result<TemplateSheets> sheetsToPrint(const Drawing& drawing, const PageSetup& page,
                                     const TemplateChoice& choice) {
    if (choice.tiled) {
        return sheetsToSave(drawing, page, choice);
    }
    if (std::optional<TemplateSheets> sheets = centredTemplate(drawing, choice.sheet->size)) {
        return std::move(*sheets);
    }
    return std::unexpected(Error{
        ErrorCode::Unsupported,
        choiceWord("The whole page does not fit on a %1 sheet: choose larger paper or several "
                   "sheets, or save a PDF for a print shop.")
            .arg(shortName(*choice.sheet))
            .toStdString(),
        ""});
}

QString outcomeSentence(const Drawing& drawing, const TemplateChoice& choice,
                        const TemplateSheets& sheets) {
    const QString outcome = describe(sheets, drawing.size, *choice.sheet, choice.look.scale);
    if (choice.tiled) {
        return outcome + QLatin1Char('.');
    }
    if (!fitsWhole(drawing.size, choice)) {
        return choiceWord("%1, for a print shop. It is too large for %2 paper.")
            .arg(outcome, shortName(*choice.sheet));
    }
    return choiceWord(
               "%1, printed in the middle of %2 paper. What lies outside the reach of the "
               "printer stays blank.")
        .arg(outcome, shortName(*choice.sheet));
}

QString trueSizeSentence(const TemplateChoice& choice) {
    if (choice.tiled) {
        return choiceWord(
            "Print at actual size (100 %). Then measure the ruler on each sheet: 1 in and 50 mm.");
    }
    if (!choice.look.checkSquares) {
        return choiceWord("Print at actual size (100 %).");
    }
    return unitOf(choice.look.scale) == Unit::Inch
               ? choiceWord("Print at actual size (100 %). Then measure the 1 in square.")
               : choiceWord("Print at actual size (100 %). Then measure the 50 mm square.");
}

}  // namespace matwright::app
