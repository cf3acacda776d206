// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/rendering/pdf.h"
#include "core/measure/catalogue.h"
#include "core/measure/length_text.h"
#include "core/template/tiling.h"

namespace matwright::app {

// A drawing laid out on paper, ready for a PDF, a printer and a preview alike.
struct TemplateSheets {
    std::vector<PdfPage> pages;        // never empty
    std::optional<TilePlan> tilePlan;  // where the drawing is printed in parts, one tile a page
};

// One page as large as the drawing.
TemplateSheets wholeTemplate(const Drawing& drawing);

// In parts that are joined after printing, a double page page by page. `page` is what was drawn.
// Errors: those of planTiles.
Result<TemplateSheets> tiledTemplate(const Drawing& drawing, const PageSetup& page,
                                     const TilingOptions& options);

// Whole, in the middle of one sheet, upright where it fits both ways. `sheet` is upright. Nothing
// where the drawing is larger than the sheet; the printer's margins are not looked at.
std::optional<TemplateSheets> centredTemplate(const Drawing& drawing, Size sheet);

// What people call a sheet of the catalogue: "Letter", "A4", "12 × 18 in".
QString shortName(const NamedSize& sheet);

// What comes out, as one phrase: "12 × 12 in page on 4 Letter sheets, joined with 1/4 in overlap",
// "Two pages of 12 × 12 in on 8 Letter sheets, …".
// `sheet` is what the sheets were laid out for; the scale is that of the overlap.
QString describe(const TemplateSheets& sheets, Size drawing, const NamedSize& sheet, Scale scale);

}  // namespace matwright::app
