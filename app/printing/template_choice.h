// SPDX-License-Identifier: MIT
#pragma once

#include "app/rendering/template_sheets.h"
#include "app/settings/settings.h"
#include "core/measure/catalogue.h"
#include "core/sketch/sketch.h"
#include "core/template/template.h"

namespace matwright::app {

// What a person chose for one template, as a regular value but for the sheet, which is one of the
// catalogue's.
struct TemplateChoice {
    bool tiled = false;
    bool howChosen = false;  // the person said in parts or whole, instead of what the page asks for
    const NamedSize* sheet = findSheetSize("letter");  // never null
    Length printerMargin = Length::inches(0, 1, 4);
    Length overlap = Length::inches(0, 1, 4);
    TemplateOptions look;
};

// What the settings say; in parts where the whole page would not fit on the sheet.
TemplateChoice initialChoice(const Settings& settings, const Sketch& sketch);
// The settings with what this choice means for the next template. In parts or whole is a wish only
// where the person said so.
Settings remembered(Settings settings, const TemplateChoice& choice);

// A page fits on the sheet as a whole, one way up or the other.
bool fitsWhole(Size page, const TemplateChoice& choice);

// How to draw this page for the sheets it is printed on: texts keep off the seams of the tiles.
TemplateOptions lookOnSheets(const PageSetup& page, const TemplateChoice& choice);

// What the preview shows and a PDF holds: the tiles, or a page of the drawing's own size. `page` is
// what was drawn. Errors: those of planTiles.
Result<TemplateSheets> sheetsToSave(const Drawing& drawing, const PageSetup& page,
                                    const TemplateChoice& choice);
// What goes to the printer: the tiles, or the page in the middle of the sheet. Errors: those of
// planTiles; Unsupported where the whole page is larger than the sheet.
Result<TemplateSheets> sheetsToPrint(const Drawing& drawing, const PageSetup& page,
                                     const TemplateChoice& choice);

// What will happen, in two sentences: what comes out, and how to print it true to size.
QString outcomeSentence(const Drawing& drawing, const TemplateChoice& choice,
                        const TemplateSheets& sheets);
QString trueSizeSentence(const TemplateChoice& choice);

}  // namespace matwright::app
